/**
 * Gross oxygen cost of steady walking.
 *
 *     VO2 = 0.1·S + 1.8·S·G + 3.5      S m/min, G grade as a fraction
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Oxygen cost of walking: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function oxygenCostWalking(speedKmH: number, gradePercent: number): number {
  requireRange(info.id, "speed", speedKmH, 3, 6, "km/h");
  requireRange(info.id, "grade", gradePercent, 0, 30, "%");
  const s = speedKmH / 0.06;
  return 0.1 * s + (1.8 * s * gradePercent) / 100 + 3.5;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "oxygen-cost-walking",
  revision: 1,
  title: "Oxygen cost of walking",
  equation: "VO2 = 0.1·S + 1.8·S·G + 3.5",
  inputs: { speed: { unit: "km/h", range: "3 to 6" }, grade: { unit: "%", range: "0 to 30" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "Steady state, no handrail, not downhill, not above the second threshold; about 7 % off for one person.",
  source: {
    authors: "American College of Sports Medicine, restated by Bushman BA",
    year: 2020,
    title: "Metabolic calculations in action, parts 1 and 2",
    journal: "ACSM's Health & Fitness Journal 24(3):6–10 and 24(4):5–8",
    doi: "10.1249/FIT.0000000000000562",
    verified: "seen",
    where: "Box 1: walking, 50 to 100 m/min",
  },
  compute: oxygenCostWalking,
  checks: [
    { given: [5.5, 10], expect: 29.17, tolerance: 0.005, from: "by hand: S = 91.67; 9.17 + 16.5 + 3.5" },
    { given: [5.628, 10], expect: 29.76, tolerance: 0.01, from: "published worked example: S 93.8, grade 10 %" },
    { given: [7, 0], expect: "refused", from: "faster than 100 m/min" },
  ],
};
