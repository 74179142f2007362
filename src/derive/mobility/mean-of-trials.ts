/**
 * Mean of the trials of one leg.
 *
 *     Σ trials / n
 *
 * The published stance times are means of three; a best of three reads several seconds higher and must not be mixed.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { mean } from "../../kernel/statistics.js";

/** Mean of trials: s. Throws OutOfRange outside the ranges in `info`. */
export function meanOfTrials(trials: readonly number[]): number {
  if (trials.length === 0) throw new OutOfRange(info.id, "trials", 0, "one or more");
  for (const trial of trials) requireRange(info.id, "trial", trial, 0, 300, "s");
  return mean(trials);
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "mean-of-trials",
  revision: 1,
  title: "Mean of trials",
  equation: "Σ trials / n",
  inputs: { trials: { unit: "s", range: "one or more, 0 to 300" } },
  output: { unit: "s", decimals: 1 },
  source: {
    authors: "Springer BA, Marin R, Cyhan T, Roberts H, Gill NW",
    year: 2007,
    title: "Normative values for the unipedal stance test with eyes open and closed",
    journal: "J Geriatr Phys Ther 30(1):8–15",
    doi: "10.1519/00139143-200704000-00003",
    where: "three trials, 45-s ceiling",
    verified: "memory",
  },
  compute: meanOfTrials,
  checks: [
    { given: [[40, 44, 45]], expect: 43, tolerance: 1e-9, from: "by hand: 129 / 3" },
    { given: [[]], expect: "refused", from: "no trial" },
  ],
};
