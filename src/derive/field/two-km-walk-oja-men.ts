/**
 * Peak oxygen uptake of men from a two-kilometre walk: the model with body weight.
 *
 *     189.6 − 5.32·time − 0.22·heart rate − 0.32·age − 0.24·mass
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from a two-kilometre walk, men: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function twoKmWalkOjaMen(ageYears: number, massKg: number, timeMin: number, heartRate: number): number {
  requireRange(info.id, "age", ageYears, 20, 65.999, "years");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "time", timeMin, 9, 40, "min");
  requireRange(info.id, "heart rate", heartRate, 60, 220, "1/min");
  return 189.6 - 5.32 * timeMin - 0.22 * heartRate - 0.32 * ageYears - 0.24 * massKg;
}

export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "two-km-walk-oja-men",
  revision: 1,
  title: "Peak uptake from a two-kilometre walk, men",
  equation: "189.6 − 5.32·min − 0.22·HR − 0.32·age − 0.24·kg",
  inputs: {
    age: { unit: "years", range: "20 to 65.999" },
    "body mass": { unit: "kg", range: "30 to 200" },
    time: { unit: "min", range: "9 to 40" },
    "heart rate": { unit: "1/min", range: "60 to 220" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 6.2,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Oja P, Laukkanen R, Pasanen M, Tyry T, Vuori I",
    year: 1991,
    title: "A 2-km walking test for assessing the cardiorespiratory fitness of healthy adults",
    journal: "Int J Sports Med 12:356–362",
    where: "weight model; SEE 6.2",
    verified: "seen",
  },
  compute: twoKmWalkOjaMen,
  checks: [
    { given: [40, 80, 15, 140], expect: 47, tolerance: 0.001, from: "by hand: 189.6 − 79.8 − 30.8 − 12.8 − 19.2" },
    { given: [66, 80, 15, 140], expect: "refused", from: "the sample ended at 65 years" },
  ],
};
