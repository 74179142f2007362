/**
 * Fat-free mass of a scan: lean soft tissue with bone.
 *
 *     lean + BMC
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Fat-free mass, lean with bone: kg. Throws OutOfRange outside the ranges in `info`. */
export function fatFreeMass(leanKg: number, boneKg: number): number {
  requireRange(info.id, "lean mass", leanKg, 10, 150, "kg");
  requireRange(info.id, "bone mineral content", boneKg, 0.5, 8, "kg");
  return leanKg + boneKg;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "fat-free-mass",
  revision: 1,
  title: "Fat-free mass, lean with bone",
  equation: "lean + BMC",
  inputs: {
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
  compute: fatFreeMass,
  checks: [
    { given: [39.91, 3.261], expect: 43.171, tolerance: 1e-9, from: "by hand: 39.910 + 3.261" },
    { given: [39.91, 0], expect: "refused", from: "bone mineral of 0 is a missing part" },
  ],
};
