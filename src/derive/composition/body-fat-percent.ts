/**
 * Body fat share from a whole-body scan.
 *
 *     %fat = 100 · fat / (fat + lean + BMC)
 *
 * Of the scanned mass, head and bone included: printouts that leave the bone out of the divisor read about 1 point
 * higher. Refused rather than computed from two of the three parts.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Body fat share from DXA: %. Throws OutOfRange outside the ranges in `info`. */
export function bodyFatPercent(fatG: number, leanG: number, boneG: number): number {
  requireRange(info.id, "fat mass", fatG, 500, 200000, "g");
  requireRange(info.id, "lean mass", leanG, 10000, 150000, "g");
  requireRange(info.id, "bone mineral content", boneG, 500, 8000, "g");
  return (100 * fatG) / (fatG + leanG + boneG);
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "body-fat-percent",
  revision: 1,
  title: "Body fat share from DXA",
  equation: "%fat = 100 · fat / (fat + lean + BMC)",
  inputs: {
    "fat mass": { unit: "g", range: "500 to 200000" },
    "lean mass": { unit: "g", range: "10000 to 150000" },
    "bone mineral content": { unit: "g", range: "500 to 8000" },
  },
  output: { unit: "%", decimals: 1 },
  source: {
    authors: "Hangartner TN, Warner S, Braillon P, Jankowski L, Shepherd J; Petak S, et al.",
    year: 2013,
    title: "The Official Positions of the International Society for Clinical Densitometry: body composition analysis",
    journal: "J Clin Densitom 16(4):496–519",
    doi: "10.1016/j.jocd.2013.08.018",
    where: "reporting positions: total body with head",
    verified: "seen",
  },
  compute: bodyFatPercent,
  checks: [
    { given: [24467, 39910, 3261], expect: 36.173, tolerance: 0.001, from: "by hand: 2 446 700 / 67 638" },
    { given: [24467, 39910, 0], expect: "refused", from: "bone mineral of 0 is a missing part" },
  ],
};
