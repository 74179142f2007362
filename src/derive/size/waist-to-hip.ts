/**
 * Waist-to-hip ratio.
 *
 *     waist / hip, both in cm
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Waist-to-hip ratio: ratio. Throws OutOfRange outside the ranges in `info`. */
export function waistToHip(waistCm: number, hipCm: number): number {
  requireRange(info.id, "waist", waistCm, 40, 200, "cm");
  requireRange(info.id, "hip", hipCm, 60, 220, "cm");
  return waistCm / hipCm;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "waist-to-hip",
  revision: 1,
  title: "Waist-to-hip ratio",
  equation: "waist / hip",
  inputs: { waist: { unit: "cm", range: "40 to 200" }, hip: { unit: "cm", range: "60 to 220" } },
  output: { unit: "ratio", decimals: 2 },
  source: {
    authors: "World Health Organization",
    year: 2008,
    title: "Waist circumference and waist-hip ratio: report of a WHO expert consultation",
    where: "definition; Table A1",
    verified: "seen",
  },
  compute: waistToHip,
  checks: [
    { given: [90, 100], expect: 0.9, tolerance: 1e-9, from: "by hand: 90 / 100" },
    { given: [90, 40], expect: "refused", from: "hips of 40 cm are no adult's" },
  ],
};
