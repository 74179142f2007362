/**
 * Gross oxygen cost of steady arm cranking.
 *
 *     VO2 = 18·W / mass + 3.5
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Oxygen cost of arm cranking: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function oxygenCostArmCranking(powerW: number, massKg: number): number {
  requireRange(info.id, "power", powerW, 25, 125, "W");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  return (18 * powerW) / massKg + 3.5;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "oxygen-cost-arm-cranking",
  revision: 1,
  title: "Oxygen cost of arm cranking",
  equation: "VO2 = 18·W / mass + 3.5",
  inputs: { power: { unit: "W", range: "25 to 125" }, "body mass": { unit: "kg", range: "30 to 200" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "Steady state, no handrail, not downhill, not above the second threshold; about 7 % off for one person.",
  source: {
    authors: "American College of Sports Medicine, restated by Bushman BA",
    year: 2020,
    title: "Metabolic calculations in action, parts 1 and 2",
    journal: "ACSM's Health & Fitness Journal 24(3):6–10 and 24(4):5–8",
    doi: "10.1249/FIT.0000000000000562",
    verified: "seen",
    where: "arm cranking; range 25 to 125 W from memory",
  },
  compute: oxygenCostArmCranking,
  checks: [
    { given: [50, 75], expect: 15.5, tolerance: 1e-9, from: "by hand: 12 + 3.5" },
    { given: [150, 75], expect: "refused", from: "beyond 125 W" },
  ],
};
