/**
 * Minutes of the next loading week: at most a stated share above the hardest week before it, never above the client's time.
 *
 *     next = min(hardest · (1 + rise), time at most), down to whole five minutes
 *
 * The limit is a convention of the trade. No good trial stands behind "ten per cent".
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Hardest week so far (min), rise as a share, time at most (min), to minutes in steps of five. */
export function progression(hardestMin: number, rise: number, atMostMin: number): number {
  requireRange(info.id, "hardest week", hardestMin, 0, 2400, "min");
  requireRange(info.id, "rise", rise, 0, 0.3, "");
  requireRange(info.id, "time at most", atMostMin, 0, 2400, "min");
  return Math.floor(Math.min(hardestMin * (1 + rise), atMostMin) / 5 + 1e-9) * 5;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "progression",
  revision: 1,
  title: "Minutes of the next loading week",
  equation: "next = min(hardest · (1 + rise), time at most), down to whole five minutes",
  inputs: {
    "hardest week": { unit: "min", range: "0 to 2400" },
    rise: { unit: "", range: "0 to 0.3" },
    "time at most": { unit: "min", range: "0 to 2400" },
  },
  output: { unit: "min", decimals: 0 },
  caveat: "A convention of the trade, not evidence.",
  source: {
    authors: "common practice",
    year: null,
    title: "Week-to-week progression of about ten per cent, an easier week every third or fourth",
    where: "no trial evidence known to this program",
    verified: "common practice",
  },
  compute: progression,
  checks: [
    { given: [180, 0.1, 360], expect: 195, tolerance: 0, from: "by hand: 198 down to 195" },
    { given: [200, 0.1, 210], expect: 210, tolerance: 0, from: "by hand: 220, but 210 at most" },
    { given: [180, 0.5, 360], expect: "refused", from: "a rise of half is no progression" },
  ],
};
