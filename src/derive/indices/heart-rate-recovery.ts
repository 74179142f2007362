/**
 * Heart-rate recovery.
 *
 *     fall = HRpeak − HR at one (or two) minutes after stopping
 *
 * The fall depends on posture and on whether the client kept moving, so both belong to the number.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** 1/min both in, 1/min out (negative when heart rate rose). */
export function heartRateRecovery(peak: number, after: number): number {
  requireRange(info.id, "peak heart rate", peak, 60, 250, "1/min");
  requireRange(info.id, "heart rate in recovery", after, 25, 250, "1/min");
  return peak - after;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "heart-rate-recovery",
  revision: 2,
  title: "Heart-rate recovery",
  equation: "HRpeak − HR after one or two minutes",
  inputs: { HRpeak: { unit: "1/min", range: "60 to 250" }, HR: { unit: "1/min", range: "25 to 250" } },
  output: { unit: "1/min", decimals: 0 },
  caveat: "A marker in groups, not a score of fitness.",
  source: {
    authors: "Cole CR, Blackstone EH, Pashkow FJ, Snader CE, Lauer MS",
    year: 1999,
    title: "Heart-rate recovery immediately after exercise as a predictor of mortality",
    journal: "N Engl J Med 341:1351–1357",
    doi: "10.1056/NEJM199910283411804",
    where: "abstract: 12 or less at one minute of walking",
    verified: "seen",
  },
  compute: heartRateRecovery,
  checks: [
    { given: [182, 160], expect: 22, tolerance: 0, from: "by hand: 182 − 160" },
    { given: [182, 0], expect: "refused", from: "a dead strap is no recovery" },
  ],
};
