/**
 * Cycling economy.
 *
 *     economy = power / VO2        W per L/min
 *
 * Power for each litre of oxygen, gross, in a steady stage. Compare at the same power and cadence.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** W and L/min in, W per L/min out. Throws OutOfRange below 30 W. */
export function cyclingEconomy(powerW: number, vo2: number): number {
  requireRange(info.id, "power", powerW, 30, 600, "W");
  requireRange(info.id, "oxygen uptake", vo2, 0.5, 8, "L/min");
  return powerW / vo2;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "cycling-economy",
  revision: 1,
  title: "Cycling economy",
  equation: "power / VO2",
  inputs: { power: { unit: "W", range: "30 to 600" }, VO2: { unit: "L/min", range: "0.5 to 8" } },
  output: { unit: "W per L/min", decimals: 1 },
  source: {
    authors: "this project",
    year: null,
    title: "Definition",
    where: "common practice",
    verified: "common practice",
  },
  compute: cyclingEconomy,
  checks: [
    { given: [200, 2.7], expect: 74.07, tolerance: 0.005, from: "by hand: 200 / 2.7" },
    { given: [0, 0.6], expect: "refused", from: "unloaded pedalling" },
  ],
};
