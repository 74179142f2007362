/**
 * Plausibility of a respiratory quotient at rest after a fast.
 *
 *     below 0.67 or above 1.30   outside the physiological range: repeat
 *     0.67 to 0.90               plausible
 *     above 0.90 to 1.30         suspect: not fasted, calibration, leak or overbreathing
 *
 * The guideline prints two decimals and leaves a gap between 0.90 and 0.91, so the quotient is rounded to two first.
 * A plausible quotient does not prove a fast: a meal raises it by 0.03 to 0.05 only.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { compareAtDecimals } from "../../kernel/rounding.js";

export type QuotientBand = "reject" | "accept" | "suspect";

/** Quotient in, band out. Throws OutOfRange for what is no quotient (outside 0.3 to 3). */
export function quotientBand(quotient: number): QuotientBand {
  requireRange(info.id, "the quotient", quotient, 0.3, 3, "");
  if (compareAtDecimals(quotient, 0.67, 2) < 0 || compareAtDecimals(quotient, 1.3, 2) > 0) return "reject";
  return compareAtDecimals(quotient, 0.9, 2) > 0 ? "suspect" : "accept";
}

const rank = (band: QuotientBand) => ({ accept: 0, suspect: 1, reject: 2 })[band];

export const info: FormulaInfo<[number], QuotientBand> = {
  id: "quotient-band",
  revision: 1,
  title: "Plausibility of the resting respiratory quotient",
  equation: "accept 0.67 to 0.90 · suspect to 1.30 · reject outside",
  inputs: { RQ: { unit: "ratio", range: "0.3 to 3" } },
  output: { unit: "band", decimals: 0 },
  source: {
    authors: "Academy of Nutrition and Dietetics, Evidence Analysis Library",
    year: 2014,
    title: "Respiratory quotient in healthy and non-critically ill adults: recommendations",
    where: "recommendations; outer limits by consensus, 0.67 to 0.90 rated fair",
    verified: "seen",
  },
  compute: quotientBand,
  checks: (
    [
      [0.66, 2],
      [0.67, 0],
      [0.9, 0],
      [0.904, 0],
      [0.905, 1],
      [0.93, 1],
      [1.3, 1],
      [1.31, 2],
    ] as const
  ).map(([quotient, expect]) => ({
    given: [quotient],
    pick: rank,
    expect,
    tolerance: 0,
    from: `guideline bands, quotient ${quotient} rounded to two decimals (0 accept, 1 suspect, 2 reject)`,
  })),
};
