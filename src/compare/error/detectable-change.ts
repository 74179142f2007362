/**
 * Detectable change: the smallest change of one person that exceeds chance error at 95 %.
 *
 *     q · √(TE²/m₁ + TE²/m₂)
 *
 * TE is the typical error of one test and m the number of tests averaged at each visit (one and one gives the familiar
 * 1.96 √2 TE). q is Student's t with the degrees of freedom of TE, because an error estimated from few pairs may be
 * larger than it looks; it is 1.96 where TE is taken as known. Averaging helps only against the part of the error
 * that differs between the averaged tests.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { studentQuantile } from "../../kernel/student.js";
import { weir2005 } from "./sources.js";

/** Standard error of a change, in the unit of the typical error. */
export function errorOfChange(typicalError: number, testsBefore: number, testsNow: number): number {
  if (!(typicalError > 0)) throw new OutOfRange(info.id, "typical error", typicalError, "a number above 0");
  for (const tests of [testsBefore, testsNow])
    if (!(Number.isInteger(tests) && tests >= 1)) throw new OutOfRange(info.id, "tests averaged", tests, "1 or more");
  return typicalError * Math.sqrt(1 / testsBefore + 1 / testsNow);
}

/** In the unit of the typical error. df ≥ 1, Infinity for an error taken as known. */
export function detectableChange(typicalError: number, df: number, testsBefore = 1, testsNow = 1): number {
  if (!(df >= 1)) throw new OutOfRange(info.id, "degrees of freedom", df, "1 or more");
  return studentQuantile(0.975, df) * errorOfChange(typicalError, testsBefore, testsNow);
}

const known = Number.POSITIVE_INFINITY;
export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "detectable-change",
  revision: 1,
  title: "Detectable change (95 %)",
  equation: "t(0.975; df) · √(TE²/m₁ + TE²/m₂)",
  inputs: {
    typicalError: { unit: "as the measure", range: "above 0" },
    df: { unit: "", range: "1 or more" },
    testsBefore: { unit: "", range: "1 or more" },
    testsNow: { unit: "", range: "1 or more" },
  },
  output: { unit: "as the measure", decimals: 2 },
  caveat: "A true gain is often smaller than this; a change inside it is not shown to be nothing.",
  source: weir2005,
  compute: detectableChange,
  checks: [
    {
      given: [0.73064, known, 1, 1],
      expect: 2.02519,
      tolerance: 0.00002,
      from: "by hand: 1.95996 · 1.41421 · 0.73064",
    },
    { given: [0.73064, 9, 1, 1], expect: 2.33744, tolerance: 0.0001, from: "by hand: 2.26216 · 1.41421 · 0.73064" },
    { given: [1.3, known, 1, 1], expect: 3.6034, tolerance: 0.0001, from: "by hand: 1.95996 · 1.41421 · 1.3" },
    { given: [1.3, known, 2, 2], expect: 2.548, tolerance: 0.0005, from: "by hand: two tests on each side, 3.6034/√2" },
    {
      given: [1.3, known, 2, 1],
      expect: 3.1206,
      tolerance: 0.0005,
      from: "by hand: two tests before, one now: 1.95996 · 1.3 · √1.5",
    },
    {
      given: [4.85, known, 1, 1],
      expect: 13.4,
      tolerance: 0.05,
      from: "by hand: 1.96 · 1.41421 · 4.85 % of resting energy expenditure",
    },
    { given: [0, 9, 1, 1], expect: "refused", from: "an error of zero cannot be" },
  ],
};
