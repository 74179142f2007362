/**
 * The words every stage shares: what a measure is, and what can be said about one at a visit.
 *
 * A visit's findings are a list of entries. An entry is a number with its unit and origin, a reason why there is
 * none, a judgement with its because, a table, or a validity remark. Entries are never changed: a stage that adds
 * something (a norm position, a remark) returns new entries.
 */

/** Order of the results file and of the practitioner's report. */
export const SECTIONS = [
  "visit",
  "screening",
  "preparation",
  "size",
  "blood_pressure",
  "rest",
  "heart_rate_variability",
  "composition",
  "lungs",
  "strength",
  "mobility",
  "field",
  "submaximal",
  "incremental",
  "thresholds",
  "lactate",
  "economy",
  "hypoxia",
  "validity",
  "change",
  "programme",
  "altitude",
] as const;
export type Section = (typeof SECTIONS)[number];

/** What a value rests on; a fatal fault of the instrument withholds every value that names it. */
export type Instrument =
  | "gas analyser"
  | "flow sensor"
  | "ergometer"
  | "heart-rate monitor"
  | "sphygmomanometer"
  | "scales"
  | "stadiometer"
  | "dxa"
  | "spirometer"
  | "dynamometer"
  | "lactate analyser"
  | "pulse oximeter"
  | "impedance";

/** One row of the catalogue: src/kernel/measures/<domain>.ts. The key of the row is the id, in snake_case. */
export interface MeasureInfo {
  /** English name as the trade says it; other languages translate by id in templates/words/. */
  readonly title: string;
  readonly section: Section;
  /** Absent for tables and judgements. */
  readonly unit?: string;
  readonly decimals?: number;
  readonly rests?: readonly Instrument[];
  /** Which direction most clients want; absent when neither is better. */
  readonly better?: "higher" | "lower";
  /** Plain name and one-sentence meaning for the client edition; only for measures a client is shown. */
  readonly plain?: { readonly name: string; readonly meaning: string };
  readonly loinc?: string;
}
export type Catalogue = Readonly<Record<string, MeasureInfo>>;

/** An input of a formula as the results file prints it: name, and number with unit or a word. */
export interface FormulaInput {
  readonly name: string;
  readonly text: string;
  /** The id of the entry it came from, when it is one: withholding follows this link. */
  readonly measure?: string;
}

export type Origin =
  | { readonly kind: "key"; readonly key: string } // "session.yaml size.mass_kg"
  | { readonly kind: "formula"; readonly formula: string; readonly inputs: readonly FormulaInput[] }; // "power-per-mass r1"

/** What is known of the error of a value: a typical error (one SD) or an interval, and where it comes from. */
export interface MeasurementError {
  /** One standard deviation of error, in the value's unit. */
  readonly typical?: number;
  /** 95 % interval, in the value's unit. */
  readonly low?: number;
  readonly high?: number;
  readonly from: string;
}

/** Where a value stands in a reference group, or why a table that could apply was refused. */
export interface NormPosition {
  readonly table: string;
  readonly group?: string; // "women 40 to 49 years, treadmill"
  readonly percentile?: number;
  readonly z?: number;
  readonly predicted?: number;
  readonly percentPredicted?: number;
  readonly lowerLimit?: number;
  readonly category?: string;
  readonly median?: number;
  readonly note?: string;
  readonly notGiven?: string;
}

export interface Quantity {
  readonly kind: "quantity";
  readonly id: string;
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
  readonly origin: Origin;
  readonly error?: MeasurementError;
  readonly norms?: readonly NormPosition[];
  /** One sentence that must stand beside the number wherever it is printed (e.g. "estimate, not a measurement"). */
  readonly note?: string;
}
export interface NotGiven {
  readonly kind: "not given";
  readonly id: string;
  readonly because: string;
}
export interface Judgement {
  readonly kind: "judgement";
  readonly id: string;
  /** A word or two, in trade terms: "VO2peak", "not met", "defer". */
  readonly verdict: string;
  /** A sentence the client could read. */
  readonly because: string;
  readonly rule?: string; // "half-expected-rise r1"
  readonly inputs?: readonly FormulaInput[];
}
export interface Column {
  readonly key: string;
  readonly title: string;
  readonly unit?: string;
  readonly decimals?: number;
}
export type Cell = number | string | null;
export interface Table {
  readonly kind: "table";
  readonly id: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  readonly origin: Origin;
  readonly note?: string;
}
/** fatal: the value cannot be used and is withheld · weakens: shown with the remark · record: for the file only. */
export type RemarkSeverity = "fatal" | "weakens" | "record";
export interface Remark {
  readonly kind: "remark";
  /** remark_<rule id in snake_case> */
  readonly id: string;
  readonly severity: RemarkSeverity;
  readonly found: string;
  readonly limit: string;
  readonly because: string;
  /** Ids of entries it concerns; empty means the whole visit. */
  readonly affects: readonly string[];
  readonly rule: string; // "volume-calibration r1"
}
/** What changed in one measure since an earlier visit, and how sure that is. Written by compare/. */
export interface Change {
  readonly kind: "change";
  /** change_<measure> against the baseline, change_<measure>_since_<date> against another visit. */
  readonly id: string;
  readonly measure: string;
  readonly unit: string;
  readonly decimals: number;
  /** Date of the earlier visit. */
  readonly since: string;
  readonly before: number;
  readonly now: number;
  readonly change: number;
  /** Tests averaged on each side, where either is more than one. */
  readonly tests?: { readonly before: number; readonly now: number };
  /** 95 % interval of the change; absent when no error is known. */
  readonly low?: number;
  readonly high?: number;
  /** One standard deviation of error of a single test, in `unit`, at the earlier value. */
  readonly typicalError?: number;
  /** Where the error comes from: "laboratory retests, 12 pairs" or the published source. */
  readonly errorFrom?: string;
  /** Smallest change in the direction observed that exceeds error at 95 %, for these tests; always positive. */
  readonly detectable?: number;
  readonly worthwhile?: number;
  readonly worthwhileFrom?: string;
  /** Chances in percent that the true change is a worthwhile gain, trivial, a worthwhile loss. */
  readonly chances?: { readonly higher: number; readonly trivial: number; readonly lower: number };
  /** Names of the gates that differ; a pair that is not comparable never carries a claim. */
  readonly differs: readonly string[];
  /** Conditions that could not be checked because neither visit recorded them, and remarks that weaken the pair. */
  readonly unchecked?: readonly string[];
  /** Sentences that belong beside the change: regression to the mean, the gain that training literature reports. */
  readonly notes?: readonly string[];
  readonly verdict: string;
  readonly because: string;
  readonly primary: boolean;
}
/** A change that is claimed: its 95 % interval leaves out zero. */
export const isClaim = (change: Pick<Change, "verdict">): boolean => change.verdict.endsWith("beyond error");

export type Entry = Quantity | NotGiven | Judgement | Table | Remark | Change;
