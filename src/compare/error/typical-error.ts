/**
 * Typical error of measurement from test-retest pairs.
 *
 *     TE = SD(retest − test) / √2
 *
 * The spread to expect in one person's result when nothing has changed. Taking differences removes what differs
 * between people; √2 removes the second trial's share of the noise. A shift common to all pairs (learning, fatigue)
 * cancels, so the mean change is reported beside it, never inside it. It is estimated on n − 1 degrees of freedom.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { sampleSd } from "../../kernel/statistics.js";
import { differences, type Pair, WORKED_PAIRS } from "./pairs.js";
import { hopkins2000 } from "./sources.js";

/** Two or more pairs in, one standard deviation in the unit of the measure out. Pairs that all differ alike are refused. */
export function typicalError(pairs: readonly Pair[]): number {
  const error = sampleSd(differences(info.id, pairs)) / Math.SQRT2;
  if (error === 0)
    throw new OutOfRange(info.id, "typical error", 0, "pairs that differ: the readings are coarser than their error");
  return error;
}

export const info: FormulaInfo<[readonly Pair[]], number> = {
  id: "typical-error",
  revision: 1,
  title: "Typical error of measurement",
  equation: "TE = SD(retest − test) / √2",
  inputs: { pairs: { unit: "as the measure", range: "two or more pairs" } },
  output: { unit: "as the measure", decimals: 2 },
  caveat:
    "From ten pairs it may be 1.8 times as large as estimated; it holds for the interval between tests it was found at.",
  source: hopkins2000,
  compute: typicalError,
  checks: [
    {
      given: [WORKED_PAIRS],
      expect: 0.73064,
      tolerance: 0.000005,
      from: "by hand: SD of the ten differences 1.03328, over √2",
    },
    {
      given: [
        [
          [62, 67],
          [78, 76],
          [81, 87],
          [55, 55],
          [66, 63],
        ],
      ],
      expect: 2.89,
      tolerance: 0.005,
      from: "by hand: differences 5, −2, 6, 0, −3; SD √16.7 = 4.087; over √2 = 2.890",
    },
    { given: [[[50, 51]]], expect: "refused", from: "one pair has no spread" },
    {
      given: [
        [
          [50, 51],
          [60, 61],
        ],
      ],
      expect: "refused",
      from: "two pairs with one difference would claim an error of zero",
    },
  ],
};
