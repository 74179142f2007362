/**
 * Body density of women from the sum of 7 skinfolds (chest, midaxillary, triceps, subscapular, abdomen, suprailiac, thigh).
 *
 *     D = 1.097 − 0.00046971·S + 0.00000056·S² − 0.00012828·age
 *
 * The parabola bends because thick folds hold ever more of the fat that counts; beyond its vertex it would turn back,
 * so sums beyond the largest of the sample (from memory) are refused.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Body density from 7 skinfolds, women: g/mL. Throws OutOfRange outside the ranges in `info`. */
export function densitySevenSiteWomen(sumMm: number, ageYears: number): number {
  requireRange(info.id, "sum of skinfolds", sumMm, 15, 266, "mm");
  requireRange(info.id, "age", ageYears, 18, 55.999, "years");
  return 1.097 - 0.00046971 * sumMm + 0.00000056 * sumMm ** 2 - 0.00012828 * ageYears;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "density-seven-site-women",
  revision: 1,
  title: "Body density from 7 skinfolds, women",
  equation: "D = 1.097 − 0.00046971·S + 0.00000056·S² − 0.00012828·age",
  inputs: { "sum of skinfolds": { unit: "mm", range: "15 to 266" }, age: { unit: "years", range: "18 to 55.999" } },
  output: { unit: "g/mL", decimals: 4 },
  caveat: "A fat share from skinfolds errs by 3 to 4 percentage points; follow the sum of skinfolds instead.",
  source: {
    authors: "Jackson AS, Pollock ML, Ward A",
    year: 1980,
    title: "Generalized equations for predicting body density of women",
    journal: "Med Sci Sports Exerc 12(3):175–181",
    where: "equations for seven and three skinfolds",
    verified: "seen",
  },
  compute: densitySevenSiteWomen,
  checks: [
    { given: [100, 35], expect: 1.0511392, tolerance: 1e-7, from: "by hand: 1.097 − 0.046971 + 0.0056 − 0.0044898" },
    { given: [60, 56], expect: "refused", from: "the sample ended at 55 years" },
  ],
};
