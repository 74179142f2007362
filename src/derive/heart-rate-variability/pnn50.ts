/**
 * pNN50: share of successive differences larger than 50 ms.
 *
 *     pNN50 = 100 · count(|difference| > 50 ms) / number of normal intervals        %
 *
 * The published definition divides by the intervals; dividing by the differences, as is also done, reads higher by
 * one part in n.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { successiveDifferences } from "./successive-differences.js";

/** Normal intervals in ms, null where one was left out. Throws OutOfRange for fewer than two usable ones. */
export function pnn50(nn: readonly (number | null)[]): number {
  const present = nn.filter((x) => x !== null);
  if (present.length < 2) throw new OutOfRange(info.id, "normal intervals", present.length, "two or more");
  return (100 * successiveDifferences(nn).filter((d) => Math.abs(d) > 50).length) / present.length;
}

const EIGHT = [812, 790, 850, 905, 870, 802, 828, 880];
export const info: FormulaInfo<[readonly (number | null)[]], number> = {
  id: "pnn50",
  revision: 1,
  title: "pNN50: share of differences above 50 ms",
  equation: "pNN50 = 100·NN50 / number of NN intervals",
  inputs: { NN: { unit: "ms", range: "two or more" } },
  output: { unit: "%", decimals: 1 },
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
  compute: pnn50,
  checks: [
    { given: [EIGHT], expect: 50, tolerance: 1e-9, from: "by hand: 60, 55, −68 and 52 of 8 intervals" },
    { given: [[800, 850]], expect: 0, tolerance: 0, from: "by hand: 50 is not above 50" },
    { given: [[800, null]], expect: "refused", from: "one interval" },
  ],
};
