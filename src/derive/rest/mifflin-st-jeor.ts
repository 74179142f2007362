/**
 * Predicted resting energy expenditure, Mifflin and St Jeor.
 *
 *     men    10·M + 6.25·H − 5·age + 5
 *     women  10·M + 6.25·H − 5·age − 161        kg, cm, years; kcal/d
 *
 * From 498 healthy adults of normal and high weight, 19 to 78 years. A systematic review (Frankenfield 2005) found it
 * within 10 % of the measured value in more people than its rivals; in one person it can still be 20 % off. The rounded
 * coefficients of the abstract are used, not 9.99, 4.92 and 166.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** kg, cm, years and sex in, kcal/d out. Throws OutOfRange outside 19 to 78 years and adult sizes. */
export function mifflinStJeor(massKg: number, statureCm: number, ageYears: number, sex: "female" | "male"): number {
  requireRange(info.id, "body mass", massKg, 30, 250, "kg");
  requireRange(info.id, "stature", statureCm, 130, 225, "cm");
  requireRange(info.id, "age", ageYears, 19, 78, "years");
  return sex === "male"
    ? 10 * massKg + 6.25 * statureCm - 5 * ageYears + 5
    : 10 * massKg + 6.25 * statureCm - 5 * ageYears - 161;
}

export const info: FormulaInfo<[number, number, number, "female" | "male"], number> = {
  id: "mifflin-st-jeor",
  revision: 1,
  title: "Predicted resting energy expenditure (Mifflin-St Jeor)",
  equation: "men: 10·M + 6.25·H − 5·age + 5 · women: 10·M + 6.25·H − 5·age − 161",
  inputs: {
    M: { unit: "kg", range: "30 to 250" },
    H: { unit: "cm", range: "130 to 225" },
    age: { unit: "years", range: "19 to 78" },
    sex: { unit: "", range: "female, male" },
  },
  output: { unit: "kcal/d", decimals: 0 },
  source: {
    authors: "Mifflin MD, St Jeor ST, Hill LA, Scott BJ, Daugherty SA, Koh YO",
    year: 1990,
    title: "A new predictive equation for resting energy expenditure in healthy individuals",
    journal: "Am J Clin Nutr 51:241–247",
    doi: "10.1093/ajcn/51.2.241",
    where: "abstract, simplified equations; n = 498, R² = 0.71",
    verified: "seen",
  },
  compute: mifflinStJeor,
  checks: [
    { given: [80, 180, 30, "male"], expect: 1780, tolerance: 0.001, from: "by hand: 800 + 1125 − 150 + 5" },
    { given: [60, 165, 30, "female"], expect: 1320.25, tolerance: 0.001, from: "by hand: 600 + 1031.25 − 150 − 161" },
    { given: [60, 165, 18, "female"], expect: "refused", from: "the sample began at 19 years" },
    { given: [60, 1.65, 30, "female"], expect: "refused", from: "stature in metres" },
  ],
};
