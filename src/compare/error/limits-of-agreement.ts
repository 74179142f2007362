/**
 * Limits of agreement: the range that holds most differences between two readings of the same thing.
 *
 *     d̄ ± k · SD(d),   k = 1.96 (the first paper prints 2)
 *
 * Between two methods they say how far one may stand in for the other; between two tests with one method they are
 * the detectable change of a pair, shifted by the mean difference.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { mean, sampleSd } from "../../kernel/statistics.js";
import { differences, type Pair } from "./pairs.js";
import type { Limits } from "./typical-error-limits.js";

/** Two or more pairs and the multiplier (1.96 or 2) in, limits of second − first in the unit of the measure out. */
export function limitsOfAgreement(pairs: readonly Pair[], multiplier: number): Limits {
  if (!(multiplier > 0)) throw new OutOfRange(info.id, "multiplier", multiplier, "a number above 0");
  const d = differences(info.id, pairs);
  const half = multiplier * sampleSd(d);
  return { low: mean(d) - half, high: mean(d) + half };
}

export const info: FormulaInfo<[readonly Pair[], number], Limits> = {
  id: "limits-of-agreement",
  revision: 1,
  title: "Limits of agreement",
  equation: "mean(d) ± 1.96 SD(d)",
  inputs: {
    pairs: { unit: "as the measure", range: "two or more pairs" },
    multiplier: { unit: "", range: "1.96, or 2 as first printed" },
  },
  output: { unit: "as the measure", decimals: 2 },
  source: {
    authors: "Bland JM, Altman DG",
    year: 1986,
    title: "Statistical methods for assessing agreement between two methods of clinical measurement",
    journal: "Lancet 327(8476):307–310",
    where: "Table 1: peak expiratory flow, large and mini meter",
    verified: "seen",
  },
  compute: limitsOfAgreement,
  checks: [
    {
      given: [
        [
          [0, 1],
          [0, 3],
        ],
        2,
      ],
      expect: 4.8284,
      tolerance: 0.0001,
      pick: (limits) => limits.high,
      from: "by hand: mean 2, SD √2, 2 + 2√2",
    },
    {
      given: [
        // Large meter minus mini meter, first readings: the pair is (mini, large).
        [
          [512, 494],
          [430, 395],
          [520, 516],
          [428, 434],
          [500, 476],
          [600, 557],
          [364, 413],
          [380, 442],
          [658, 650],
          [445, 433],
          [432, 417],
          [626, 656],
          [260, 267],
          [477, 478],
          [259, 178],
          [350, 423],
          [451, 427],
        ],
        2,
      ],
      expect: -79.65,
      tolerance: 0.05,
      pick: (limits) => limits.low,
      from: "Bland & Altman 1986, Table 1: printed −79.7 from the rounded −2.1 and 38.8; −79.65 unrounded",
    },
  ],
};
