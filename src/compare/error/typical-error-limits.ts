/**
 * How well a typical error is known: its 95 % limits.
 *
 *     TE · √(df / χ²(0.975, df))  to  TE · √(df / χ²(0.025, df))
 *
 * The variance of normal errors, times df, over the true variance follows chi-square. With ten pairs the upper limit is
 * 1.83 times the estimate, which is why the degrees of freedom always stand beside a typical error.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { chiSquareQuantile } from "../../kernel/student.js";
import { hopkins2000 } from "./sources.js";

export interface Limits {
  readonly low: number;
  readonly high: number;
}

/** A typical error above 0 and its degrees of freedom in, 95 % limits in the same unit out. */
export function typicalErrorLimits(typicalError: number, df: number): Limits {
  if (!(typicalError > 0)) throw new OutOfRange(info.id, "typical error", typicalError, "a number above 0");
  if (!(df >= 1)) throw new OutOfRange(info.id, "degrees of freedom", df, "1 or more");
  if (df === Number.POSITIVE_INFINITY) return { low: typicalError, high: typicalError };
  return {
    low: typicalError * Math.sqrt(df / chiSquareQuantile(0.975, df)),
    high: typicalError * Math.sqrt(df / chiSquareQuantile(0.025, df)),
  };
}

export const info: FormulaInfo<[number, number], Limits> = {
  id: "typical-error-limits",
  revision: 1,
  title: "95 % limits of a typical error",
  equation: "TE √(df/χ²(0.975; df)) to TE √(df/χ²(0.025; df))",
  inputs: {
    typicalError: { unit: "as the measure", range: "above 0" },
    df: { unit: "", range: "1 or more" },
  },
  output: { unit: "as the measure", decimals: 2 },
  source: { ...hopkins2000, where: "confidence limits of the typical error" },
  compute: typicalErrorLimits,
  checks: [
    {
      given: [0.73064, 9],
      expect: 0.50256,
      tolerance: 0.0001,
      pick: (out) => out.low,
      from: "by hand: 0.73064 √(9/19.023), χ² of NIST e-Handbook 1.3.6.7.4",
    },
    {
      given: [0.73064, 9],
      expect: 1.33386,
      tolerance: 0.0002,
      pick: (out) => out.high,
      from: "by hand: 0.73064 √(9/2.700), χ² of NIST e-Handbook 1.3.6.7.4",
    },
    { given: [0, 9], expect: "refused", from: "an error of zero has no limits" },
  ],
};
