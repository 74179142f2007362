/**
 * 95 % interval of one person's true change.
 *
 *     D ± t(0.975; df) · √(TE²/m₁ + TE²/m₂)
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { detectableChange } from "./detectable-change.js";
import { swinton2018 } from "./sources.js";
import type { Limits } from "./typical-error-limits.js";

/** Change and typical error in one unit, df of the error, tests averaged; limits in that unit out. */
export function changeInterval(
  change: number,
  typicalError: number,
  df: number,
  testsBefore = 1,
  testsNow = 1,
): Limits {
  if (!Number.isFinite(change)) throw new OutOfRange(info.id, "change", change, "a finite number");
  const half = detectableChange(typicalError, df, testsBefore, testsNow);
  return { low: change - half, high: change + half };
}

const known = Number.POSITIVE_INFINITY;
export const info: FormulaInfo<[number, number, number, number, number], Limits> = {
  id: "change-interval",
  revision: 1,
  title: "95 % interval of a change",
  equation: "D ± t(0.975; df) · √(TE²/m₁ + TE²/m₂)",
  inputs: {
    change: { unit: "as the measure", range: "any" },
    typicalError: { unit: "as the measure", range: "above 0" },
    df: { unit: "", range: "1 or more" },
    testsBefore: { unit: "", range: "1 or more" },
    testsNow: { unit: "", range: "1 or more" },
  },
  output: { unit: "as the measure", decimals: 2 },
  source: swinton2018,
  compute: changeInterval,
  checks: [
    {
      given: [3.5, 1.3, known, 1, 1],
      expect: -0.103,
      tolerance: 0.0005,
      pick: (x) => x.low,
      from: "by hand: 3.5 − 1.95996 · 1.83848",
    },
    {
      given: [3.5, 1.3, known, 1, 1],
      expect: 7.103,
      tolerance: 0.0005,
      pick: (x) => x.high,
      from: "by hand: 3.5 + 1.95996 · 1.83848",
    },
  ],
};
