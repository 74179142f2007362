/**
 * Standard score: how far a value lies from what is expected, in units of the published spread.
 *
 *     z = (x − expected)/spread
 *
 * The spread is the SD of a group, or the standard error of estimate of a prediction. Without a published spread there
 * is no z, and a percent of predicted alone does not say how unusual a value is.
 */
import { type FormulaInfo, OutOfRange } from "../kernel/formula.js";

/** Standard deviations. Throws OutOfRange for a spread that is not above 0. */
export function standardScore(value: number, expected: number, spread: number): number {
  if (!(spread > 0)) throw new OutOfRange(info.id, "spread", spread, "a number above 0");
  return (value - expected) / spread;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "standard-score",
  revision: 1,
  title: "Standard score (z)",
  equation: "z = (x − expected)/spread",
  inputs: {
    value: { unit: "as the table", range: "any" },
    expected: { unit: "as the table", range: "any" },
    spread: { unit: "as the table", range: "above 0" },
  },
  output: { unit: "SD", decimals: 2 },
  source: {
    authors: "this project",
    year: null,
    title: "Standard score",
    where: "definition; printed beside percent predicted wherever a standard error of estimate exists",
    verified: "common practice",
  },
  compute: standardScore,
  checks: [
    { given: [36, 41.9, 7.2], expect: -0.82, tolerance: 0.005, from: "by hand: (36.0 − 41.9)/7.2, SEE of Myers 2017" },
    {
      given: [46, 53.8, 9.3],
      expect: -0.839,
      tolerance: 0.0005,
      from: "by hand: (46 − 53.8)/9.3, men 40 to 44 of Steiber 2016",
    },
    { given: [1, 1, 0], expect: "refused", from: "own rule: no spread, no z" },
  ],
};
