/**
 * A value as percent of its reference.
 *
 *     100 · value / reference
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Percent of a reference value: %. Throws OutOfRange outside the ranges in `info`. */
export function percentOfReference(value: number, reference: number): number {
  requireRange(info.id, "value", value, 0.001, 100000, "as the measure");
  requireRange(info.id, "reference", reference, 0.001, 100000, "as the measure");
  return (100 * value) / reference;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "percent-of-reference",
  revision: 1,
  title: "Percent of a reference value",
  equation: "100 · value / reference",
  inputs: {
    value: { unit: "as the measure", range: "0.001 to 100000" },
    reference: { unit: "as the measure", range: "0.001 to 100000" },
  },
  output: { unit: "%", decimals: 0 },
  source: {
    authors: "definition",
    year: null,
    title: "Percent of a reference value",
    where: "share of the reference",
    verified: "common practice",
  },
  compute: percentOfReference,
  checks: [
    { given: [600, 573.75], expect: 104.575, tolerance: 0.001, from: "by hand: 60 000 / 573.75" },
    { given: [600, 0], expect: "refused", from: "no reference" },
  ],
};
