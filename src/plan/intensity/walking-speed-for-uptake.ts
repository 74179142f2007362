/**
 * Walking speed that costs a given oxygen uptake: the walking equation solved for speed.
 *
 *     S = (VO2 − 3.5)/(0.1 + 1.8·G)      S m/min, G grade as a fraction
 */

import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { roundTo } from "../../kernel/rounding.js";

/** Uptake in mL/kg/min and grade in % to km/h. Refuses a speed outside 3 to 6 km/h, where the equation was not made. */
export function walkingSpeedForUptake(uptake: number, gradePercent: number): number {
  requireRange(info.id, "uptake", uptake, 4, 80, "mL/kg/min");
  requireRange(info.id, "grade", gradePercent, 0, 30, "%");
  const speed = ((uptake - 3.5) / (0.1 + (1.8 * gradePercent) / 100)) * 0.06;
  requireRange(info.id, "the walking speed", roundTo(speed, 2), 3, 6, "km/h");
  return speed;
}

export const BUSHMAN = {
  authors: "American College of Sports Medicine, restated by Bushman BA",
  year: 2020,
  title: "Metabolic calculations in action, parts 1 and 2",
  journal: "ACSM's Health & Fitness Journal 24(3):6–10 and 24(4):5–8",
  doi: "10.1249/FIT.0000000000000577",
  verified: "seen",
} as const;

export const info: FormulaInfo<[number, number], number> = {
  id: "walking-speed-for-uptake",
  revision: 1,
  title: "Walking speed for an oxygen uptake",
  equation: "S = (VO2 − 3.5)/(0.1 + 1.8·G)",
  inputs: { uptake: { unit: "mL/kg/min", range: "4 to 80" }, grade: { unit: "%", range: "0 to 30" } },
  output: { unit: "km/h", decimals: 1 },
  caveat: "Steady state, 3 to 6 km/h, level or uphill; about 7 % off for one person.",
  source: { ...BUSHMAN, where: "Box 1, walking; solved for speed" },
  compute: walkingSpeedForUptake,
  checks: [
    { given: [29, 10], expect: 5.464, tolerance: 0.0005, from: "by hand: 25.5/0.28 = 91.07 m/min" },
    {
      given: [29.764, 10],
      expect: 5.628,
      tolerance: 0.001,
      from: "published worked example backwards: 93.8 m/min at 10 % costs 29.764",
    },
    { given: [29, 0], expect: "refused", from: "by hand: 15.3 km/h is no walk" },
  ],
};
