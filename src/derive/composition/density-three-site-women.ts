/**
 * Body density of women from the sum of 3 skinfolds (triceps, suprailiac, thigh).
 *
 *     D = 1.0994921 − 0.00099290·S + 0.00000230·S² − 0.0001392·age
 *
 * The parabola bends because thick folds hold ever more of the fat that counts; beyond its vertex it would turn back,
 * so sums beyond the largest of the sample (from memory) are refused.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Body density from 3 skinfolds, women: g/mL. Throws OutOfRange outside the ranges in `info`. */
export function densityThreeSiteWomen(sumMm: number, ageYears: number): number {
  requireRange(info.id, "sum of skinfolds", sumMm, 8, 126, "mm");
  requireRange(info.id, "age", ageYears, 18, 55.999, "years");
  return 1.0994921 - 0.0009929 * sumMm + 0.0000023 * sumMm ** 2 - 0.0001392 * ageYears;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "density-three-site-women",
  revision: 1,
  title: "Body density from 3 skinfolds, women",
  equation: "D = 1.0994921 − 0.00099290·S + 0.00000230·S² − 0.0001392·age",
  inputs: { "sum of skinfolds": { unit: "mm", range: "8 to 126" }, age: { unit: "years", range: "18 to 55.999" } },
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
  compute: densityThreeSiteWomen,
  checks: [
    {
      given: [55, 35],
      expect: 1.0469681,
      tolerance: 1e-7,
      from: "by hand: 1.0994921 − 0.0546095 + 0.0069575 − 0.004872",
    },
    { given: [60, 56], expect: "refused", from: "the sample ended at 55 years" },
  ],
};
