/**
 * Sit-and-reach on the scale that has 26 cm at the soles of the feet, whatever box was used.
 *
 *     reach + 26 − what the box shows at the soles
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Sit-and-reach on a common scale: cm. Throws OutOfRange outside the ranges in `info`. */
export function sitAndReachCommonScale(reachCm: number, zeroCm: number): number {
  requireRange(info.id, "reach", reachCm, -40, 70, "cm");
  requireRange(info.id, "scale at the soles", zeroCm, 0, 26, "cm");
  return reachCm + 26 - zeroCm;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "sit-and-reach-common-scale",
  revision: 1,
  title: "Sit-and-reach on a common scale",
  equation: "reach + 26 − zero",
  inputs: { reach: { unit: "cm", range: "-40 to 70" }, "scale at the soles": { unit: "cm", range: "0 to 26" } },
  output: { unit: "cm", decimals: 1 },
  source: {
    authors: "Canadian Society for Exercise Physiology",
    year: 2003,
    title: "The Canadian Physical Activity, Fitness and Lifestyle Approach",
    where: "trunk forward flexion, scale 26 cm at the soles; boxes with 23 cm read 3 cm less",
    verified: "memory",
  },
  compute: sitAndReachCommonScale,
  checks: [
    { given: [30, 26], expect: 30, tolerance: 0, from: "by hand: the scale itself" },
    { given: [27, 23], expect: 30, tolerance: 0, from: "by hand: 27 + 26 − 23" },
    { given: [4, 0], expect: 30, tolerance: 0, from: "by hand: 4 + 26" },
    { given: [30, 30], expect: "refused", from: "no such box" },
  ],
};
