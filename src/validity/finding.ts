/** Short ways to write a finding; every rule returns a list of them, empty when all is well. */

import type { RemarkSeverity } from "../kernel/measure.js";
import type { MeasureId } from "../kernel/measures.js";
import { listOf, type OneOrMany, percentApart } from "../kernel/readings.js";
import { toDecimals } from "../kernel/rounding.js";
import type { Finding } from "../kernel/rule.js";

export function finding(
  severity: RemarkSeverity,
  found: string,
  limit: string,
  because: string,
  affects: readonly MeasureId[],
): Finding {
  return { severity, found, limit, because, affects };
}

/** What a rule needs was not written down: a finding too, never silence. */
export function notRecorded(
  what: string,
  because: string,
  affects: readonly MeasureId[],
  severity: RemarkSeverity = "record",
): Finding {
  return { severity, found: `${what} not recorded`, limit: "recorded", because, affects };
}

/**
 * The duplicate rule for one measure: a finding where it was read once, or where the first two readings are further
 * apart than `percent` of their mean and no third was taken.
 */
export function duplicateFindings(
  name: string,
  unit: string,
  readings: OneOrMany | undefined,
  percent: number,
  affects: readonly MeasureId[],
): Finding[] {
  if (readings === undefined) return [];
  const [first, second, third] = listOf(readings);
  const limit = `two readings within ${percent} %, else a third`;
  if (first === undefined || second === undefined)
    return [finding("record", `${name} was read once`, limit, "A slip of a single reading cannot be seen.", affects)];
  const apart = percentApart(first, second);
  // integers of a millionth of a percent: 1 % of 100.5 and 99.5 is not beyond 1 %
  if (third !== undefined || Math.round(apart * 1e6) <= percent * 1e6) return [];
  const because = "One of the two readings is off, and without a third nobody can say which.";
  const found = `${name} ${first} and ${second} ${unit}, ${toDecimals(apart, 1)} % apart, no third reading`;
  return [finding("weakens", found, limit, because, affects)];
}
