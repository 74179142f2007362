/**
 * Result of a spirometry session: the largest value among the manoeuvres that count.
 *
 *     FVC = max(FVCᵢ), FEV1 = max(FEV1ᵢ)     even from different manoeuvres
 *
 * A forced expiration can only be spoilt downwards: by a slow start, a leak or a breath that was not full.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** In the unit of the values. Throws OutOfRange for an empty list. */
export function largestVolume(values: readonly number[]): number {
  if (values.length === 0) throw new OutOfRange(info.id, "manoeuvres", 0, "at least one that counts");
  return Math.max(...values);
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "largest-volume",
  revision: 1,
  title: "Largest volume of a spirometry session",
  equation: "FVC = max(FVC_i); FEV1 = max(FEV1_i)",
  inputs: { values: { unit: "L, BTPS", range: "one or more manoeuvres that count" } },
  output: { unit: "L", decimals: 2 },
  source: {
    authors: "Graham BL, Steenbruggen I, Miller MR, et al.",
    year: 2019,
    title: "Standardization of spirometry 2019 update. An official ATS/ERS technical statement",
    journal: "Am J Respir Crit Care Med 200(8):e70–e88",
    doi: "10.1164/rccm.201908-1590ST",
    where: "largest FVC and largest FEV1, even from different manoeuvres",
    verified: "seen",
  },
  compute: largestVolume,
  checks: [
    { given: [[4.1, 4.22, 4.18]], expect: 4.22, tolerance: 1e-12, from: "by hand: the second" },
    { given: [[]], expect: "refused", from: "own rule: no manoeuvre, no value" },
  ],
};
