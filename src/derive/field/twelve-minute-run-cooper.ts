/**
 * Peak oxygen uptake from the distance run in twelve minutes.
 *
 *     (distance − 504.9) / 44.73
 *
 * Best from 1.4 miles (2253 m) on: below that many walk, and the line no longer holds. No standard error was published
 * with it; r was 0.90.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from a twelve-minute run: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function twelveMinuteRunCooper(distanceM: number, ageYears: number): number {
  requireRange(info.id, "distance", distanceM, 2253, 5000, "m");
  requireRange(info.id, "age", ageYears, 18, 65.999, "years");
  return (distanceM - 504.9) / 44.73;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "twelve-minute-run-cooper",
  revision: 1,
  title: "Peak uptake from a twelve-minute run",
  equation: "(m − 504.9) / 44.73",
  inputs: { distance: { unit: "m", range: "2253 to 5000" }, age: { unit: "years", range: "18 to 65.999" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Cooper KH",
    year: 1968,
    title: "A means of assessing maximal oxygen intake",
    journal: "JAMA 203:201–204",
    where: "35.97·miles − 11.28 as reprinted, and the same in metres",
    verified: "seen",
  },
  compute: twelveMinuteRunCooper,
  checks: [
    { given: [2600, 30], expect: 46.84, tolerance: 0.005, from: "by hand: 2095.1 / 44.73" },
    { given: [2000, 30], expect: "refused", from: "below 1.4 miles" },
    {
      given: [2896.8192, 30],
      expect: 53.47,
      tolerance: 0.02,
      from: "by hand, the form in miles: 35.97 · 1.8 − 11.28 = 53.466",
    },
  ],
};
