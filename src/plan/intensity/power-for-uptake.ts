/**
 * Cycling power that costs a given oxygen uptake: the cycling equation solved for power.
 *
 *     W = (VO2 − 7)·mass/10.8
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { BUSHMAN } from "./walking-speed-for-uptake.js";

/** Uptake in mL/kg/min and body mass in kg to W. Refuses less than 50 or more than 200 W. */
export function powerForUptake(uptake: number, massKg: number): number {
  requireRange(info.id, "uptake", uptake, 8, 80, "mL/kg/min");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  const power = ((uptake - 7) * massKg) / 10.8;
  requireRange(info.id, "the power", Math.round(power), 50, 200, "W");
  return power;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "power-for-uptake",
  revision: 1,
  title: "Cycling power for an oxygen uptake",
  equation: "W = (VO2 − 7)·mass/10.8",
  inputs: { uptake: { unit: "mL/kg/min", range: "8 to 80" }, "body mass": { unit: "kg", range: "30 to 200" } },
  output: { unit: "W", decimals: 0 },
  caveat: "Steady state, 50 to 200 W; about 7 % off for one person.",
  source: { ...BUSHMAN, where: "Box 1, leg cycling; solved for power" },
  compute: powerForUptake,
  checks: [
    { given: [29, 70], expect: 142.6, tolerance: 0.05, from: "by hand: 22·70/10.8" },
    {
      given: [34, 80],
      expect: 200,
      tolerance: 1e-9,
      from: "by hand: 27·80/10.8, the cycling equation at 200 W backwards",
    },
    { given: [60, 80], expect: "refused", from: "beyond 200 W" },
  ],
};
