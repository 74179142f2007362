/**
 * Vertical metres an hour of stepping.
 *
 *     step height (m) · cycles a minute · 60
 *
 * Only the way up counts. With a load there are no published norms: follow the client's own change.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Vertical rate of stepping: m/h. Throws OutOfRange outside the ranges in `info`. */
export function stepVerticalRate(stepHeightCm: number, cyclesPerMin: number): number {
  requireRange(info.id, "step height", stepHeightCm, 4, 70, "cm");
  requireRange(info.id, "cycles", cyclesPerMin, 4, 60, "1/min");
  return (stepHeightCm / 100) * cyclesPerMin * 60;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "step-vertical-rate",
  revision: 1,
  title: "Vertical rate of stepping",
  equation: "height · cycles · 60",
  inputs: { "step height": { unit: "cm", range: "4 to 70" }, cycles: { unit: "1/min", range: "4 to 60" } },
  output: { unit: "m/h", decimals: 0 },
  source: {
    authors: "definition",
    year: null,
    title: "Vertical rate of stepping",
    where: "metres up an hour",
    verified: "common practice",
  },
  compute: stepVerticalRate,
  checks: [
    { given: [30, 24], expect: 432, tolerance: 1e-9, from: "by hand: 0.30 · 24 · 60" },
    { given: [0.3, 24], expect: "refused", from: "metres for centimetres" },
  ],
};
