/**
 * Peak oxygen uptake of women from the time to exhaustion on the Balke protocol.
 *
 *     1.38·t + 5.2
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from Balke treadmill time, women: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillTimeBalkeWomen(timeMin: number, ageYears: number): number {
  requireRange(info.id, "time", timeMin, 3, 35, "min");
  requireRange(info.id, "age", ageYears, 20, 42.999, "years");
  return 1.38 * timeMin + 5.2;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "treadmill-time-balke-women",
  revision: 1,
  title: "Peak uptake from Balke treadmill time, women",
  equation: "1.38·t + 5.2",
  inputs: { time: { unit: "min", range: "3 to 35" }, age: { unit: "years", range: "20 to 42.999" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 2.2,
  caveat: "Not with a hand on the rail, nor on the modified protocol.",
  source: {
    authors: "Pollock ML, et al.",
    year: "1976 and 1982",
    title: "Comparative analyses of treadmill protocols in men and women",
    journal: "Am Heart J 92:39–46 and 103:363–373",
    where: "equations for the Balke protocol as reprinted in NSCA's Guide, chapter 5",
    verified: "seen",
  },
  compute: treadmillTimeBalkeWomen,
  checks: [
    { given: [18, 30], expect: 30.04, tolerance: 0.005, from: "by hand: 24.84 + 5.2" },
    { given: [18, 43], expect: "refused", from: "the sample was 20 to 42 years" },
  ],
};
