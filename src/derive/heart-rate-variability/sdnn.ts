/**
 * SDNN: standard deviation of normal intervals.
 *
 *     SDNN = SD(NN), divisor n − 1        ms
 *
 * It grows with the length of the record: compare records of one length only.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { sampleSd } from "../../kernel/statistics.js";

/** Normal intervals in ms, null where one was left out. Throws OutOfRange for fewer than two usable ones. */
export function sdnn(nn: readonly (number | null)[]): number {
  const present = nn.filter((x) => x !== null);
  if (present.length < 2) throw new OutOfRange(info.id, "normal intervals", present.length, "two or more");
  return sampleSd(present);
}

const EIGHT = [812, 790, 850, 905, 870, 802, 828, 880];
export const info: FormulaInfo<[readonly (number | null)[]], number> = {
  id: "sdnn",
  revision: 1,
  title: "SDNN: standard deviation of normal intervals",
  equation: "SDNN = SD(NN), divisor n − 1",
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
  compute: sdnn,
  checks: [
    {
      given: [EIGHT],
      expect: 40.81,
      tolerance: 0.005,
      from: "by hand: mean 842.125, sum of squares 11 658.9 over 7, root",
    },
    { given: [[800, null]], expect: "refused", from: "one interval" },
  ],
};
