/**
 * Mean shift between test and retest, with its 95 % interval: learning, fatigue, or a drifting instrument.
 *
 *     d̄ ± t(0.975, n − 1) · SD(d)/√n
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { mean, sampleSd } from "../../kernel/statistics.js";
import { studentQuantile } from "../../kernel/student.js";
import { differences, type Pair, WORKED_PAIRS } from "./pairs.js";
import { hopkins2000 } from "./sources.js";

export interface Shift {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** Two or more pairs in, mean of retest − test with 95 % interval in the unit of the measure out. */
export function meanShift(pairs: readonly Pair[]): Shift {
  const d = differences(info.id, pairs);
  const half = (studentQuantile(0.975, d.length - 1) * sampleSd(d)) / Math.sqrt(d.length);
  return { mean: mean(d), low: mean(d) - half, high: mean(d) + half };
}

export const info: FormulaInfo<[readonly Pair[]], Shift> = {
  id: "mean-shift",
  revision: 1,
  title: "Mean shift between test and retest",
  equation: "mean(d) ± t(0.975; n−1) SD(d)/√n",
  inputs: { pairs: { unit: "as the measure", range: "two or more pairs" } },
  output: { unit: "as the measure", decimals: 2 },
  source: { ...hopkins2000, where: "change in the mean" },
  compute: meanShift,
  checks: [
    { given: [WORKED_PAIRS], expect: 0.41, tolerance: 1e-9, pick: (s) => s.mean, from: "by hand: 4.1/10" },
    {
      given: [WORKED_PAIRS],
      expect: -0.3292,
      tolerance: 0.0001,
      pick: (s) => s.low,
      from: "by hand: 0.41 − 2.26216 · 1.03328/√10 = 0.41 − 0.73916",
    },
  ],
};
