/**
 * Peak oxygen uptake from the highest speed and grade of a treadmill test: made for peaks, unlike the steady-state
 * equations, which read 21 % too high there.
 *
 *     S·(0.17 + 0.79·G) + 3.5      S m/min, G grade as a fraction
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from highest speed and grade: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillPeakFriend(speedKmH: number, gradePercent: number): number {
  requireRange(info.id, "speed", speedKmH, 1.5, 25, "km/h");
  requireRange(info.id, "grade", gradePercent, 0, 30, "%");
  return (speedKmH / 0.06) * (0.17 + (0.79 * gradePercent) / 100) + 3.5;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "treadmill-peak-friend",
  revision: 1,
  title: "Peak uptake from highest speed and grade",
  equation: "S·(0.17 + 0.79·G) + 3.5",
  inputs: { speed: { unit: "km/h", range: "1.5 to 25" }, grade: { unit: "%", range: "0 to 30" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "It estimates; it does not measure. SD of the error 18 %.",
  source: {
    authors: "Kokkinos P, Kaminsky LA, Arena R, Zhang J, Myers J",
    year: 2017,
    title: "New generalized equation for predicting maximal oxygen uptake (from FRIEND)",
    journal: "Am J Cardiol",
    where: "abstract; error 5.1 % (SD 18.3)",
    verified: "seen",
  },
  compute: treadmillPeakFriend,
  checks: [
    { given: [12, 1], expect: 39.08, tolerance: 0.005, from: "by hand: 200 · 0.1779 + 3.5" },
    { given: [5.472, 14], expect: 29.09, tolerance: 0.005, from: "by hand, third Bruce stage: 91.20 · 0.2806 + 3.5" },
    { given: [12, -1], expect: "refused", from: "downhill" },
  ],
};
