/* Made by npm run generate from schema/reference-table.schema.json. Do not edit. */

/**
 * Lowest and highest age.
 *
 * @minItems 2
 * @maxItems 2
 */
export type Range = [number, number];
/**
 * Lowest and highest stature.
 *
 * @minItems 2
 * @maxItems 2
 */
export type Range1 = [number, number];
/**
 * Lowest and highest body mass.
 *
 * @minItems 2
 * @maxItems 2
 */
export type Range2 = [number, number];
/**
 * Lowest and highest body mass index.
 *
 * @minItems 2
 * @maxItems 2
 */
export type Range3 = [number, number];
/**
 * Modes of the incremental test.
 *
 * @minItems 1
 */
export type Words = [string, ...string[]];
/**
 * Makers of the DXA scanner.
 *
 * @minItems 1
 */
export type Words1 = [string, ...string[]];
/**
 * Kinds of grip dynamometer.
 *
 * @minItems 1
 */
export type Words2 = [string, ...string[]];
/**
 * Postures of the grip test.
 *
 * @minItems 1
 */
export type Words3 = [string, ...string[]];
/**
 * Forms of the push-up.
 *
 * @minItems 1
 */
export type Words4 = [string, ...string[]];
/**
 * Machines of the bench press.
 *
 * @minItems 1
 */
export type Words5 = [string, ...string[]];
/**
 * Machines of the leg press.
 *
 * @minItems 1
 */
export type Words6 = [string, ...string[]];
/**
 * Whether the client is pregnant; no unless the session says so.
 *
 * @minItems 1
 */
export type Words7 = [string, ...string[]];
/**
 * Eyes open or closed on one leg.
 *
 * @minItems 1
 */
export type Words8 = [string, ...string[]];
/**
 * Sites of the waist measurement.
 *
 * @minItems 1
 */
export type Words9 = [string, ...string[]];
/**
 * Spirometry before or after a bronchodilator.
 *
 * @minItems 1
 */
export type Words10 = [string, ...string[]];
/**
 * Group a legacy table is split by; only where the client's choices state one.
 *
 * @minItems 1
 */
export type Words11 = [string, ...string[]];
/**
 * Rows for women.
 *
 * @minItems 1
 */
export type Rows = [
  [number | string | null, number | string | null, ...(number | string | null)[]],
  ...[number | string | null, number | string | null, ...(number | string | null)[]][]
];
/**
 * Rows for men.
 *
 * @minItems 1
 */
export type Rows1 = [
  [number | string | null, number | string | null, ...(number | string | null)[]],
  ...[number | string | null, number | string | null, ...(number | string | null)[]][]
];
/**
 * Rows for both sexes.
 *
 * @minItems 1
 */
export type Rows2 = [
  [number | string | null, number | string | null, ...(number | string | null)[]],
  ...[number | string | null, number | string | null, ...(number | string | null)[]][]
];
/**
 * For women.
 *
 * @minItems 1
 */
export type Terms = [[number | string, ...(number | string)[]], ...[number | string, ...(number | string)[]][]];
/**
 * For men.
 *
 * @minItems 1
 */
export type Terms1 = [[number | string, ...(number | string)[]], ...[number | string, ...(number | string)[]][]];
/**
 * For both sexes.
 *
 * @minItems 1
 */
export type Terms2 = [[number | string, ...(number | string)[]], ...[number | string, ...(number | string)[]][]];

/**
 * A published table or equation that says where a value stands among other people. One file a table, shaped like the printed page so that two people can proof-read it. Built-in tables stand in src/norms/tables/, a laboratory's own in norms/ of its practice folder, under this same schema.
 */
export interface ReferenceTable {
  /**
   * Equal to the file name without its ending. It is printed beside every position taken from the table.
   */
  id: string;
  /**
   * Name as a reader of the report sees it.
   */
  title: string;
  /**
   * Id of the measure, as results.yaml writes it (vo2_peak_per_mass).
   */
  measure: string;
  /**
   * Further measures the table holds for, in the same unit (the other leg).
   */
  also?: string[];
  /**
   * Unit of the printed numbers.
   */
  unit: string;
  /**
   * What the measure is multiplied by to be in the table's unit, where the two differ (0.001 for g to kg).
   */
  scale?: number;
  /**
   * percentile-table: printed percentiles, linear between neighbours · quantile-bands: printed quantiles too few or too uncertain to interpolate, the band is named · mean-sd: mean and SD a group, normal distribution · mean-only: a mean without spread, no percentile · lms: L, M, S by age, linear between rows · lms-spline: L, M, S from coefficients and spline values by age · regression: a sum of terms, with standard error of estimate or lower limit where published · formula: an equation that is no sum of terms, by its id in code · classes: one list of classes · class-limits: class limits by age.
   */
  kind:
    | "percentile-table"
    | "quantile-bands"
    | "mean-sd"
    | "mean-only"
    | "lms"
    | "lms-spline"
    | "regression"
    | "formula"
    | "classes"
    | "class-limits";
  /**
   * reference: the client's reference; a refusal is reported · beside: shown beside the reference wherever it applies, silent elsewhere.
   */
  role: "reference" | "beside";
  choice?: TableChoice;
  /**
   * Short name of the guideline whose classes these are; every class is printed behind it.
   */
  guideline?: string;
  population: TablePopulation;
  applies: TableScope;
  source: TableSource;
  /**
   * seen: read in the source or in text that reprints it · memory: recalled with high confidence, and printed as such · own: measured by this laboratory.
   */
  verified: "seen" | "memory" | "own";
  /**
   * Names of the columns of values. age_from and age_to (completed years) open a band; p5, p50 are percentiles; mean, sd; age, M, S, L (or sigma = M·S); class, lower, upper with comparison signs (">= 18.5", "< 25"); for class-limits the sign and class (">= fair", "< low").
   *
   * @minItems 2
   */
  columns?: [string, string, ...string[]];
  across?: TableAcross;
  values?: TableValues;
  /**
   * For class-limits: name of the class below the first limit.
   */
  below?: string;
  /**
   * A value is rounded to so many decimals before it is held against a class limit, so that the printed number and the class agree.
   */
  compare_decimals?: number;
  /**
   * Lowest and highest percentile the table is good for; beyond them only "below" or "above" is said. Default 1 and 99 for distributions; the printed ones for percentile tables.
   *
   * @minItems 2
   * @maxItems 2
   */
  report_percentiles?: [number, number];
  /**
   * For quantile-bands read from a figure: within this distance of a limit both bands are named.
   */
  reading_error?: number;
  coefficients?: TableCoefficients;
  terms?: TermsBySex;
  lower_terms?: TermsBySex1;
  coding?: TableCoding;
  /**
   * For formula: id of the equation in code.
   */
  formula?: string;
  /**
   * Standard error of estimate, in the table's unit. Without it no z is given.
   */
  see?: number;
  /**
   * One sentence that stands beside every position from this table.
   */
  caution?: string;
  /**
   * At least one: for this person this value gives this position.
   *
   * @minItems 1
   */
  checks: [TableCheck, ...TableCheck[]];
  /**
   * How the numbers were come by, what was left out, what the authors warn of.
   */
  notes?: string;
}
/**
 * Used only where the choices of the visit say so: vo2_reference: [vo2peak-by-mode]. A laboratory's own table names a word of its own here and lab.yaml chooses it. Absent: used wherever it applies.
 */
export interface TableChoice {
  /**
   * @minItems 1
   */
  [k: string]: [string, ...string[]];
}
/**
 * Who was measured, how and where.
 */
export interface TablePopulation {
  /**
   * In a few words.
   */
  who: string;
  /**
   * Number of people.
   */
  n?: number;
  /**
   * Country or region.
   */
  country?: string;
  /**
   * Years of measuring.
   */
  years?: string;
  /**
   * Instrument.
   */
  device?: string;
  /**
   * Protocol, posture, effort criterion.
   */
  protocol?: string;
}
/**
 * Whom and what the table may be used for. Outside it is refused with the reason, never extrapolated. Ranges include both ends; an age range of bands is in completed years. A list names the accepted words.
 */
export interface TableScope {
  /**
   * Sexes covered.
   *
   * @minItems 1
   */
  sex: ["female" | "male", ...("female" | "male")[]];
  age_years: Range;
  stature_cm?: Range1;
  mass_kg?: Range2;
  body_mass_index?: Range3;
  exercise_mode?: Words;
  scanner_maker?: Words1;
  dynamometer?: Words2;
  grip_posture?: Words3;
  push_up_form?: Words4;
  bench_machine?: Words5;
  leg_press_machine?: Words6;
  pregnant?: Words7;
  stance_eyes?: Words8;
  waist_site?: Words9;
  bronchodilator?: Words10;
  population_group?: Words11;
}
/**
 * Where the numbers stand.
 */
export interface TableSource {
  /**
   * Authors as cited.
   */
  authors: string;
  /**
   * Year; null where not stated.
   */
  year: number | null;
  /**
   * Title.
   */
  title: string;
  /**
   * Journal, volume, pages.
   */
  journal?: string;
  /**
   * Digital object identifier.
   */
  doi?: string;
  /**
   * Page, table or equation.
   */
  where: string;
}
/**
 * A second way in, printed across the page: columns named 160-164 are bands of this fact, in whole units.
 */
export interface TableAcross {
  /**
   * What the columns are bands of.
   */
  fact: "stature_cm";
}
/**
 * The printed rows. One printed row, one line; the printed digits; null where the page prints nothing.
 */
export interface TableValues {
  female?: Rows;
  male?: Rows1;
  all?: Rows2;
}
/**
 * For lms-spline: M = exp(M1 + M2·ln stature + M3·ln age + Mspline), S = exp(S1 + S2·ln age + Sspline), L = L1 + L2·ln age.
 */
export interface TableCoefficients {
  female?: SplineCoefficients;
  male?: SplineCoefficients1;
}
/**
 * For women.
 */
export interface SplineCoefficients {
  /**
   * Constant, ln stature (cm), ln age.
   *
   * @minItems 3
   * @maxItems 3
   */
  M: [number, number, number];
  /**
   * Constant, ln age.
   *
   * @minItems 2
   * @maxItems 2
   */
  S: [number, number];
  /**
   * Constant, ln age.
   *
   * @minItems 2
   * @maxItems 2
   */
  L: [number, number];
}
/**
 * For men.
 */
export interface SplineCoefficients1 {
  /**
   * Constant, ln stature (cm), ln age.
   *
   * @minItems 3
   * @maxItems 3
   */
  M: [number, number, number];
  /**
   * Constant, ln age.
   *
   * @minItems 2
   * @maxItems 2
   */
  S: [number, number];
  /**
   * Constant, ln age.
   *
   * @minItems 2
   * @maxItems 2
   */
  L: [number, number];
}
/**
 * For regression: the predicted value.
 */
export interface TermsBySex {
  female?: Terms;
  male?: Terms1;
  all?: Terms2;
}
/**
 * For regression: the published lower limit (5th percentile).
 */
export interface TermsBySex1 {
  female?: Terms;
  male?: Terms1;
  all?: Terms2;
}
/**
 * For regression: number that the source writes for a word (sex: {male: 0, female: 1}).
 */
export interface TableCoding {
  [k: string]: {
    [k: string]: number;
  };
}
export interface TableCheck {
  given: TableGiven;
  expect: TableExpect;
  /**
   * Largest accepted difference; default 0.05.
   */
  tolerance?: number;
  /**
   * Where the expected number stands, or the sum by hand.
   */
  from: string;
}
/**
 * Sex, age, value and the facts the table asks for.
 */
export interface TableGiven {
  /**
   * Sex of the person of the check.
   */
  sex: "female" | "male";
  /**
   * Age of the person, in years.
   */
  age_years: number;
  /**
   * Value of the measure, in the table's unit.
   */
  value: number;
  [k: string]: number | string | "female" | "male";
}
/**
 * What must come out; numbers within the tolerance.
 */
export interface TableExpect {
  /**
   * Percentile.
   */
  percentile?: number;
  /**
   * Standard score, in SD from the predicted value.
   */
  z?: number;
  /**
   * Predicted value.
   */
  predicted?: number;
  /**
   * Percent of predicted.
   */
  percentPredicted?: number;
  /**
   * Lower limit.
   */
  lowerLimit?: number;
  /**
   * Median of the group.
   */
  median?: number;
  /**
   * Class, behind the guideline's name.
   */
  category?: string;
  /**
   * Text the note must hold.
   */
  note?: string;
  /**
   * Text the refusal must hold.
   */
  notGiven?: string;
}
