/**
 * Volume of the days before a goal: an exponential fall with a chosen mean.
 *
 *     volume of day t = V0 · e^(−t/τ)      t = 1 … n; τ so that the mean over the days is 1 − reduction
 *
 * In trials of competitors the volume that helped most fell by 41 to 60 % over about two weeks, with intensity and number
 * of sessions kept. It was found in competitors; for a tour it is a sensible habit, not a finding.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Time constant in days and number of days, to the mean share of the volume before (0 to 1). */
export function taper(tauDays: number, days: number): number {
  requireRange(info.id, "time constant", tauDays, 0.5, 200, "d");
  requireRange(info.id, "days", days, 1, 28, "d");
  let sum = 0;
  for (let day = 1; day <= days; day++) sum += shareOf(day, tauDays);
  return sum / days;
}

const shareOf = (day: number, tauDays: number): number => Math.exp(-day / tauDays);

/** Share of the daily volume for each day of a taper whose mean is 1 − reduction; by bisection on the time constant. */
export function taperDays(reduction: number, days: number): readonly number[] {
  requireRange(info.id, "reduction", reduction, 0.41, 0.6, "");
  let low = 0.5;
  let high = 200;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (taper(middle, days) < 1 - reduction) low = middle;
    else high = middle;
  }
  return Array.from({ length: days }, (_, i) => shareOf(i + 1, low));
}

export const info: FormulaInfo<[number, number], number> = {
  id: "taper",
  revision: 1,
  title: "Volume of a taper",
  equation: "share of day t = e^(−t/τ), t = 1 … n; mean over the days = 1 − reduction",
  inputs: { "time constant": { unit: "d", range: "0.5 to 200" }, days: { unit: "d", range: "1 to 28" } },
  output: { unit: "share", decimals: 3 },
  caveat: "Found in competitors of endurance sports; intensity and number of sessions stay.",
  source: {
    authors: "Bosquet L, Montpetit J, Arvisais D, Mujika I",
    year: 2007,
    title: "Effects of tapering on performance: a meta-analysis",
    journal: "Med Sci Sports Exerc 39:1358–1365",
    doi: "10.1249/mss.0b013e31806010e0",
    where: "abstract: two weeks, volume reduced exponentially by 41–60 %, intensity and frequency unchanged",
    verified: "seen",
  },
  compute: taper,
  checks: [
    {
      given: [8, 14],
      expect: 0.4432,
      tolerance: 0.00005,
      from: "by hand: Σ e^(−t/8), t = 1 … 14, over 14: 55.7 % less",
    },
    { given: [6, 14], expect: 0.3557, tolerance: 0.00005, from: "by hand: Σ e^(−t/6) over 14: 64.4 % less, too deep" },
    { given: [8, 40], expect: "refused", from: "longer than the trials" },
  ],
};
