/**
 * Range of a person's true value from one test (or the mean of m).
 *
 *     x ± t(0.975; df) · TE / √m
 *
 * One score carries one error: no √2 here.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { studentQuantile } from "../../kernel/student.js";
import { swinton2018 } from "./sources.js";
import type { Limits } from "./typical-error-limits.js";

/** Value and typical error in one unit, df of the error, tests averaged; limits in that unit out. */
export function singleScoreInterval(value: number, typicalError: number, df: number, tests = 1): Limits {
  if (!Number.isFinite(value)) throw new OutOfRange(info.id, "value", value, "a finite number");
  if (!(typicalError > 0)) throw new OutOfRange(info.id, "typical error", typicalError, "a number above 0");
  if (!(df >= 1)) throw new OutOfRange(info.id, "degrees of freedom", df, "1 or more");
  if (!(tests >= 1)) throw new OutOfRange(info.id, "tests averaged", tests, "1 or more");
  const half = (studentQuantile(0.975, df) * typicalError) / Math.sqrt(tests);
  return { low: value - half, high: value + half };
}

export const info: FormulaInfo<[number, number, number, number], Limits> = {
  id: "single-score-interval",
  revision: 1,
  title: "95 % interval of one result",
  equation: "x ± t(0.975; df) · TE/√m",
  inputs: {
    value: { unit: "as the measure", range: "any" },
    typicalError: { unit: "as the measure", range: "above 0" },
    df: { unit: "", range: "1 or more" },
    tests: { unit: "", range: "1 or more" },
  },
  output: { unit: "as the measure", decimals: 2 },
  source: swinton2018,
  compute: singleScoreInterval,
  checks: [
    {
      given: [46, 1.3, Number.POSITIVE_INFINITY, 1],
      expect: 43.45,
      tolerance: 0.005,
      pick: (x) => x.low,
      from: "by hand: 46 − 1.95996 · 1.3",
    },
    {
      given: [46, 1.3, Number.POSITIVE_INFINITY, 1],
      expect: 48.55,
      tolerance: 0.005,
      pick: (x) => x.high,
      from: "by hand: 46 + 1.95996 · 1.3",
    },
  ],
};
