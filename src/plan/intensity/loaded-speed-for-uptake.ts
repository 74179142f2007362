/**
 * Walking speed with a load that costs a given oxygen uptake: the load-carriage equation of 1977 solved for speed.
 *
 *     VO2·W·20.1/60 = 1.5 W + 2 (W + L)(L/W)² + η (W + L)(1.5 V² + 0.35 V G)      the positive root for V, m/s
 */

import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { roundTo } from "../../kernel/rounding.js";

const KJ_PER_LITRE = 20.1;

/** Uptake per kg of body mass (mL/kg/min), body mass and load (kg), grade (%), terrain factor, to km/h. */
export function loadedSpeedForUptake(
  uptake: number,
  massKg: number,
  loadKg: number,
  gradePct: number,
  terrain: number,
): number {
  requireRange(info.id, "uptake", uptake, 5, 70, "mL/kg/min");
  requireRange(info.id, "body mass", massKg, 40, 130, "kg");
  requireRange(info.id, "load", loadKg, 0, 0.7 * massKg, "kg");
  requireRange(info.id, "grade", gradePct, 0, 30, "% uphill");
  requireRange(info.id, "terrain factor", terrain, 1, 2.1, "");
  const total = massKg + loadKg;
  const watts = (uptake * massKg * KJ_PER_LITRE) / 60;
  const moving = (watts - 1.5 * massKg - 2 * total * (loadKg / massKg) ** 2) / (terrain * total);
  if (moving <= 0) throw new OutOfRange(info.id, "uptake", uptake, "more than standing with the load costs");
  const V = (-0.35 * gradePct + Math.sqrt((0.35 * gradePct) ** 2 + 6 * moving)) / 3;
  requireRange(info.id, "the walking speed", roundTo(V * 3.6, 2), 0.7, 8, "km/h");
  return V * 3.6;
}

export const info: FormulaInfo<[number, number, number, number, number], number> = {
  id: "loaded-speed-for-uptake",
  revision: 1,
  title: "Walking speed with a load for an oxygen uptake",
  equation: "1.5 V² + 0.35 G V = (VO2·W·20.1/60 − 1.5 W − 2 (W+L)(L/W)²)/(η (W+L))",
  inputs: {
    uptake: { unit: "mL/kg/min", range: "5 to 70" },
    "body mass": { unit: "kg", range: "40 to 130" },
    load: { unit: "kg", range: "0 to 70 % of body mass" },
    grade: { unit: "%", range: "0 to 30, uphill" },
    "terrain factor": { unit: "", range: "1.0 to 2.1" },
  },
  output: { unit: "km/h", decimals: 1 },
  caveat: "Level and uphill only; the equation reads low for long carries, so go slower rather than faster.",
  source: {
    authors: "Pandolf KB, Givoni B, Goldman RF",
    year: 1977,
    title: "Predicting energy expenditure with loads while standing or walking very slowly",
    journal: "J Appl Physiol 43:577–581",
    where: "equation; solved for speed, 20.1 kJ per litre of O2",
    verified: "seen",
  },
  compute: loadedSpeedForUptake,
  checks: [
    {
      given: [36.05, 70, 20, 10, 1.2],
      expect: 4.5,
      tolerance: 0.01,
      from: "by hand: 70 kg with 20 kg at 4.5 km/h, 10 %, terrain 1.2 takes 845.3 W or 36.05 mL/kg/min",
    },
    { given: [5, 70, 40, 0, 1], expect: "refused", from: "standing with 40 kg costs more" },
  ],
};
