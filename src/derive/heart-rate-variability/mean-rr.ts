/**
 * Mean normal RR interval.
 *
 *     mean(NN)        ms
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { mean } from "../../kernel/statistics.js";

/** Normal intervals in ms, null where one was left out. Throws OutOfRange for fewer than two usable ones. */
export function meanRr(nn: readonly (number | null)[]): number {
  const present = nn.filter((x) => x !== null);
  if (present.length < 2) throw new OutOfRange(info.id, "normal intervals", present.length, "two or more");
  return mean(present);
}

const EIGHT = [812, 790, 850, 905, 870, 802, 828, 880];
export const info: FormulaInfo<[readonly (number | null)[]], number> = {
  id: "mean-rr",
  revision: 1,
  title: "Mean normal RR interval",
  equation: "mean(NN)",
  inputs: { NN: { unit: "ms", range: "two or more" } },
  output: { unit: "ms", decimals: 0 },
  source: {
    authors:
      "Task Force of the European Society of Cardiology and the North American Society of Pacing and Electrophysiology",
    year: 1996,
    title: "Heart rate variability: standards of measurement, physiological interpretation and clinical use",
    journal: "Circulation 93:1043–1065",
    doi: "10.1161/01.CIR.93.5.1043",
    where: "Table 1, definitions restated in later papers",
    verified: "seen",
  },
  compute: meanRr,
  checks: [
    { given: [EIGHT], expect: 842.125, tolerance: 1e-9, from: "by hand: 6737 / 8" },
    { given: [[800, null]], expect: "refused", from: "one interval" },
  ],
};
