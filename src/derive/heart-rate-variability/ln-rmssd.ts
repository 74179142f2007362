/**
 * Natural logarithm of RMSSD.
 *
 *     ln(RMSSD in ms)
 *
 * RMSSD is skewed between days and people; its logarithm is not, so day-to-day monitoring follows it.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { rmssd } from "./rmssd.js";

/** Normal intervals in ms, null where one was left out. Throws OutOfRange for fewer than two usable ones. */
export function lnRmssd(nn: readonly (number | null)[]): number {
  const value = rmssd(nn);
  if (!(value > 0)) throw new OutOfRange(info.id, "RMSSD", value, "above 0 ms");
  return Math.log(value);
}

const EIGHT = [812, 790, 850, 905, 870, 802, 828, 880];
export const info: FormulaInfo<[readonly (number | null)[]], number> = {
  id: "ln-rmssd",
  revision: 1,
  title: "ln RMSSD",
  equation: "ln RMSSD, RMSSD in ms",
  inputs: { NN: { unit: "ms", range: "two or more" } },
  output: { unit: "ln ms", decimals: 2 },
  source: {
    authors:
      "Task Force of the European Society of Cardiology and the North American Society of Pacing and Electrophysiology",
    year: 1996,
    title: "Heart rate variability: standards of measurement, physiological interpretation and clinical use",
    journal: "Circulation 93:1043–1065",
    doi: "10.1161/01.CIR.93.5.1043",
    where: "definition of RMSSD; the logarithm is common practice",
    verified: "seen",
  },
  compute: lnRmssd,
  checks: [
    { given: [EIGHT], expect: 3.878, tolerance: 0.001, from: "by hand: ln 48.31" },
    { given: [[800, 800, 800]], expect: "refused", from: "no variation has no logarithm" },
  ],
};
