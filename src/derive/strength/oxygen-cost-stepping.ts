/**
 * Gross oxygen cost of steady stepping without a load.
 *
 *     VO2 = 0.2·f + 1.33·1.8·H·f + 3.5      f cycles a minute, H step height in m
 *
 * 0.2 is the walking to and fro, 1.8 the climb, 1.33 adds a third for coming down.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Oxygen cost of stepping: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function oxygenCostStepping(cyclesPerMin: number, stepHeightCm: number): number {
  requireRange(info.id, "cycles", cyclesPerMin, 12, 30, "1/min");
  requireRange(info.id, "step height", stepHeightCm, 4, 40, "cm");
  return 0.2 * cyclesPerMin + (1.33 * 1.8 * stepHeightCm * cyclesPerMin) / 100 + 3.5;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "oxygen-cost-stepping",
  revision: 1,
  title: "Oxygen cost of stepping",
  equation: "VO2 = 0.2·f + 1.33·1.8·H·f + 3.5",
  inputs: { cycles: { unit: "1/min", range: "12 to 30" }, "step height": { unit: "cm", range: "4 to 40" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "Steady state without handrail; about 7 % off for one person.",
  source: {
    authors: "American College of Sports Medicine, restated by Bushman BA",
    year: 2020,
    title: "Metabolic calculations in action, parts 1 and 2",
    journal: "ACSM's Health & Fitness Journal 24(3):6–10 and 24(4):5–8",
    doi: "10.1249/FIT.0000000000000562",
    verified: "seen",
    where: "stepping equation; range 12 to 30 cycles and 4 to 40 cm",
  },
  compute: oxygenCostStepping,
  checks: [
    { given: [24, 30], expect: 25.54, tolerance: 0.005, from: "by hand: 4.8 + 17.237 + 3.5" },
    {
      given: [30, 30.48],
      expect: 31.4,
      tolerance: 0.05,
      from: "worked example published with the equation: 30 a minute on 0.3048 m",
    },
    { given: [31, 30], expect: "refused", from: "beyond 30 cycles" },
    { given: [24, 45], expect: "refused", from: "beyond 40 cm" },
  ],
};
