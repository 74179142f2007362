/**
 * What every formula file exports beside its function: a description complete enough to print
 * (methods page, report appendix), to audit (source, worked checks) and to run (compute).
 *
 * A formula refuses what its source did not cover: it throws OutOfRange and never clamps,
 * guesses or returns NaN. The caller turns the refusal into "not given, because …".
 */

/** seen: the number was read in text that is or cites the source. memory: recalled with high confidence,
 * printed as such. common practice: a habit of the trade with no source. own: this project's rule, explained in `where`. */
export type Provenance = "seen" | "memory" | "common practice" | "own";

export interface Source {
  readonly authors: string;
  readonly year: number | string | null;
  readonly title: string;
  readonly journal?: string;
  readonly doi?: string;
  /** Page, table or equation number, or the worked example used. */
  readonly where: string;
  readonly verified: Provenance;
}

export interface Check<Args extends readonly unknown[], Out> {
  readonly given: Args;
  /** The expected number, or "refused" when the source does not cover the input. */
  readonly expect: number | "refused";
  /** Largest accepted difference, in the output's unit. Required for a number. */
  readonly tolerance?: number;
  /** For outputs that are not a plain number: picks the number that is checked. */
  readonly pick?: (out: Out) => number;
  /** Where the expected value stands: a published worked example, a printed row, or the sum by hand. */
  readonly from: string;
}

export interface FormulaInfo<Args extends readonly unknown[] = never, Out = unknown> {
  /** kebab-case, equal to the file name. */
  readonly id: string;
  /** Raised whenever any input can give a different output. */
  readonly revision: number;
  readonly title: string;
  readonly equation: string;
  readonly inputs: Readonly<Record<string, { readonly unit: string; readonly range: string }>>;
  readonly output: { readonly unit: string; readonly decimals: number };
  /** The equation's own standard error of estimate, in the output's unit, where published. */
  readonly see?: number;
  /** One sentence a reader of the report must know: where the equation stops being true. */
  readonly caveat?: string;
  readonly source: Source;
  readonly compute: (...args: Args) => Out;
  readonly checks: readonly Check<Args, Out>[];
}

/** A formula, whatever its arguments and result: what the registry and the methods page hold. */
// biome-ignore lint/suspicious/noExplicitAny: a list of formulas with different signatures has no other common type
export type AnyFormula = FormulaInfo<any[], any>;

/** A refused number in a sentence: four digits say enough of an age of 12.153424657534247 years. */
const printed = (found: number | string): number | string =>
  typeof found === "number" && Number.isFinite(found) ? Number(found.toPrecision(4)) : found;

/** Thrown by a formula for an input outside what its source covers. */
export class OutOfRange extends Error {
  constructor(
    readonly formula: string,
    readonly input: string,
    readonly found: number | string,
    readonly expected: string,
  ) {
    super(`${input} is ${printed(found)}, but the method covers ${expected}`);
    this.name = "OutOfRange";
  }
}

/** Throws OutOfRange unless low ≤ value ≤ high (NaN is refused too). */
export function requireRange(
  formula: string,
  input: string,
  value: number,
  low: number,
  high: number,
  unit: string,
): void {
  if (!(value >= low && value <= high)) throw new OutOfRange(formula, input, value, `${low} to ${high} ${unit}`.trim());
}
