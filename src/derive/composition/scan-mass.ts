/**
 * Total mass of a scan: fat, lean soft tissue and bone.
 *
 *     fat + lean + BMC
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Total mass by a scan: kg. Throws OutOfRange outside the ranges in `info`. */
export function scanMass(fatKg: number, leanKg: number, boneKg: number): number {
  requireRange(info.id, "fat mass", fatKg, 0.5, 200, "kg");
  requireRange(info.id, "lean mass", leanKg, 10, 150, "kg");
  requireRange(info.id, "bone mineral content", boneKg, 0.5, 8, "kg");
  return fatKg + leanKg + boneKg;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "scan-mass",
  revision: 1,
  title: "Total mass by a scan",
  equation: "fat + lean + BMC",
  inputs: {
    "fat mass": { unit: "kg", range: "0.5 to 200" },
    "lean mass": { unit: "kg", range: "10 to 150" },
    "bone mineral content": { unit: "kg", range: "0.5 to 8" },
  },
  output: { unit: "kg", decimals: 1 },
  source: {
    authors: "Hangartner TN, Warner S, Braillon P, Jankowski L, Shepherd J; Petak S, et al.",
    year: 2013,
    title: "The Official Positions of the International Society for Clinical Densitometry: body composition analysis",
    journal: "J Clin Densitom 16(4):496–519",
    doi: "10.1016/j.jocd.2013.08.018",
    where: "reporting positions: total body with head",
    verified: "seen",
  },
  compute: scanMass,
  checks: [
    { given: [24.467, 39.91, 3.261], expect: 67.638, tolerance: 1e-9, from: "by hand: 24.467 + 39.910 + 3.261" },
    { given: [0, 39.91, 3.261], expect: "refused", from: "fat of 0 is a missing part" },
  ],
};
