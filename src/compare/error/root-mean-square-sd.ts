/**
 * Root-mean-square standard deviation of repeated measurements: the precision error of densitometry.
 *
 *     RMS SD = √(Σd² / 2n) for pairs
 *
 * Unlike the typical error it contains any shift common to all pairs; the two agree only when there is none. A report
 * always says which of them it used. Thirty pairs, repositioned between scans, or fifteen people scanned three times.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { differences, type Pair, WORKED_PAIRS } from "./pairs.js";
import { glueer1995 } from "./sources.js";

/** One or more pairs in, one standard deviation in the unit of the measure out. */
export function rootMeanSquareSd(pairs: readonly Pair[]): number {
  const d = differences(info.id, pairs, 1);
  return Math.sqrt(d.reduce((sum, x) => sum + x * x, 0) / (2 * d.length));
}

export const info: FormulaInfo<[readonly Pair[]], number> = {
  id: "root-mean-square-sd",
  revision: 1,
  title: "Root-mean-square standard deviation",
  equation: "RMS SD = √(Σd²/(2n))",
  inputs: { pairs: { unit: "as the measure", range: "one or more pairs" } },
  output: { unit: "as the measure", decimals: 3 },
  source: glueer1995,
  compute: rootMeanSquareSd,
  checks: [
    { given: [WORKED_PAIRS], expect: 0.75133, tolerance: 0.00001, from: "by hand: √(11.29/20)" },
    { given: [[[10, 16]]], expect: 4.24264, tolerance: 0.00001, from: "by hand: √(36/2)" },
    { given: [[]], expect: "refused", from: "no pair, no error" },
  ],
};
