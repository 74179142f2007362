/* Made by npm run generate from schema/results.schema.json. Do not edit. */

/**
 * What can be said about one measure: a number, a reason why there is none, a judgement, a table, a remark on validity, or a change since an earlier visit.
 *
 * This interface was referenced by `ResultsFile`'s JSON-Schema definition
 * via the `patternProperty` "^(?!(waymark|client|visit|person|sources|choices|conditions)$)[a-z][a-z0-9_]*(-[0-9]+)*$".
 */
export type ResultsEntry =
  ResultsQuantity | ResultsNotGiven | ResultsJudgement | ResultsTable | ResultsRemark | ResultsChange;
/**
 * Unit of the value, as printed.
 */
export type Unit = string;
/**
 * Key of the file the value was copied from: "session.yaml size.mass_kg".
 */
export type From = string;
/**
 * Formula and revision that gave the value, as on the methods page: "body-mass-index r1".
 */
export type Formula = string;
/**
 * A sentence the client could read.
 */
export type Because = string;

/**
 * What one visit gave: results.yaml, the laboratory notebook. The build writes it beside the session file and it is committed. After the header each measure is a key of its own, in the order of the report. Nobody edits it by hand: `waymark verify` computes it again and compares.
 */
export interface ResultsFile {
  /**
   * Format of this file.
   */
  waymark: "results 1";
  /**
   * The client's pseudonym.
   */
  client: string;
  visit: ResultsVisit;
  person: ResultsPerson;
  /**
   * The files of the visit's folder that the numbers came from, session first.
   *
   * @minItems 1
   */
  sources: [ResultsSource, ...ResultsSource[]];
  /**
   * Every choice that moves numbers, as it was in force at this visit. Keys and meanings: blocks/choices.schema.json.
   */
  choices: {
    [k: string]: string | number;
  };
  /**
   * Facts that must agree before two visits are compared: mode, protocol, instruments, hour of day, all as words. Absent where nothing was recorded.
   */
  conditions?: {
    [k: string]: string;
  };
  [k: string]:
    | ResultsEntry
    | "results 1"
    | string
    | ResultsVisit
    | ResultsPerson
    | [ResultsSource, ...ResultsSource[]]
    | {
        [k: string]: string | number;
      }
    | {
        [k: string]: string;
      }
    | undefined;
}
/**
 * Which visit.
 */
export interface ResultsVisit {
  /**
   * Date of the visit, year-month-day.
   */
  date: string;
  /**
   * What tells two visits of one day apart.
   */
  label?: string;
  /**
   * Why the client came, as in the session file.
   */
  purpose: "baseline" | "retest" | "reliability" | "other";
}
/**
 * What reference values needed to know of the client.
 */
export interface ResultsPerson {
  /**
   * Sex for reference values.
   */
  sex: "female" | "male";
  /**
   * Age on the day of the visit.
   */
  age_years: number;
}
export interface ResultsSource {
  /**
   * Name in the visit's folder.
   */
  file: string;
  /**
   * SHA-256 of the file's bytes, in hexadecimal.
   */
  sha256: string;
}
/**
 * A number. It names where it is from: a key of the session file, or a formula with what it was given.
 */
export interface ResultsQuantity {
  /**
   * The value, rounded once to the measure's decimals; trailing zeros are kept.
   */
  value: number;
  unit: Unit;
  from?: From;
  formula?: Formula;
  inputs?: Inputs;
  error?: ResultsError;
  /**
   * Where the value stands in each reference group, and why a table that could apply was refused.
   *
   * @minItems 1
   */
  norms?: [ResultsNorm, ...ResultsNorm[]];
  /**
   * A sentence that stands beside the number wherever it is printed.
   */
  note?: string;
}
/**
 * What the formula was given, each with its unit. A name that is also a measure of this file leads to it.
 */
export interface Inputs {
  [k: string]: string | number;
}
/**
 * What is known of the measurement error.
 */
export interface ResultsError {
  /**
   * One standard deviation of error, in the unit of the value.
   */
  typical?: number;
  /**
   * Lower end of the 95 % interval, in the unit of the value.
   */
  low?: number;
  /**
   * Upper end of the 95 % interval, in the unit of the value.
   */
  high?: number;
  /**
   * Where the error comes from.
   */
  from: string;
}
/**
 * Position in one reference group.
 */
export interface ResultsNorm {
  /**
   * Name of the reference table or equation.
   */
  table: string;
  /**
   * Why the table does not hold for this client or test.
   */
  not_given?: string;
  /**
   * The group: "women 40 to 49 years, treadmill".
   */
  group?: string;
  /**
   * Share of the group with a lower value.
   */
  percentile?: number;
  /**
   * Standard deviations from the value expected.
   */
  z?: number;
  /**
   * Value expected for the person, in the unit of the value.
   */
  predicted?: number;
  /**
   * The value as a share of the one expected.
   */
  percent_predicted?: number;
  /**
   * Lower limit of normal (5th percentile unless the table says otherwise).
   */
  lower_limit?: number;
  /**
   * 50th percentile of the group, in the unit of the value.
   */
  median?: number;
  /**
   * The class that a published scheme gives.
   */
  category?: string;
  /**
   * What must be read beside the position.
   */
  note?: string;
}
/**
 * A measure that could not be given. Missing is never zero.
 */
export interface ResultsNotGiven {
  /**
   * Because …
   */
  not_given: string;
}
/**
 * A word, and why.
 */
export interface ResultsJudgement {
  /**
   * A word or two, in trade terms.
   */
  verdict: string;
  because: Because;
  rule?: Formula;
  inputs?: Inputs;
}
/**
 * Several numbers that belong together, row by row.
 */
export interface ResultsTable {
  from?: From;
  formula?: Formula;
  inputs?: Inputs;
  /**
   * A sentence that stands beside the table.
   */
  note?: string;
  /**
   * The columns, left to right.
   *
   * @minItems 1
   */
  columns: [ResultsColumn, ...ResultsColumn[]];
  /**
   * One list a row, a cell a column. null: nothing was measured.
   */
  rows: (number | string | null)[][];
}
export interface ResultsColumn {
  /**
   * Short name, the same at every visit.
   */
  key: string;
  /**
   * Heading as printed.
   */
  title: string;
  /**
   * Unit of the column.
   */
  unit?: string;
  /**
   * Decimals the column is rounded to.
   */
  decimals?: number;
}
/**
 * A remark on whether a test can be trusted.
 */
export interface ResultsRemark {
  /**
   * fatal: what it concerns is withheld · weakens: shown with the remark · record: for the file only.
   */
  severity: "fatal" | "weakens" | "record";
  /**
   * What was found.
   */
  found: string;
  /**
   * What the rule asks.
   */
  limit: string;
  because: Because;
  rule: Formula;
  /**
   * Measures it concerns; an empty list means the whole visit.
   */
  affects: string[];
}
/**
 * What changed in one measure since an earlier visit, and how sure that is.
 */
export interface ResultsChange {
  /**
   * Now less before, from the recorded digits.
   */
  change: number;
  unit: Unit;
  of: ResultsChangeOf;
  inputs: ResultsChangeInputs;
  tests?: ResultsChangeTests;
  error?: ResultsChangeError;
  worthwhile?: ResultsWorthwhile;
  chances_percent?: ResultsChances;
  /**
   * Conditions in which the two visits differ; such a pair carries no claim.
   *
   * @minItems 1
   */
  differs?: [string, ...string[]];
  /**
   * Conditions that neither visit recorded, and remarks that weaken the pair.
   */
  unchecked?: string[];
  /**
   * Sentences that belong beside the change.
   */
  notes?: string[];
  /**
   * A word or two.
   */
  verdict: string;
  because: Because;
}
/**
 * What changed, and since when.
 */
export interface ResultsChangeOf {
  /**
   * Measure that changed.
   */
  measure: string;
  /**
   * Date of the earlier visit.
   */
  since: string;
  /**
   * Decimals of the measure.
   */
  decimals: number;
  /**
   * Was it declared a main outcome at baseline?
   */
  primary: boolean;
}
/**
 * The two recorded values.
 */
export interface ResultsChangeInputs {
  /**
   * Value of the earlier visit.
   */
  before: number;
  /**
   * Value of this visit.
   */
  now: number;
}
/**
 * Tests averaged on each side, where either is more than one.
 */
export interface ResultsChangeTests {
  /**
   * Tests before.
   */
  before: number;
  /**
   * Tests now.
   */
  now: number;
}
/**
 * How far the change can be error alone; absent where no error is known.
 */
export interface ResultsChangeError {
  /**
   * One standard deviation of error of one test, in the unit of the change.
   */
  typical?: number;
  /**
   * Lower end of the 95 % interval of the change.
   */
  low?: number;
  /**
   * Upper end of the 95 % interval of the change.
   */
  high?: number;
  /**
   * Smallest change that exceeds error at 95 %.
   */
  detectable?: number;
  /**
   * The laboratory's own retests, or the published source.
   */
  from?: string;
}
/**
 * Smallest change worth having.
 */
export interface ResultsWorthwhile {
  /**
   * In the unit of the change.
   */
  value: number;
  /**
   * Who or what set it: the client's target, or a share of a spread.
   */
  from?: string;
}
/**
 * Chances that the true change is a worthwhile rise, neither, or a worthwhile fall.
 */
export interface ResultsChances {
  /**
   * Worthwhile rise.
   */
  higher: number;
  /**
   * Neither.
   */
  trivial: number;
  /**
   * Worthwhile fall.
   */
  lower: number;
}
