/**
 * A measured value as a share of its prediction.
 *
 *     % = 100 · measured / predicted
 *
 * It carries the prediction's own error, so 90 % is not a shortfall of 10 %.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Both in one unit. Throws OutOfRange unless both are above zero. */
export function percentOfPredicted(measured: number, predicted: number): number {
  requireRange(info.id, "measured value", measured, Number.MIN_VALUE, 1e9, "");
  requireRange(info.id, "predicted value", predicted, Number.MIN_VALUE, 1e9, "");
  return (100 * measured) / predicted;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "percent-of-predicted",
  revision: 1,
  title: "Share of the predicted value",
  equation: "% = 100·measured / predicted",
  inputs: { measured: { unit: "any", range: "above 0" }, predicted: { unit: "the same", range: "above 0" } },
  output: { unit: "%", decimals: 0 },
  source: {
    authors: "this project",
    year: null,
    title: "Definition",
    where: "common practice",
    verified: "common practice",
  },
  compute: percentOfPredicted,
  checks: [{ given: [1602, 1780], expect: 90, tolerance: 0.001, from: "by hand: 1602 / 1780" }],
};
