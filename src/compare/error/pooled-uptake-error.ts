/**
 * Standard error of measurement of maximal oxygen uptake, pooled over 39 published retest studies.
 *
 *     ln SEM = 0.661 + 0.006 · VO2max   (mL/kg/min)
 *
 * The error grows a little with fitness; age, sex, interval between tests and mode were not related to it. Mean 2.58.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** VO2max in mL/kg/min, 15 to 85, in; one standard deviation in mL/kg/min out. */
export function pooledUptakeError(uptake: number): number {
  requireRange(info.id, "VO2max", uptake, 15, 85, "mL/kg/min");
  return Math.exp(0.661 + 0.006 * uptake); // both numbers: the report's summary
}

export const info: FormulaInfo<[number], number> = {
  id: "pooled-uptake-error",
  revision: 1,
  title: "Error of VO2max pooled over published retests",
  equation: "SEM = exp(0.661 + 0.006 VO2max)",
  inputs: { uptake: { unit: "mL/kg/min", range: "15 to 85" } },
  output: { unit: "mL/kg/min", decimals: 2 },
  source: {
    authors: "United States Navy health research report",
    year: 2003,
    title: "Meta-analysis of the precision of VO2max tests (title not seen whole)",
    where: "summary: 39 retest studies",
    verified: "seen",
  },
  compute: pooledUptakeError,
  checks: [
    { given: [30], expect: 2.32, tolerance: 0.005, from: "by hand: exp(0.841)" },
    { given: [40], expect: 2.46, tolerance: 0.005, from: "by hand: exp(0.901)" },
    { given: [46], expect: 2.55, tolerance: 0.005, from: "by hand: exp(0.937)" },
    { given: [50], expect: 2.61, tolerance: 0.005, from: "by hand: exp(0.961)" },
    { given: [60], expect: 2.78, tolerance: 0.005, from: "by hand: exp(1.021)" },
    { given: [5], expect: "refused", from: "no retest study measured so low an uptake" },
  ],
};
