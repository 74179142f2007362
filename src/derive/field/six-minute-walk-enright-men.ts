/**
 * Reference distance of the six-minute walk, men of 40 to 80 years.
 *
 *     7.57·cm − 5.02·age − 1.76·kg − 309
 *
 * Another equation of the same group differs by 70 m for the same person, so percent of it is a rough guide.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Six-minute walk, reference distance, men: m. Throws OutOfRange outside the ranges in `info`. */
export function sixMinuteWalkEnrightMen(statureCm: number, ageYears: number, massKg: number): number {
  requireRange(info.id, "stature", statureCm, 100, 250, "cm");
  requireRange(info.id, "age", ageYears, 40, 80.999, "years");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  return 7.57 * statureCm - 5.02 * ageYears - 1.76 * massKg - 309;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "six-minute-walk-enright-men",
  revision: 1,
  title: "Six-minute walk, reference distance, men",
  equation: "7.57·cm − 5.02·age − 1.76·kg − 309",
  inputs: {
    stature: { unit: "cm", range: "100 to 250" },
    age: { unit: "years", range: "40 to 80.999" },
    "body mass": { unit: "kg", range: "30 to 200" },
  },
  output: { unit: "m", decimals: 0 },
  caveat: "Explains about 40 % of the variation between people.",
  source: {
    authors: "Enright PL, Sherrill DL; as tabled by Singh SJ, et al.",
    year: 1998,
    title: "Reference equations for the six-minute walk in healthy adults",
    journal: "Am J Respir Crit Care Med 158:1384–1387; Eur Respir J 44 (2014), Table 5",
    where: "Table 5 of the review",
    verified: "seen",
  },
  compute: sixMinuteWalkEnrightMen,
  checks: [
    { given: [175, 60, 80], expect: 573.75, tolerance: 0.001, from: "by hand: 1324.75 − 301.2 − 140.8 − 309" },
    { given: [175, 30, 75], expect: "refused", from: "the sample began at 40 years" },
  ],
};
