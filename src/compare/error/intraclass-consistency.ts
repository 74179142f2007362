/**
 * Intraclass correlation ICC(3,1): consistency of single measurements, these trials and no others.
 *
 *     (MSP − MSE) / (MSP + (k − 1) MSE)
 *
 * A shift that all people share does not lower it. The limits are exact: MSP/MSE follows F.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { fisherQuantile } from "../../kernel/student.js";
import type { Correlation } from "./intraclass-agreement.js";
import { WORKED_PAIRS } from "./pairs.js";
import { shroutFleiss1979 } from "./sources.js";
import { meanSquares, type Scores, SIX_BY_FOUR } from "./two-way-variance.js";

/** A complete table of people by trials in, correlation with 95 % limits out. */
export function intraclassConsistency(scores: Scores): Correlation {
  const { people: n, trials: k, betweenPeople: msp, residual: mse } = meanSquares(info.id, scores);
  const value = (msp - mse) / (msp + (k - 1) * mse);
  if (mse === 0) return { value, low: value, high: value };
  const f = msp / mse;
  const low = f / fisherQuantile(0.975, n - 1, (n - 1) * (k - 1));
  const high = f * fisherQuantile(0.975, (n - 1) * (k - 1), n - 1);
  return { value, low: (low - 1) / (low + k - 1), high: (high - 1) / (high + k - 1) };
}

export const info: FormulaInfo<[Scores], Correlation> = {
  id: "intraclass-consistency",
  revision: 1,
  title: "Intraclass correlation, consistency: ICC(3,1)",
  equation: "(MSP − MSE)/(MSP + (k−1)MSE)",
  inputs: { scores: { unit: "as the measure", range: "two or more people by two or more trials" } },
  output: { unit: "1", decimals: 2 },
  caveat: "It depends on the spread of the sample and is not carried to other people.",
  source: shroutFleiss1979,
  compute: intraclassConsistency,
  checks: [
    {
      given: [SIX_BY_FOUR],
      expect: 0.7148,
      tolerance: 0.00005,
      pick: (c) => c.value,
      from: "Shrout & Fleiss 1979, six targets by four judges: printed .71 (recomputed .7148)",
    },
    {
      given: [WORKED_PAIRS],
      expect: 0.97992,
      tolerance: 0.00001,
      pick: (c) => c.value,
      from: "by hand: mean squares 52.642722 and 0.533833",
    },
    {
      given: [WORKED_PAIRS],
      expect: 0.92155,
      tolerance: 0.00005,
      pick: (c) => c.low,
      from: "by hand: F 98.613 over 4.026 (F 0.975 at 9 and 9)",
    },
    {
      given: [WORKED_PAIRS],
      expect: 0.99498,
      tolerance: 0.00005,
      pick: (c) => c.high,
      from: "by hand: F 98.613 times 4.026 (F 0.975 at 9 and 9)",
    },
  ],
};
