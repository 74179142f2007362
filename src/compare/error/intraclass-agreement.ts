/**
 * Intraclass correlation ICC(2,1): absolute agreement of single measurements, trials taken at random.
 *
 *     (MSP − MSE) / (MSP + (k − 1) MSE + k (MST − MSE)/n)
 *
 * P people, T trials, E residual. A shift between trials lowers it. It depends on how much the sample's people differ, so
 * it is never carried to other people: carry the typical error. Limits after McGraw & Wong (1996).
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { fisherQuantile } from "../../kernel/student.js";
import { WORKED_PAIRS } from "./pairs.js";
import { shroutFleiss1979 } from "./sources.js";
import { meanSquares, type Scores, SIX_BY_FOUR } from "./two-way-variance.js";

export interface Correlation {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A complete table of people by trials in, correlation with 95 % limits out. */
export function intraclassAgreement(scores: Scores): Correlation {
  const { people: n, trials: k, betweenPeople: msp, betweenTrials: mst, residual: mse } = meanSquares(info.id, scores);
  const value = (msp - mse) / (msp + (k - 1) * mse + (k * (mst - mse)) / n);
  // Satterthwaite's degrees of freedom for the error term, a weighted sum of two mean squares.
  const a = (k * value) / (n * (1 - value));
  const b = 1 + (k * value * (n - 1)) / (n * (1 - value));
  const error = a * mst + b * mse;
  const df = error ** 2 / ((a * mst) ** 2 / (k - 1) + (b * mse) ** 2 / ((n - 1) * (k - 1)));
  if (!(df > 0)) return { value, low: value, high: value }; // perfect agreement
  const lower = fisherQuantile(0.975, n - 1, df);
  const upper = fisherQuantile(0.975, df, n - 1);
  const spread = k * mst + (k * n - k - n) * mse;
  return {
    value,
    low: (n * (msp - lower * mse)) / (lower * spread + n * msp),
    high: (n * (upper * msp - mse)) / (spread + n * upper * msp),
  };
}

const from = "Shrout & Fleiss 1979, six targets by four judges: printed .29 (recomputed .2898)";
export const info: FormulaInfo<[Scores], Correlation> = {
  id: "intraclass-agreement",
  revision: 1,
  title: "Intraclass correlation, absolute agreement: ICC(2,1)",
  equation: "(MSP − MSE)/(MSP + (k−1)MSE + k(MST − MSE)/n)",
  inputs: { scores: { unit: "as the measure", range: "two or more people by two or more trials" } },
  output: { unit: "1", decimals: 2 },
  caveat: "It depends on the spread of the sample and is not carried to other people.",
  source: shroutFleiss1979,
  compute: intraclassAgreement,
  checks: [
    { given: [SIX_BY_FOUR], expect: 0.2898, tolerance: 0.00005, pick: (c) => c.value, from },
    {
      given: [SIX_BY_FOUR],
      expect: 0.019,
      tolerance: 0.0005,
      pick: (c) => c.low,
      from: "from memory: limits commonly printed for this table, .019 to .76",
    },
    {
      given: [SIX_BY_FOUR],
      expect: 0.76,
      tolerance: 0.005,
      pick: (c) => c.high,
      from: "from memory: limits commonly printed for this table, .019 to .76",
    },
    {
      given: [WORKED_PAIRS],
      expect: 0.97879,
      tolerance: 0.00001,
      pick: (c) => c.value,
      from: "by hand: mean squares 52.642722, 0.8405 and 0.533833",
    },
    { given: [[[1, 2]]], expect: "refused", from: "one person has no spread" },
  ],
};
