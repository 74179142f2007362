/**
 * Predicted resting energy expenditure, Harris-Benedict as refitted by Roza and Shizgal.
 *
 *     men    88.362 + 13.397·M + 4.799·H − 5.677·age
 *     women  447.593 + 9.247·M + 3.098·H − 4.330·age        kg, cm, years; kcal/d
 *
 * Refitted on 337 normal people measured by Harris and Benedict and by Benedict. The authors' 95 % limits for one
 * person are ±213 kcal/d in men and ±201 in women.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** kg, cm, years and sex in, kcal/d out. Throws OutOfRange outside 18 to 90 years and adult sizes. */
export function harrisBenedictRevised(
  massKg: number,
  statureCm: number,
  ageYears: number,
  sex: "female" | "male",
): number {
  requireRange(info.id, "body mass", massKg, 30, 250, "kg");
  requireRange(info.id, "stature", statureCm, 130, 225, "cm");
  requireRange(info.id, "age", ageYears, 18, 90, "years");
  return sex === "male"
    ? 88.362 + 13.397 * massKg + 4.799 * statureCm - 5.677 * ageYears
    : 447.593 + 9.247 * massKg + 3.098 * statureCm - 4.33 * ageYears;
}

export const info: FormulaInfo<[number, number, number, "female" | "male"], number> = {
  id: "harris-benedict-revised",
  revision: 1,
  title: "Predicted resting energy expenditure (Harris-Benedict, revised)",
  equation: "men: 88.362 + 13.397·M + 4.799·H − 5.677·age · women: 447.593 + 9.247·M + 3.098·H − 4.330·age",
  inputs: {
    M: { unit: "kg", range: "30 to 250" },
    H: { unit: "cm", range: "130 to 225" },
    age: { unit: "years", range: "18 to 90" },
    sex: { unit: "", range: "female, male" },
  },
  output: { unit: "kcal/d", decimals: 0 },
  source: {
    authors: "Roza AM, Shizgal HM",
    year: 1984,
    title: "The Harris Benedict equation reevaluated: resting energy requirements and the body cell mass",
    journal: "Am J Clin Nutr 40:168–182",
    doi: "10.1093/ajcn/40.1.168",
    where: "regression equations and their 95 % limits, as restated by a university hospital's nutrition page",
    verified: "seen",
  },
  compute: harrisBenedictRevised,
  checks: [
    {
      given: [80, 180, 30, "male"],
      expect: 1853.63,
      tolerance: 0.01,
      from: "by hand: 88.362 + 1071.76 + 863.82 − 170.31",
    },
    {
      given: [60, 165, 30, "female"],
      expect: 1383.68,
      tolerance: 0.01,
      from: "by hand: 447.593 + 554.82 + 511.17 − 129.9",
    },
    { given: [60, 165, 91, "female"], expect: "refused", from: "beyond 90 years" },
  ],
};
