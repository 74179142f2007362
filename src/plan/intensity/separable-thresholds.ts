/**
 * Whether two thresholds lie far enough apart to train between them.
 *
 *     least gap = 1.96·√2·CV·first threshold;  or 1.96·√(se1² + se2²) from their own intervals, whichever is larger
 *
 * A threshold found twice in one person within days differs by about 9 %. Where the gap is smaller than that error the
 * middle domain is not printed: nobody could say on which side of it a session lies.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Day-to-day variation of a ventilatory threshold, as a share. */
const THRESHOLD_CV = 0.09;

/** First threshold, and standard errors of both (0 where not known), in one unit; to the least gap in that unit. */
export function separableThresholds(first: number, error1: number, error2: number): number {
  requireRange(info.id, "first threshold", first, 0.3, 1000, "");
  requireRange(info.id, "error of the first", error1, 0, first, "");
  requireRange(info.id, "error of the second", error2, 0, first * 2, "");
  return 1.96 * Math.max(Math.SQRT2 * THRESHOLD_CV * first, Math.hypot(error1, error2));
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "separable-thresholds",
  revision: 1,
  title: "Least gap between two thresholds to tell them apart",
  equation: "1.96·max(√2·0.09·T1, √(se1² + se2²))",
  inputs: {
    "first threshold": { unit: "as measured", range: "0.3 to 1000" },
    "error of the first": { unit: "as measured", range: "one standard error, 0 where not known" },
    "error of the second": { unit: "as measured", range: "one standard error, 0 where not known" },
  },
  output: { unit: "as measured", decimals: 2 },
  source: {
    authors: "Seiler KS, Kjerland GO; the merging is this program's",
    year: 2006,
    title: "Quantifying training intensity distribution in elite endurance athletes",
    journal: "Scand J Med Sci Sports 16:49–56",
    doi: "10.1111/j.1600-0838.2004.00418.x",
    where: "three-domain model; variation of thresholds 8 to 10 % between tests, middle taken",
    verified: "own",
  },
  compute: separableThresholds,
  checks: [
    { given: [2, 0, 0], expect: 0.4989, tolerance: 0.0001, from: "by hand: 1.96·1.41421·0.18" },
    { given: [2, 0.3, 0.4], expect: 0.98, tolerance: 1e-9, from: "by hand: 1.96·0.5" },
  ],
};
