/** How far into its tails a distribution is good for, and what is said beyond. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import { normalCdf } from "../kernel/normal.js";
import * as words from "./words.js";

/** Lowest and highest percentile a distribution is trusted for. */
export const trustedRange = (table: ReferenceTable): readonly [number, number] => [
  table.report_percentiles?.[0] ?? 1,
  table.report_percentiles?.[1] ?? 99,
];

/** The percentile of a z, absent beyond the trusted range. */
export function percentileOf(table: ReferenceTable, z: number): { readonly percentile?: number } {
  const percentile = 100 * normalCdf(z);
  const [low, high] = trustedRange(table);
  return percentile < low || percentile > high ? {} : { percentile };
}

/** Which side of the trusted range a z lies beyond, in words; undefined inside it. */
export function sideOf(table: ReferenceTable, z: number): string | undefined {
  const percentile = 100 * normalCdf(z);
  const [low, high] = trustedRange(table);
  if (percentile < low) return words.belowPercentile(low);
  return percentile > high ? words.abovePercentile(high) : undefined;
}
