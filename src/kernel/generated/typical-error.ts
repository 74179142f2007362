/* Made by npm run generate from schema/typical-error.schema.json. Do not edit. */

/**
 * Published measurement error of one study: how much a person's result varies between tests when nothing has changed. One file a study, in src/compare/tables/. Used only where the laboratory has no retests of its own. Wherever a row is used, the report prints source, n and days between tests.
 */
export interface TypicalErrorTable {
  /**
   * Equal to the file name.
   */
  id: string;
  /**
   * Who was tested, in a few words.
   */
  population: string;
  /**
   * Number of people; absent where the source pools many studies.
   */
  n?: number;
  /**
   * Number of studies pooled.
   */
  studies?: number;
  /**
   * Days between tests as published: "within 30", "14 to 28".
   */
  days_between?: string;
  applies: TypicalErrorScope;
  source: TypicalErrorSource;
  /**
   * seen: read in the source or in text that cites it. memory: recalled with high confidence, and printed as such.
   */
  verified: "seen" | "memory";
  /**
   * One row a kind of measure.
   *
   * @minItems 1
   */
  rows: [TypicalErrorRow, ...TypicalErrorRow[]];
  /**
   * At least one: at this value of the measure the error of one test is this, in the measure's unit.
   *
   * @minItems 1
   */
  checks: [TypicalErrorCheck, ...TypicalErrorCheck[]];
  /**
   * What was left out; what the authors warn of.
   */
  notes?: string;
}
/**
 * Whom and what the error may be used for; outside it is refused, not extrapolated. An absent key sets no limit.
 */
export interface TypicalErrorScope {
  /**
   * Modes of exercise, as the session writes them.
   */
  mode?: string[];
  /**
   * Sexes.
   */
  sex?: ("female" | "male")[];
  /**
   * Lowest and highest age.
   *
   * @minItems 2
   * @maxItems 2
   */
  age_years?: [number, number];
}
/**
 * Where the numbers stand.
 */
export interface TypicalErrorSource {
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
   * Page, table or part of the paper.
   */
  where: string;
}
export interface TypicalErrorRow {
  /**
   * Ids of the measures the row is used for.
   *
   * @minItems 1
   */
  measures: [string, ...string[]];
  /**
   * percent: coefficient of variation, grows with the value · unit: one standard deviation in the measure's unit · uptake-line: exp(intercept + slope · value) in the measure's unit.
   */
  statistic: "percent" | "unit" | "uptake-line";
  /**
   * The error, for percent and unit.
   */
  value?: number;
  /**
   * For uptake-line.
   */
  intercept?: number;
  /**
   * For uptake-line.
   */
  slope?: number;
  /**
   * The measure's unit, for unit and uptake-line; % for percent.
   */
  unit?: string;
  /**
   * Degrees of freedom the error was estimated on: n − 1 for two tests a person; known where many studies were pooled.
   */
  df: number | "known";
  applies?: TypicalErrorScope;
  /**
   * What the source prints, where the error was worked out from it, and how.
   */
  printed?: string;
  /**
   * One sentence that must stand beside the error.
   */
  note?: string;
}
export interface TypicalErrorCheck {
  /**
   * Id of the measure.
   */
  measure: string;
  /**
   * Sex, where rows differ.
   */
  sex?: "female" | "male";
  /**
   * Value of the measure.
   */
  at: number;
  /**
   * Error of one test.
   */
  expect: number;
  /**
   * Largest accepted difference.
   */
  tolerance: number;
  /**
   * Where the expected number stands, or the sum by hand.
   */
  from: string;
}
