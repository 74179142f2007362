/** Repeated readings of one measure: one value, or a list of the single readings, as the session file gives them. */
import type { MeasureId } from "../kernel/measures.js";
import type { Extra, Notebook } from "../kernel/notebook.js";
import * as duplicates from "./size/duplicate-readings.js";

export type OneOrMany = number | readonly number[];

export const listOf = (readings: OneOrMany): readonly number[] =>
  typeof readings === "number" ? [readings] : readings;

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

/** Writes the best (largest) of several trials; the trials are named in the origin. */
export function best(readings: OneOrMany): number {
  return Math.max(...listOf(readings));
}

/** Largest less smallest, as a share (%) of the mean of the first two readings' values; undefined for one reading. */
export function spreadPercent(readings: OneOrMany): number | undefined {
  const [first, second] = listOf(readings);
  if (first === undefined || second === undefined || first + second <= 0) return undefined;
  return (100 * Math.abs(first - second)) / ((first + second) / 2);
}
