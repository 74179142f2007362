/**
 * Energy cost of running.
 *
 *     cost = VO2 · (3.941 + 1.106·RER) · 60 / speed        kcal/kg/km; VO2 in L/kg/min, speed in km/h
 *
 * Weighs each litre of oxygen by its fuel, which the oxygen cost does not: two runners with the same oxygen cost differ
 * in energy when they burn different fuel.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** mL/kg/min, ratio and km/h in, kcal/kg/km out. Throws OutOfRange for a ratio above 1.0 and outside 6 to 26 km/h. */
export function energyCostOfRunning(vo2PerMass: number, rer: number, speedKmH: number): number {
  requireRange(info.id, "oxygen uptake", vo2PerMass, 10, 95, "mL/kg/min");
  requireRange(info.id, "the respiratory exchange ratio", rer, 0.7, 1, "");
  requireRange(info.id, "speed", speedKmH, 6, 26, "km/h");
  return ((vo2PerMass / 1000) * (3.941 + 1.106 * rer) * 60) / speedKmH;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "energy-cost-of-running",
  revision: 1,
  title: "Energy cost of running",
  equation: "VO2·(3.941 + 1.106·RER)·60 / speed",
  inputs: {
    VO2: { unit: "mL/kg/min", range: "10 to 95" },
    RER: { unit: "ratio", range: "0.70 to 1.00" },
    speed: { unit: "km/h", range: "6 to 26" },
  },
  output: { unit: "kcal/kg/km", decimals: 2 },
  source: {
    authors: "Weir JB de V",
    year: 1949,
    title: "New methods for calculating metabolic rate with special reference to protein metabolism",
    journal: "J Physiol 109:1–9",
    doi: "10.1113/jphysiol.1949.sp004363",
    where: "energy of a litre of oxygen, applied per kilometre",
    verified: "seen",
  },
  compute: energyCostOfRunning,
  checks: [
    { given: [41, 0.9, 12], expect: 1.012, tolerance: 0.001, from: "by hand: 0.041·(3.941 + 0.9954)·5" },
    { given: [41, 1.05, 12], expect: "refused", from: "not steady" },
  ],
};
