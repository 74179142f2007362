/**
 * Sum of skinfolds, the value to follow: it needs no regression and so carries the caliper's error only.
 *
 *     Σ sites
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Sum of skinfolds: mm. Throws OutOfRange outside the ranges in `info`. */
export function skinfoldSum(sitesMm: readonly number[]): number {
  if (sitesMm.length === 0) throw new OutOfRange(info.id, "sites", 0, "one or more");
  for (const site of sitesMm) requireRange(info.id, "site", site, 2, 90, "mm");
  return sitesMm.reduce((sum, site) => sum + site, 0);
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "skinfold-sum",
  revision: 1,
  title: "Sum of skinfolds",
  equation: "Σ sites",
  inputs: { sites: { unit: "mm", range: "each 2 to 90" } },
  output: { unit: "mm", decimals: 1 },
  source: {
    authors: "Esparza-Ros F, Vaquero-Cristóbal R, Marfell-Jones M",
    year: 2019,
    title: "International Standards for Anthropometric Assessment",
    journal: "ISAK",
    where: "prefer the sum of skinfolds for tracking",
    verified: "memory",
  },
  compute: skinfoldSum,
  checks: [
    { given: [[10, 20.5, 14.5]], expect: 45, tolerance: 1e-9, from: "by hand: 10 + 20.5 + 14.5" },
    { given: [[10, 0]], expect: "refused", from: "a fold of 0 was not measured" },
  ],
};
