/**
 * A problem found in a practice's files, as data; `cli/` draws it. Every problem answers where, what was found,
 * what was expected, why it matters and, where it can, how to mend it.
 */
export type Severity = "error" | "warning";

export interface Place {
  /** Path relative to the practice folder, with forward slashes. */
  readonly file: string;
  /** 1-based. Absent when the fault is the file itself (missing, unreadable). */
  readonly line?: number;
  readonly column?: number;
  /** Length of the marked text on its line. */
  readonly length?: number;
  /** For CSV: the header of the column and the number of the data row's line. */
  readonly header?: string;
}

/** A safe repair that `check --fix` may make: replace the text from `start` to `end` (offsets in the file) by `text`. */
export interface Repair {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface Diagnostic {
  /** kebab-case; the closed list with explanations is in validate/codes.ts. */
  readonly code: string;
  readonly severity: Severity;
  readonly at: Place;
  readonly found: string;
  readonly expected: string;
  readonly why: string;
  readonly fix?: string;
  readonly repair?: Repair;
}
