/**
 * Maximal heart rate predicted from age.
 *
 *     HRmax = 207 − 0.7 · age
 *
 * A mean line through many people. It says little of one of them: never use it to call a test maximal or not by itself.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Years in, beats/min out. */
export function gellish2007(ageYears: number): number {
  requireRange(info.id, "age", ageYears, 30, 75, "years");
  return 207 - 0.7 * ageYears;
}

export const info: FormulaInfo<[number], number> = {
  id: "gellish-2007",
  revision: 1,
  title: "Maximal heart rate predicted from age (Gellish 2007)",
  equation: "HRmax = 207 − 0.7 · age",
  inputs: { age: { unit: "years", range: "30 to 75" } },
  output: { unit: "1/min", decimals: 0 },

  caveat: "The handbook error is 5 to 8 /min; persons differ more.",
  source: {
    authors: "Gellish RL, Goslin BR, Olson RE, et al.",
    year: 2007,
    title: "Longitudinal modeling of the relationship between age and maximal heart rate",
    journal: "Med Sci Sports Exerc 39(5):822–829",
    doi: "10.1097/mss.0b013e31803349c6",
    where: "linear equation 207 − 0.7 · age; 132 people, 908 tests",
    verified: "seen",
  },
  compute: gellish2007,
  checks: [
    { given: [40], expect: 179.0, tolerance: 1e-9, from: "by hand: 207 − 0.7 · 40" },
    { given: [29], expect: "refused", from: "younger than the source's people" },
  ],
};
