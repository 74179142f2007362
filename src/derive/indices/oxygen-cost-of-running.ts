/**
 * Oxygen cost of running.
 *
 *     cost = 1000 · VO2 / speed        mL/kg/km; VO2 in mL/kg/min, speed in m/min
 *
 * Gross cost of a steady stage below the second threshold. Compare the same speed, grade and shoes only.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** mL/kg/min and km/h in, mL/kg/km out. Throws OutOfRange below 6 km/h (walking) and above 26. */
export function oxygenCostOfRunning(vo2PerMass: number, speedKmH: number): number {
  requireRange(info.id, "oxygen uptake", vo2PerMass, 10, 95, "mL/kg/min");
  requireRange(info.id, "speed", speedKmH, 6, 26, "km/h");
  return (vo2PerMass * 60) / speedKmH;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "oxygen-cost-of-running",
  revision: 1,
  title: "Oxygen cost of running",
  equation: "1000·VO2 / speed (m/min)",
  inputs: { VO2: { unit: "mL/kg/min", range: "10 to 95" }, speed: { unit: "km/h", range: "6 to 26" } },
  output: { unit: "mL/kg/km", decimals: 0 },
  caveat: "Steady stages of 4 min or more with a ratio below 1.0, below the second threshold.",
  source: {
    authors: "Jones AM, Doust JH",
    year: 1996,
    title: "A 1 % treadmill grade most accurately reflects the energetic cost of outdoor running",
    journal: "J Sports Sci 14:321–327",
    where: "definition; 1 % of grade stands in for air",
    verified: "memory",
  },
  compute: oxygenCostOfRunning,
  checks: [
    { given: [41, 12], expect: 205, tolerance: 1e-9, from: "by hand: 41.0 / 200 · 1000" },
    { given: [20, 5], expect: "refused", from: "walking" },
  ],
};
