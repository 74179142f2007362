/**
 * Difference of grip between the hands, as a share of the stronger.
 *
 *     100 · (right − left) / max(right, left)
 *
 * Dominant hands are on average 5 to 6 % stronger, so a few percent say nothing.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Difference between the hands: %. Throws OutOfRange outside the ranges in `info`. */
export function handDifference(rightKg: number, leftKg: number): number {
  requireRange(info.id, "right hand", rightKg, 1, 110, "kg");
  requireRange(info.id, "left hand", leftKg, 1, 110, "kg");
  return (100 * (rightKg - leftKg)) / Math.max(rightKg, leftKg);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "hand-difference",
  revision: 1,
  title: "Difference between the hands",
  equation: "100 · (right − left) / the stronger",
  inputs: { "right hand": { unit: "kg", range: "1 to 110" }, "left hand": { unit: "kg", range: "1 to 110" } },
  output: { unit: "%", decimals: 1 },
  source: {
    authors:
      "National Health and Nutrition Examination Survey 2011–2014 and NIH Toolbox data, as analysed in Laterality",
    year: 2019,
    title: "Differences in grip strength between the hands",
    journal: "Laterality",
    doi: "10.1080/1357650X.2019.1604727",
    where: "abstract: dominant less non-dominant 5.0 to 5.6 %",
    verified: "seen",
  },
  compute: handDifference,
  checks: [
    { given: [40, 38], expect: 5, tolerance: 1e-9, from: "by hand: 100 · 2 / 40" },
    { given: [40, 0], expect: "refused", from: "a hand that was not tested is not 0 kg" },
  ],
};
