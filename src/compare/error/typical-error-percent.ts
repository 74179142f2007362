/**
 * Typical error as a coefficient of variation, by logarithms.
 *
 *     s = SD(ln retest − ln test) / √2,   CV = 100 (eˢ − 1) %
 *
 * For measures whose error grows with the value (uptake, power, energy expenditure): a strong and a weak client share a
 * percentage, not a number of watts. Positive values only.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { type Pair, WORKED_PAIRS } from "./pairs.js";
import { hopkins2000 } from "./sources.js";
import { typicalError } from "./typical-error.js";

/** Two or more pairs of positive values in, percent out. */
export function typicalErrorPercent(pairs: readonly Pair[]): number {
  return percentOfLogError(logError(pairs));
}

/** The typical error of the natural logarithms. */
export function logError(pairs: readonly Pair[]): number {
  const lowest = Math.min(...pairs.flat());
  if (!(lowest > 0)) throw new OutOfRange(info.id, "lowest value", lowest, "values above 0");
  return typicalError(pairs.map(([test, retest]): Pair => [Math.log(test), Math.log(retest)]));
}

export const percentOfLogError = (s: number): number => 100 * Math.expm1(s);
export const logErrorOfPercent = (cvPercent: number): number => Math.log1p(cvPercent / 100);

export const info: FormulaInfo<[readonly Pair[]], number> = {
  id: "typical-error-percent",
  revision: 1,
  title: "Typical error as a coefficient of variation",
  equation: "CV = 100 (exp(SD(ln retest − ln test)/√2) − 1)",
  inputs: { pairs: { unit: "as the measure", range: "two or more pairs of values above 0" } },
  output: { unit: "%", decimals: 1 },
  source: { ...hopkins2000, where: "typical error by log transformation" },
  compute: typicalErrorPercent,
  checks: [
    {
      given: [WORKED_PAIRS],
      expect: 1.54356,
      tolerance: 0.00001,
      from: "worked out from the ten log differences: SD 0.0216625, over √2 = 0.0153177",
    },
    {
      given: [
        [
          [100, 110],
          [100, 100],
        ],
      ],
      expect: 4.8809,
      tolerance: 0.0001,
      from: "by hand: log differences ln 1.1 and 0, SD ln 1.1/√2, over √2 = ln 1.1/2, so √1.1 − 1",
    },
    {
      given: [
        [
          [0, 5],
          [4, 5],
        ],
      ],
      expect: "refused",
      from: "zero has no logarithm",
    },
  ],
};
