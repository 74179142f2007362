/**
 * Peak oxygen uptake of women from a two-kilometre walk: the model with body weight.
 *
 *     121.4 − 2.81·time − 0.12·heart rate − 0.16·age − 0.24·mass
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from a two-kilometre walk, women: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function twoKmWalkOjaWomen(ageYears: number, massKg: number, timeMin: number, heartRate: number): number {
  requireRange(info.id, "age", ageYears, 20, 65.999, "years");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "time", timeMin, 9, 40, "min");
  requireRange(info.id, "heart rate", heartRate, 60, 220, "1/min");
  return 121.4 - 2.81 * timeMin - 0.12 * heartRate - 0.16 * ageYears - 0.24 * massKg;
}

export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "two-km-walk-oja-women",
  revision: 1,
  title: "Peak uptake from a two-kilometre walk, women",
  equation: "121.4 − 2.81·min − 0.12·HR − 0.16·age − 0.24·kg",
  inputs: {
    age: { unit: "years", range: "20 to 65.999" },
    "body mass": { unit: "kg", range: "30 to 200" },
    time: { unit: "min", range: "9 to 40" },
    "heart rate": { unit: "1/min", range: "60 to 220" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 4.5,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Oja P, Laukkanen R, Pasanen M, Tyry T, Vuori I",
    year: 1991,
    title: "A 2-km walking test for assessing the cardiorespiratory fitness of healthy adults",
    journal: "Int J Sports Med 12:356–362",
    where: "weight model; SEE 4.5",
    verified: "seen",
  },
  compute: twoKmWalkOjaWomen,
  checks: [
    { given: [40, 65, 17, 140], expect: 34.83, tolerance: 0.001, from: "by hand: 121.4 − 47.77 − 16.8 − 6.4 − 15.6" },
    { given: [19, 65, 17, 140], expect: "refused", from: "the sample began at 20 years" },
  ],
};
