/**
 * Best of several trials of the same thing by the same side.
 *
 *     max(trials)
 *
 * Trials of two hands or two legs are never put together here; each side has its own.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** Best of the trials: as the measure. Throws OutOfRange outside the ranges in `info`. */
export function bestTrial(trials: readonly number[]): number {
  if (trials.length === 0) throw new OutOfRange(info.id, "trials", 0, "one or more");
  for (const trial of trials) if (!(trial > 0)) throw new OutOfRange(info.id, "trial", trial, "trials above 0");
  return Math.max(...trials);
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "best-trial",
  revision: 1,
  title: "Best of the trials",
  equation: "max(trials)",
  inputs: { trials: { unit: "as the measure", range: "one or more, above 0" } },
  output: { unit: "as the measure", decimals: 1 },
  source: {
    authors: "definition",
    year: null,
    title: "Grip strength, best of three trials",
    where: "best of three is the more reliable value; rule of published best-hand norms",
    verified: "common practice",
  },
  compute: bestTrial,
  checks: [
    { given: [[38.2, 40.1, 39.5]], expect: 40.1, tolerance: 0, from: "by hand" },
    { given: [[]], expect: "refused", from: "no trial" },
    { given: [[38, 0]], expect: "refused", from: "a trial of 0 was not made" },
  ],
};
