/**
 * Body density of men from the sum of 7 skinfolds (chest, midaxillary, triceps, subscapular, abdomen, suprailiac, thigh).
 *
 *     D = 1.112 − 0.00043499·S + 0.00000055·S² − 0.00028826·age
 *
 * The parabola bends because thick folds hold ever more of the fat that counts; beyond its vertex it would turn back,
 * so sums beyond the largest of the sample (from memory) are refused.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Body density from 7 skinfolds, men: g/mL. Throws OutOfRange outside the ranges in `info`. */
export function densitySevenSiteMen(sumMm: number, ageYears: number): number {
  requireRange(info.id, "sum of skinfolds", sumMm, 15, 272, "mm");
  requireRange(info.id, "age", ageYears, 18, 61.999, "years");
  return 1.112 - 0.00043499 * sumMm + 0.00000055 * sumMm ** 2 - 0.00028826 * ageYears;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "density-seven-site-men",
  revision: 1,
  title: "Body density from 7 skinfolds, men",
  equation: "D = 1.112 − 0.00043499·S + 0.00000055·S² − 0.00028826·age",
  inputs: { "sum of skinfolds": { unit: "mm", range: "15 to 272" }, age: { unit: "years", range: "18 to 61.999" } },
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
  compute: densitySevenSiteMen,
  checks: [
    { given: [100, 40], expect: 1.0624706, tolerance: 1e-7, from: "by hand: 1.112 − 0.043499 + 0.0055 − 0.0115304" },
    { given: [60, 62], expect: "refused", from: "the sample ended at 61 years" },
  ],
};
