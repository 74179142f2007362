/**
 * Waist-to-height ratio.
 *
 *     waist / stature, both in cm
 *
 * Scales the waist by stature, so that one limit serves both sexes and all statures of adults.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Waist-to-height ratio: ratio. Throws OutOfRange outside the ranges in `info`. */
export function waistToHeight(waistCm: number, statureCm: number): number {
  requireRange(info.id, "waist", waistCm, 40, 200, "cm");
  requireRange(info.id, "stature", statureCm, 100, 250, "cm");
  return waistCm / statureCm;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "waist-to-height",
  revision: 1,
  title: "Waist-to-height ratio",
  equation: "waist / stature",
  inputs: { waist: { unit: "cm", range: "40 to 200" }, stature: { unit: "cm", range: "100 to 250" } },
  output: { unit: "ratio", decimals: 2 },
  source: {
    authors: "National Institute for Health and Care Excellence",
    year: 2022,
    title: "Obesity: identification, assessment and management",
    where: "recommendations on central adiposity",
    verified: "seen",
  },
  compute: waistToHeight,
  checks: [
    { given: [88, 178], expect: 0.4944, tolerance: 0.0001, from: "by hand: 88 / 178" },
    { given: [20, 178], expect: "refused", from: "a waist of 20 cm is no adult's" },
  ],
};
