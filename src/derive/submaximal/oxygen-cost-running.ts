/**
 * Gross oxygen cost of steady running.
 *
 *     VO2 = 0.2·S + 0.9·S·G + 3.5      S m/min, G grade as a fraction
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Oxygen cost of running: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function oxygenCostRunning(speedKmH: number, gradePercent: number): number {
  requireRange(info.id, "speed", speedKmH, 8.04, 25, "km/h");
  requireRange(info.id, "grade", gradePercent, 0, 30, "%");
  const s = speedKmH / 0.06;
  return 0.2 * s + (0.9 * s * gradePercent) / 100 + 3.5;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "oxygen-cost-running",
  revision: 1,
  title: "Oxygen cost of running",
  equation: "VO2 = 0.2·S + 0.9·S·G + 3.5",
  inputs: { speed: { unit: "km/h", range: "8.04 to 25" }, grade: { unit: "%", range: "0 to 30" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "Steady state, no handrail, not downhill, not above the second threshold; about 7 % off for one person.",
  source: {
    authors: "American College of Sports Medicine, restated by Bushman BA",
    year: 2020,
    title: "Metabolic calculations in action, parts 1 and 2",
    journal: "ACSM's Health & Fitness Journal 24(3):6–10 and 24(4):5–8",
    doi: "10.1249/FIT.0000000000000562",
    verified: "seen",
    where: "Box 1: running, from 134 m/min",
  },
  compute: oxygenCostRunning,
  checks: [
    { given: [12, 1], expect: 45.3, tolerance: 1e-9, from: "by hand: 40 + 1.8 + 3.5" },
    { given: [6, 0], expect: "refused", from: "slower than 134 m/min" },
  ],
};
