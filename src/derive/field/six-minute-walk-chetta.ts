/**
 * Reference distance of the six-minute walk from 20 to 50 years.
 *
 *     518.853 + 1.25·stature − 2.816·age − 39.07·(1 for women)
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Six-minute walk, reference distance, 20 to 50 years: m. Throws OutOfRange outside the ranges in `info`. */
export function sixMinuteWalkChetta(sex: "female" | "male", statureCm: number, ageYears: number): number {
  requireRange(info.id, "stature", statureCm, 100, 250, "cm");
  requireRange(info.id, "age", ageYears, 20, 49.999, "years");
  return 518.853 + 1.25 * statureCm - 2.816 * ageYears - (sex === "female" ? 39.07 : 0);
}

export const info: FormulaInfo<["female" | "male", number, number], number> = {
  id: "six-minute-walk-chetta",
  revision: 1,
  title: "Six-minute walk, reference distance, 20 to 50 years",
  equation: "518.853 + 1.25·cm − 2.816·age − 39.07·(1 for women)",
  inputs: {
    sex: { unit: "", range: "female or male" },
    stature: { unit: "cm", range: "100 to 250" },
    age: { unit: "years", range: "20 to 49.999" },
  },
  output: { unit: "m", decimals: 0 },
  caveat: "Explains about 40 % of the variation between people.",
  source: {
    authors: "Chetta A, Zanini A, Pisi G, et al.; as tabled by Singh SJ, et al.",
    year: 2006,
    title: "Reference values for the 6-min walk test in healthy subjects 20–50 years old",
    journal: "Respir Med 100:1573–1578; Eur Respir J 44 (2014), Table 5",
    where: "Table 5 of the review",
    verified: "seen",
  },
  compute: sixMinuteWalkChetta,
  checks: [
    { given: ["male", 178, 40], expect: 628.713, tolerance: 0.001, from: "by hand: 518.853 + 222.5 − 112.64" },
    {
      given: ["female", 165, 30],
      expect: 601.553,
      tolerance: 0.001,
      from: "by hand: 518.853 + 206.25 − 84.48 − 39.07",
    },
    { given: ["male", 178, 51], expect: "refused", from: "the sample ended at 50 years" },
  ],
};
