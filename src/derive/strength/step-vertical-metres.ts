/**
 * Vertical metres climbed in the time kept up.
 *
 *     step height (m) · cycles a minute · minutes
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Metres climbed by stepping: m. Throws OutOfRange outside the ranges in `info`. */
export function stepVerticalMetres(stepHeightCm: number, cyclesPerMin: number, durationMin: number): number {
  requireRange(info.id, "step height", stepHeightCm, 4, 70, "cm");
  requireRange(info.id, "cycles", cyclesPerMin, 4, 60, "1/min");
  requireRange(info.id, "duration", durationMin, 0.5, 180, "min");
  return (stepHeightCm / 100) * cyclesPerMin * durationMin;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "step-vertical-metres",
  revision: 1,
  title: "Metres climbed by stepping",
  equation: "height · cycles · minutes",
  inputs: {
    "step height": { unit: "cm", range: "4 to 70" },
    cycles: { unit: "1/min", range: "4 to 60" },
    duration: { unit: "min", range: "0.5 to 180" },
  },
  output: { unit: "m", decimals: 0 },
  source: {
    authors: "definition",
    year: null,
    title: "Metres climbed by stepping",
    where: "metres up",
    verified: "common practice",
  },
  compute: stepVerticalMetres,
  checks: [
    { given: [30, 24, 10], expect: 72, tolerance: 1e-9, from: "by hand: 0.30 · 24 · 10" },
    { given: [30, 24, 0], expect: "refused", from: "no time" },
  ],
};
