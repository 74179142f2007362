/**
 * Peak oxygen uptake of sedentary men from the highest power of a cycle test rising by 15 W each minute.
 *
 *     10.51·W + 6.35·mass − 10.49·age + 519.3      mL/min
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from highest cycle power, men: mL/min. Throws OutOfRange outside the ranges in `info`. */
export function cyclePowerStorerMen(powerW: number, massKg: number, ageYears: number): number {
  requireRange(info.id, "highest power", powerW, 30, 600, "W");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "age", ageYears, 20, 70.999, "years");
  return 10.51 * powerW + 6.35 * massKg - 10.49 * ageYears + 519.3;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "cycle-power-storer-men",
  revision: 1,
  title: "Peak uptake from highest cycle power, men",
  equation: "10.51·W + 6.35·mass − 10.49·age + 519.3",
  inputs: {
    "highest power": { unit: "W", range: "30 to 600" },
    "body mass": { unit: "kg", range: "30 to 200" },
    age: { unit: "years", range: "20 to 70.999" },
  },
  output: { unit: "mL/min", decimals: 0 },
  see: 212,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Storer TW, Davis JA, Caiozzo VJ",
    year: 1990,
    title: "Accurate prediction of VO2max in cycle ergometry",
    journal: "Med Sci Sports Exerc 22(5):704–712",
    doi: "10.1249/00005768-199010000-00024",
    where: "abstract",
    verified: "seen",
  },
  compute: cyclePowerStorerMen,
  checks: [
    { given: [200, 80, 40], expect: 2709.7, tolerance: 0.001, from: "by hand: 2102 + 508 − 419.6 + 519.3" },
    { given: [200, 80, 75], expect: "refused", from: "the sample was 20 to 70 years" },
  ],
};
