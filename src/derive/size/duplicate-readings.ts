/**
 * Value of repeated readings of one measure.
 *
 *     one reading: itself · two: mean · three or more: median
 *
 * Two readings cannot tell which of them is off, so both count; with three, one slip no longer moves the value.
 * Whether a third reading was due (more than 5 % apart for skinfolds, 1 % for other measures) is a validity rule.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { mean, median } from "../../kernel/statistics.js";

/** Value of repeated readings: as the measure. Throws OutOfRange outside the ranges in `info`. */
export function duplicateReadings(readings: readonly number[]): number {
  if (readings.length === 0) throw new OutOfRange(info.id, "readings", 0, "one or more");
  return readings.length === 2 ? mean(readings) : median(readings);
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "duplicate-readings",
  revision: 1,
  title: "Value of repeated readings",
  equation: "one: itself · two: mean · three or more: median",
  inputs: { readings: { unit: "as the measure", range: "one or more" } },
  output: { unit: "as the measure", decimals: 1 },
  source: {
    authors: "Esparza-Ros F, Vaquero-Cristóbal R, Marfell-Jones M",
    year: 2019,
    title: "International Standards for Anthropometric Assessment",
    journal: "ISAK",
    where: "measurement procedures: mean of two, median of three",
    verified: "memory",
  },
  compute: duplicateReadings,
  checks: [
    { given: [[72.4]], expect: 72.4, tolerance: 0, from: "by hand: a single reading stands" },
    { given: [[72.4, 72.8]], expect: 72.6, tolerance: 1e-9, from: "by hand: (72.4 + 72.8) / 2" },
    {
      given: [[72.4, 72.8, 79.1]],
      expect: 72.8,
      tolerance: 0,
      from: "by hand: the middle of three; the third, a slip, does not move it",
    },
    { given: [[]], expect: "refused", from: "nothing was read" },
  ],
};
