/**
 * Chance that a true value lies at or beyond a line that may itself hang on a measured baseline.
 *
 *     P = P(T ≤ margin / (TE √(1/m₂ + w²/m₁)))
 *
 * margin is the measured distance beyond the line (positive: beyond it), w the weight of the baseline in the line: 0 for a
 * fixed target, 1 − elapsed share on the way from baseline to target.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { studentCdf } from "../../kernel/student.js";
import { swinton2018 } from "./sources.js";

/** Margin and typical error in one unit, df ≥ 1, weight 0 to 1, tests averaged on each side; a share of 1 out. */
export function chanceOfReaching(
  margin: number,
  typicalError: number,
  df: number,
  weight: number,
  testsBefore: number,
  testsNow: number,
): number {
  if (!Number.isFinite(margin)) throw new OutOfRange(info.id, "margin", margin, "a finite number");
  if (!(typicalError > 0)) throw new OutOfRange(info.id, "typical error", typicalError, "a number above 0");
  requireRange(info.id, "weight of the baseline", weight, 0, 1, "");
  return studentCdf(margin / (typicalError * Math.sqrt(1 / testsNow + weight ** 2 / testsBefore)), df);
}

export const info: FormulaInfo<[number, number, number, number, number, number], number> = {
  id: "chance-of-reaching",
  revision: 1,
  title: "Chance that a true value has reached a line",
  equation: "P(T ≤ margin/(TE √(1/m₂ + w²/m₁)))",
  inputs: {
    margin: { unit: "as the measure", range: "any" },
    typicalError: { unit: "as the measure", range: "above 0" },
    df: { unit: "", range: "1 or more" },
    weight: { unit: "", range: "0 to 1" },
    testsBefore: { unit: "", range: "1 or more" },
    testsNow: { unit: "", range: "1 or more" },
  },
  output: { unit: "share", decimals: 2 },
  source: swinton2018,
  compute: chanceOfReaching,
  checks: [
    {
      given: [1, 1, Number.POSITIVE_INFINITY, 0, 1, 1],
      expect: 0.84134,
      tolerance: 0.00001,
      from: "normal table: one standard deviation beyond a fixed line",
    },
    {
      given: [1, 1, Number.POSITIVE_INFINITY, 1, 1, 1],
      expect: 0.76025,
      tolerance: 0.00001,
      from: "normal table: 1/√2 = 0.70711, where the line hangs on one test",
    },
    { given: [1, 0, 9, 0, 1, 1], expect: "refused", from: "an error of zero cannot be" },
  ],
};
