/**
 * A validity rule: data in, remark out. One rule a file in src/validity/<domain>/, exported as `rule`.
 * A rule never changes data. It returns a finding when the limit is broken, when what it needs was not recorded
 * (that is a finding too), and nothing when all is well or the block it looks at is absent.
 */
import type { Source } from "./formula.js";
import type { Entry, RemarkSeverity, Section } from "./measure.js";
import type { MeasureId } from "./measures.js";
import type { Visit } from "./visit.js";

export interface Findings {
  readonly visit: Visit;
  value(id: MeasureId): number | undefined;
  entry(id: MeasureId): Entry | undefined;
}

export interface Finding {
  readonly severity: RemarkSeverity;
  /** "drift 4.1 % over the test" or "not recorded". */
  readonly found: string;
  /** The limit that was broken, with unit. */
  readonly limit: string;
  /** One sentence: why it matters and the likely causes. */
  readonly because: string;
  readonly affects: readonly MeasureId[];
}

export interface Rule {
  /** kebab-case, equal to the file name. */
  readonly id: string;
  readonly revision: number;
  readonly title: string;
  readonly section: Section;
  readonly source: Source;
  readonly judge: (findings: Findings) => readonly Finding[];
}
