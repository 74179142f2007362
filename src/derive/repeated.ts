/** How the assemblers write repeated readings of one measure. */

import type { MeasureId } from "../kernel/measures.js";
import type { Extra, Notebook } from "../kernel/notebook.js";
import { listOf, type OneOrMany, percentApart } from "../kernel/readings.js";
import * as duplicates from "./size/duplicate-readings.js";

/** Writes the value of the readings: recorded where there is one, computed by the rule of duplicates where there are more. */
export function writeRepeated(
  book: Notebook,
  id: MeasureId,
  readings: OneOrMany | undefined,
  key: string,
  unit: string,
  more?: Extra,
): void {
  if (readings === undefined) return;
  const list = listOf(readings);
  const [only] = list;
  if (list.length === 1 && only !== undefined) book.record(id, only, key, more);
  else book.compute(id, duplicates.info, [{ name: key, value: list, unit }], more);
}

/** The best (largest) of several trials. */
export function best(readings: OneOrMany): number {
  return Math.max(...listOf(readings));
}

/** How far the first two readings lie apart, in % of their mean; undefined for one reading. */
export function spreadPercent(readings: OneOrMany): number | undefined {
  const [first, second] = listOf(readings);
  if (first === undefined || second === undefined || first + second <= 0) return undefined;
  return percentApart(first, second);
}
