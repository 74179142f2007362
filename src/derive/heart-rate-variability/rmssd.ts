/**
 * RMSSD: root mean square of successive differences.
 *
 *     RMSSD = √ mean((NN[i+1] − NN[i])²)        ms
 *
 * Fast, vagal swings with breathing. Only neighbours that are both normal make a difference.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { mean } from "../../kernel/statistics.js";
import { successiveDifferences } from "./successive-differences.js";

/** Normal intervals in ms, null where one was left out. Throws OutOfRange for fewer than two usable ones. */
export function rmssd(nn: readonly (number | null)[]): number {
  const differences = successiveDifferences(nn);
  if (differences.length < 1) throw new OutOfRange(info.id, "pairs of neighbours", 0, "one or more");
  return Math.sqrt(mean(differences.map((d) => d * d)));
}

const EIGHT = [812, 790, 850, 905, 870, 802, 828, 880];
export const info: FormulaInfo<[readonly (number | null)[]], number> = {
  id: "rmssd",
  revision: 1,
  title: "RMSSD: root mean square of successive differences",
  equation: "RMSSD = √(mean of (difference of neighbours)²)",
  inputs: { NN: { unit: "ms", range: "two or more" } },
  output: { unit: "ms", decimals: 1 },
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
  compute: rmssd,
  checks: [
    { given: [EIGHT], expect: 48.31, tolerance: 0.005, from: "by hand: differences −22 60 55 −35 −68 26 52" },
    {
      given: [[800, 820, null, 900, 910]],
      expect: 15.811,
      tolerance: 0.001,
      from: "by hand: differences 20 and 10 only, none across the gap: √250",
    },
    { given: [[800, null, 810]], expect: "refused", from: "no neighbours" },
  ],
};
