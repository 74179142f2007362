/**
 * Repeatability of a spirometry session: how far the two largest values lie apart.
 *
 *     d = x₍₁₎ − x₍₂₎
 *
 * One large breath proves little; a second one as large shows that the client can do it, and the spirometer read it.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** In the unit of the values, 0 or more. Throws OutOfRange for fewer than two values. */
export function twoLargestApart(values: readonly number[]): number {
  const [first, second] = [...values].sort((a, b) => b - a);
  if (first === undefined || second === undefined)
    throw new OutOfRange(info.id, "acceptable manoeuvres", values.length, "at least two");
  return first - second;
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "two-largest-apart",
  revision: 1,
  title: "Difference of the two largest values",
  equation: "d = x₍₁₎ − x₍₂₎",
  inputs: { values: { unit: "L, BTPS", range: "two or more acceptable manoeuvres" } },
  output: { unit: "L", decimals: 3 },
  source: {
    authors: "Graham BL, Steenbruggen I, Miller MR, et al.",
    year: 2019,
    title: "Standardization of spirometry 2019 update. An official ATS/ERS technical statement",
    journal: "Am J Respir Crit Care Med 200(8):e70–e88",
    doi: "10.1164/rccm.201908-1590ST",
    where: "repeatability: the two largest FVC, and the two largest FEV1, within 0.150 L",
    verified: "seen",
  },
  compute: twoLargestApart,
  checks: [
    { given: [[4.1, 4.22, 4.18]], expect: 0.04, tolerance: 1e-12, from: "by hand: 4.22 − 4.18" },
    { given: [[4.1]], expect: "refused", from: "own rule: one value repeats nothing" },
  ],
};
