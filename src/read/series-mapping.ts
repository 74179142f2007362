/** How an instrument's files are written, as lab.yaml says it. */
import type { Channel, GasCondition } from "../kernel/series.js";
import type { Encoding } from "./decode.js";

/** What of an instrument's entry in lab.yaml says how its files are written. */
export interface SeriesMapping {
  readonly columns?: Readonly<Partial<Record<Channel, MappedColumn>>>;
  readonly encoding?: Encoding;
  readonly delimiter?: "," | ";" | "tab" | "|";
  readonly decimal?: "." | ",";
  readonly header_row?: number;
  readonly skip_rows?: number;
  readonly ends_before?: readonly string[];
  readonly missing?: readonly string[];
}
export interface MappedColumn {
  /** Header, or headers whose sum is the value. */
  readonly column: string | readonly string[];
  readonly unit: string;
  readonly condition?: GasCondition;
}

export type Columns = readonly (readonly [Channel, MappedColumn])[];
