/**
 * Gross oxygen cost of steady leg cycling.
 *
 *     VO2 = 10.8·W / mass + 7
 *
 * The form in watts. That in kgm/min (1.8·WR / mass + 7) takes 6.12 kgm/min a watt and reads 2 % of the work more: never
 * convert and mix the two.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Oxygen cost of cycling: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function oxygenCostCycling(powerW: number, massKg: number): number {
  requireRange(info.id, "power", powerW, 50, 200, "W");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  return (10.8 * powerW) / massKg + 7;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "oxygen-cost-cycling",
  revision: 1,
  title: "Oxygen cost of cycling",
  equation: "VO2 = 10.8·W / mass + 7",
  inputs: { power: { unit: "W", range: "50 to 200" }, "body mass": { unit: "kg", range: "30 to 200" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "Steady state, no handrail, not downhill, not above the second threshold; about 7 % off for one person.",
  source: {
    authors: "American College of Sports Medicine, restated by Bushman BA",
    year: 2020,
    title: "Metabolic calculations in action, parts 1 and 2",
    journal: "ACSM's Health & Fitness Journal 24(3):6–10 and 24(4):5–8",
    doi: "10.1249/FIT.0000000000000562",
    verified: "seen",
    where: "Box 1: leg cycling, 50 to 200 W",
  },
  compute: oxygenCostCycling,
  checks: [
    { given: [200, 80], expect: 34, tolerance: 1e-9, from: "by hand: 27 + 7" },
    { given: [150, 75], expect: 28.6, tolerance: 1e-9, from: "by hand: 21.6 + 7" },
    {
      given: [75, 62],
      expect: 20.06,
      tolerance: 0.01,
      from: "published worked example, 450 kgm/min at 6 kgm/min a watt: 1.8 · 450 / 62 + 7",
    },
    { given: [250, 80], expect: "refused", from: "beyond 200 W" },
  ],
};
