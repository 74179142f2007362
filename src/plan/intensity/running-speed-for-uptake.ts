/**
 * Running speed that costs a given oxygen uptake: the running equation solved for speed.
 *
 *     S = (VO2 − 3.5)/(0.2 + 0.9·G)      S m/min, G grade as a fraction
 */

import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { roundTo } from "../../kernel/rounding.js";
import { BUSHMAN } from "./walking-speed-for-uptake.js";

/** Uptake in mL/kg/min and grade in % to km/h. Refuses less than 134 m/min: walk uphill instead. */
export function runningSpeedForUptake(uptake: number, gradePercent: number): number {
  requireRange(info.id, "uptake", uptake, 4, 90, "mL/kg/min");
  requireRange(info.id, "grade", gradePercent, 0, 30, "%");
  const speed = ((uptake - 3.5) / (0.2 + (0.9 * gradePercent) / 100)) * 0.06;
  requireRange(info.id, "the running speed", roundTo(speed, 2), 8.04, 25, "km/h");
  return speed;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "running-speed-for-uptake",
  revision: 1,
  title: "Running speed for an oxygen uptake",
  equation: "S = (VO2 − 3.5)/(0.2 + 0.9·G)",
  inputs: { uptake: { unit: "mL/kg/min", range: "4 to 90" }, grade: { unit: "%", range: "0 to 30" } },
  output: { unit: "km/h", decimals: 1 },
  caveat: "Steady state below the second threshold, level or uphill, from 134 m/min; about 7 % off for one person.",
  source: { ...BUSHMAN, where: "Box 1, running; solved for speed" },
  compute: runningSpeedForUptake,
  checks: [
    { given: [45.3, 1], expect: 12, tolerance: 1e-9, from: "by hand: 41.8/0.209 = 200 m/min" },
    {
      given: [29, 0],
      expect: "refused",
      from: "by hand: 127.5 m/min or 7.65 km/h, slower than the equation's runners",
    },
  ],
};
