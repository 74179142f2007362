/**
 * Peak oxygen uptake of men from the time to exhaustion on the Balke protocol.
 *
 *     1.444·t + 14.99
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from Balke treadmill time, men: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillTimeBalkeMen(timeMin: number, ageYears: number): number {
  requireRange(info.id, "time", timeMin, 3, 35, "min");
  requireRange(info.id, "age", ageYears, 35, 55.999, "years");
  return 1.444 * timeMin + 14.99;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "treadmill-time-balke-men",
  revision: 1,
  title: "Peak uptake from Balke treadmill time, men",
  equation: "1.444·t + 14.99",
  inputs: { time: { unit: "min", range: "3 to 35" }, age: { unit: "years", range: "35 to 55.999" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "Not with a hand on the rail, nor on the modified protocol.",
  source: {
    authors: "Pollock ML, et al.",
    year: "1976 and 1982",
    title: "Comparative analyses of treadmill protocols in men and women",
    journal: "Am Heart J 92:39–46 and 103:363–373",
    where: "equations for the Balke protocol as reprinted in NSCA's Guide, chapter 5",
    verified: "seen",
  },
  compute: treadmillTimeBalkeMen,
  checks: [
    { given: [18, 45], expect: 40.98, tolerance: 0.005, from: "by hand: 25.992 + 14.99" },
    { given: [18, 30], expect: "refused", from: "the sample was 35 to 55 years" },
  ],
};
