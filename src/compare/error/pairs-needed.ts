/**
 * Sample-size advice for a retest study: pairs needed so that the error is not much larger than estimated.
 *
 * The smallest df with √(df / χ²(0.05; df)) ≤ 1 + excess; pairs = df + 1 for a typical error (df = n − 1).
 * With an excess of 30 % that is 27 degrees of freedom, the densitometry societies' rule.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { chiSquareQuantile } from "../../kernel/student.js";
import { glueer1995 } from "./sources.js";

/** Accepted excess of the true error at 95 %, as a share (0.3 = 30 %); 0.05 to 2. Whole number of pairs out. */
export function pairsNeeded(excess: number): number {
  if (!(excess >= 0.05 && excess <= 2)) throw new OutOfRange(info.id, "excess", excess, "0.05 to 2");
  let df = 1;
  while (Math.sqrt(df / chiSquareQuantile(0.05, df)) > 1 + excess) df++;
  return df + 1;
}

export const info: FormulaInfo<[number], number> = {
  id: "pairs-needed",
  revision: 1,
  title: "Pairs needed to know a typical error",
  equation: "smallest n with √((n−1)/χ²(0.05; n−1)) ≤ 1 + excess",
  inputs: { excess: { unit: "share", range: "0.05 to 2" } },
  output: { unit: "pairs", decimals: 0 },
  source: { ...glueer1995, where: "abstract: 27 degrees of freedom for an upper limit 30 % above the estimate" },
  compute: pairsNeeded,
  checks: [
    { given: [0.3], expect: 28, tolerance: 0, from: "Glüer 1995: 27 degrees of freedom" },
    { given: [0], expect: "refused", from: "no number of pairs gives certainty" },
  ],
};
