/**
 * Test-retest pairs: what every reliability statistic starts from, and the invented set its worked checks use.
 */
import { OutOfRange } from "../../kernel/formula.js";

export type Pair = readonly [test: number, retest: number];

/** Retest minus test, pair by pair. Throws OutOfRange for fewer than `least` pairs or a value that is not finite. */
export function differences(formula: string, pairs: readonly Pair[], least = 2): number[] {
  if (pairs.length < least) throw new OutOfRange(formula, "number of pairs", pairs.length, `${least} or more`);
  return pairs.map(([test, retest]) => {
    const d = retest - test;
    if (!Number.isFinite(d)) throw new OutOfRange(formula, "pair", `${test}, ${retest}`, "finite numbers");
    return d;
  });
}

/** Ten invented people tested twice, mL/kg/min. Σd = 4.1, Σd² = 11.29, so SD(d) = √((11.29 − 1.681)/9) = 1.03328. */
export const WORKED_PAIRS: readonly Pair[] = [
  [42.1, 43.0],
  [47.5, 46.8],
  [50.3, 51.9],
  [38.9, 39.5],
  [55.2, 54.1],
  [44.0, 45.6],
  [48.6, 47.9],
  [52.7, 53.8],
  [40.5, 41.7],
  [46.2, 45.8],
];
