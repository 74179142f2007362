/**
 * A figure as charts/ hands it to report/: what to draw (a Vega-Lite structure, its values and its data, apart, so that a
 * compiled structure serves every client and language), what it says in words, and the table behind it. Nothing here knows colours or fonts.
 */
import type { Cell, Column, Section } from "./measure.js";
import type { Results } from "./results.js";
import type { Series } from "./series.js";
import type { Speech } from "./speech.js";

export type Datum = Readonly<Record<string, number | string | boolean | null>>;

/** A Vega-Lite specification whose data are named, never inline. */
export type Spec = Readonly<Record<string, unknown>>;

/** What differs from client to client in a structure itself, by the names of its signals: titles, the length of an axis. */
export type Values = Readonly<Record<string, number | string | readonly number[]>>;

/** panel: a third of the page · wide: the text column · strip: a line beside a number · full: the whole page width. */
export type FigureSize = "panel" | "wide" | "strip" | "full";

export interface Figure {
  /** kebab-case, unique in a report: the ids inside the drawing are made of it. */
  readonly name: string;
  readonly section: Section;
  readonly size: FigureSize;
  /** The finding, as a sentence without a full stop. */
  readonly title: string;
  /** What a reader who cannot see it must know: the main numbers. */
  readonly alt: string;
  readonly spec: Spec;
  /** A value for each of the structure's params, and "height" where rows give it. */
  readonly values: Values;
  readonly data: Readonly<Record<string, readonly Datum[]>>;
  /** The numbers behind the drawing, as the reader's table. */
  readonly table: { readonly columns: readonly Column[]; readonly rows: readonly (readonly Cell[])[] };
  /** Where the norm or the error drawn comes from. */
  readonly source?: string;
  /** The table of the results it is drawn from; without it the figure's own table is printed among the data. */
  readonly entry?: string;
  /** The measure a strip stands beside. */
  readonly measure?: string;
}

export interface ChartInput {
  readonly results: Results;
  /** Earlier visits of the client, oldest first. */
  readonly earlier: readonly Results[];
  /** Raw series by file name; empty when a report is drawn from results alone. */
  readonly series: Readonly<Record<string, Series>>;
  readonly speech: Speech;
}

/** A chart gives no figure when what it needs was not measured. */
export type Chart = (input: ChartInput) => readonly Figure[];
