/**
 * Peak oxygen uptake of sedentary women from the highest power of a cycle test rising by 15 W each minute.
 *
 *     9.39·W + 7.7·mass − 5.88·age + 136.7      mL/min
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from highest cycle power, women: mL/min. Throws OutOfRange outside the ranges in `info`. */
export function cyclePowerStorerWomen(powerW: number, massKg: number, ageYears: number): number {
  requireRange(info.id, "highest power", powerW, 30, 600, "W");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "age", ageYears, 20, 70.999, "years");
  return 9.39 * powerW + 7.7 * massKg - 5.88 * ageYears + 136.7;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "cycle-power-storer-women",
  revision: 1,
  title: "Peak uptake from highest cycle power, women",
  equation: "9.39·W + 7.7·mass − 5.88·age + 136.7",
  inputs: {
    "highest power": { unit: "W", range: "30 to 600" },
    "body mass": { unit: "kg", range: "30 to 200" },
    age: { unit: "years", range: "20 to 70.999" },
  },
  output: { unit: "mL/min", decimals: 0 },
  see: 147,
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
  compute: cyclePowerStorerWomen,
  checks: [
    {
      given: [150, 65, 40],
      expect: 1810.5,
      tolerance: 0.001,
      from: "by hand: 1408.5 + 500.5 − 235.2 + 136.7 = 1810.5",
    },
    { given: [150, 65, 19], expect: "refused", from: "the sample was 20 to 70 years" },
  ],
};
