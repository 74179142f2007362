/**
 * Body density of men from the sum of 3 skinfolds (chest, abdomen, thigh).
 *
 *     D = 1.10938 − 0.00082670·S + 0.00000160·S² − 0.0002574·age
 *
 * The parabola bends because thick folds hold ever more of the fat that counts; beyond its vertex it would turn back,
 * so sums beyond the largest of the sample (from memory) are refused.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Body density from 3 skinfolds, men: g/mL. Throws OutOfRange outside the ranges in `info`. */
export function densityThreeSiteMen(sumMm: number, ageYears: number): number {
  requireRange(info.id, "sum of skinfolds", sumMm, 8, 118, "mm");
  requireRange(info.id, "age", ageYears, 18, 61.999, "years");
  return 1.10938 - 0.0008267 * sumMm + 0.0000016 * sumMm ** 2 - 0.0002574 * ageYears;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "density-three-site-men",
  revision: 1,
  title: "Body density from 3 skinfolds, men",
  equation: "D = 1.10938 − 0.00082670·S + 0.00000160·S² − 0.0002574·age",
  inputs: { "sum of skinfolds": { unit: "mm", range: "8 to 118" }, age: { unit: "years", range: "18 to 61.999" } },
  output: { unit: "g/mL", decimals: 4 },
  caveat: "A fat share from skinfolds errs by 3 to 4 percentage points; follow the sum of skinfolds instead.",
  source: {
    authors: "Jackson AS, Pollock ML",
    year: 1978,
    title: "Generalized equations for predicting body density of men",
    journal: "Br J Nutr 40(3):497–504",
    doi: "10.1079/BJN19780152",
    where: "equations for seven and three skinfolds",
    verified: "seen",
  },
  compute: densityThreeSiteMen,
  checks: [
    { given: [45, 40], expect: 1.0651225, tolerance: 1e-7, from: "by hand: 1.10938 − 0.0372015 + 0.00324 − 0.010296" },
    { given: [60, 62], expect: "refused", from: "the sample ended at 61 years" },
  ],
};
