/**
 * Metabolic rate of steady walking with a load on the back.
 *
 *     M = 1.5·W + 2.0·(W + L)·(L/W)² + η·(W + L)·(1.5·V² + 0.35·V·G)
 *
 * W body and L load in kg, V m/s, G grade in %, η terrain. Standing with the load, then moving both. It reads low for
 * today's loads and speeds and does not hold downhill.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Metabolic rate of walking with a load: W. Throws OutOfRange outside the ranges in `info`. */
export function loadCarriagePandolf(
  massKg: number,
  loadKg: number,
  speedKmH: number,
  gradePercent: number,
  terrain: number,
): number {
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "load", loadKg, 0, 80, "kg");
  requireRange(info.id, "speed", speedKmH, 1, 9, "km/h");
  requireRange(info.id, "grade", gradePercent, 0, 30, "%");
  requireRange(info.id, "terrain factor", terrain, 1, 2.1, "");
  const v = speedKmH / 3.6;
  const both = massKg + loadKg;
  return 1.5 * massKg + 2 * both * (loadKg / massKg) ** 2 + terrain * both * (1.5 * v ** 2 + 0.35 * v * gradePercent);
}

export const info: FormulaInfo<[number, number, number, number, number], number> = {
  id: "load-carriage-pandolf",
  revision: 1,
  title: "Metabolic rate of walking with a load",
  equation: "M = 1.5·W + 2.0·(W + L)·(L/W)² + η·(W + L)·(1.5·V² + 0.35·V·G)",
  inputs: {
    "body mass": { unit: "kg", range: "30 to 200" },
    load: { unit: "kg", range: "0 to 80" },
    speed: { unit: "km/h", range: "1 to 9" },
    grade: { unit: "%", range: "0 to 30" },
    "terrain factor": { unit: "", range: "1 to 2.1" },
  },
  output: { unit: "W", decimals: 0 },
  caveat: "It reads low for today's loads and does not hold downhill.",
  source: {
    authors: "Pandolf KB, Givoni B, Goldman RF",
    year: 1977,
    title: "Predicting energy expenditure with loads while standing or walking very slowly",
    journal: "J Appl Physiol 43(4):577–581",
    doi: "10.1152/jappl.1977.43.4.577",
    where: "equation; terrain factors from memory",
    verified: "seen",
  },
  compute: loadCarriagePandolf,
  checks: [
    {
      given: [75, 15, 4.5, 10, 1],
      expect: 724.4,
      tolerance: 0.05,
      from: "by hand: 112.5 + 7.2 + 90 · (1.5 · 1.5625 + 0.35 · 1.25 · 10)",
    },
    { given: [75, 15, 4.5, -5, 1], expect: "refused", from: "downhill" },
  ],
};
