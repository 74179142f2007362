/**
 * Tests to average at each visit so that a given change can be detected.
 *
 *     m = ⌈2 (1.96 TE / δ)²⌉
 *
 * With the error taken as known; it assumes the errors of the averaged tests are independent, so tests on different days.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { studentQuantile } from "../../kernel/student.js";
import { weir2005 } from "./sources.js";

/** Typical error and the change to detect in one unit, both above 0; tests on each side out. */
export function testsNeeded(typicalError: number, change: number): number {
  if (!(typicalError > 0)) throw new OutOfRange(info.id, "typical error", typicalError, "a number above 0");
  if (!(change > 0)) throw new OutOfRange(info.id, "change", change, "a number above 0");
  return Math.ceil(2 * ((studentQuantile(0.975, Number.POSITIVE_INFINITY) * typicalError) / change) ** 2);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "tests-needed",
  revision: 1,
  title: "Tests to average at each visit",
  equation: "least whole number ≥ (2 (1.96 TE/δ)²)",
  inputs: {
    typicalError: { unit: "as the measure", range: "above 0" },
    change: { unit: "as the measure", range: "above 0" },
  },
  output: { unit: "tests", decimals: 0 },
  source: { ...weir2005, where: "minimal difference, solved for the number of tests averaged" },
  compute: testsNeeded,
  checks: [
    { given: [2.58, 4.9], expect: 3, tolerance: 0, from: "by hand: 2 (1.96 · 2.58/4.9)² = 2.13, rounded up" },
    { given: [1, 2.8], expect: 1, tolerance: 0, from: "by hand: 2 (1.96/2.8)² = 0.98, rounded up" },
    { given: [1, 0], expect: "refused", from: "no number of tests detects no change" },
  ],
};
