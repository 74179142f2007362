/**
 * Chances that one person's true change is a worthwhile rise, trivial, or a worthwhile fall.
 *
 *     P(rise) = P(T > (w − D)/se),   P(fall) = P(T < (−w − D)/se),   se = √(TE²/m₁ + TE²/m₂)
 *
 * T is Student's t with the degrees of freedom of TE (normal where TE is taken as known). This reads the change as if
 * nothing was known about it beforehand; it says what this pair of tests shows, and is neither proof nor a p-value.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { studentCdf } from "../../kernel/student.js";
import { errorOfChange } from "./detectable-change.js";

export interface Chances {
  /** Shares of 1. */
  readonly higher: number;
  readonly trivial: number;
  readonly lower: number;
}

/** Change, typical error and worthwhile change (≥ 0) in one unit; df ≥ 1. */
export function chances(
  change: number,
  typicalError: number,
  df: number,
  worthwhile: number,
  testsBefore = 1,
  testsNow = 1,
): Chances {
  if (!Number.isFinite(change)) throw new OutOfRange(info.id, "change", change, "a finite number");
  if (!(worthwhile >= 0)) throw new OutOfRange(info.id, "worthwhile change", worthwhile, "0 or more");
  if (!(df >= 1)) throw new OutOfRange(info.id, "degrees of freedom", df, "1 or more");
  const se = errorOfChange(typicalError, testsBefore, testsNow);
  const higher = studentCdf((change - worthwhile) / se, df);
  const lower = studentCdf((-worthwhile - change) / se, df);
  return { higher, trivial: Math.max(0, 1 - higher - lower), lower };
}

type Given = [number, number, number, number, number, number];
const known = Number.POSITIVE_INFINITY;
const check = (given: Given, part: keyof Chances, expect: number, arithmetic: string) => ({
  given,
  expect,
  tolerance: 0.0002,
  pick: (c: Chances) => c[part],
  from: `by hand with printed tables of the distribution: ${arithmetic}`,
});
export const info: FormulaInfo<Given, Chances> = {
  id: "chances",
  revision: 1,
  title: "Chances of a worthwhile change",
  equation: "P(rise) = P(T > (w − D)/se), P(fall) = P(T < (−w − D)/se)",
  inputs: {
    change: { unit: "as the measure", range: "any" },
    typicalError: { unit: "as the measure", range: "above 0" },
    df: { unit: "", range: "1 or more" },
    worthwhile: { unit: "as the measure", range: "0 or more" },
    testsBefore: { unit: "", range: "1 or more" },
    testsNow: { unit: "", range: "1 or more" },
  },
  output: { unit: "share", decimals: 3 },
  caveat:
    "Read as if nothing was known of the change beforehand; it needs an error from people, tests and intervals alike.",
  source: {
    authors: "Hopkins WG",
    year: 2004,
    title: "How to interpret changes in an athletic performance test",
    journal: "Sportscience 8:1–7",
    where: "abstract states the approach; the equations are from memory",
    verified: "memory",
  },
  compute: chances,
  checks: [
    check([3.5, 1.3, known, 1, 1, 1], "higher", 0.9131, "2.5/1.83848 = 1.3598"),
    check([3.5, 1.3, known, 1, 1, 1], "trivial", 0.0798, "what remains"),
    check([3.5, 1.3, known, 1, 1, 1], "lower", 0.0072, "−4.5/1.83848 = −2.4477"),
    check([3.5, 1.3, 9, 1, 1, 1], "higher", 0.8965, "t with 9 degrees of freedom, 1.3598"),
    check([3.5, 1.3, 9, 1, 1, 1], "trivial", 0.085, "what remains"),
    check([3.5, 1.3, 9, 1, 1, 1], "lower", 0.0184, "t with 9 degrees of freedom, −2.4477"),
    check([1.0, 1.3, known, 1, 1, 1], "higher", 0.5, "the change equals the worthwhile change"),
    check([1.0, 1.3, known, 1, 1, 1], "lower", 0.1383, "−2/1.83848 = −1.0879"),
    check([-2.5, 1.3, known, 1, 1, 1], "higher", 0.0285, "−3.5/1.83848 = −1.9037"),
    check([-2.5, 1.3, known, 1, 1, 1], "trivial", 0.1788, "what remains"),
    check([-2.5, 1.3, known, 1, 1, 1], "lower", 0.7927, "1.5/1.83848 = 0.8159"),
    check([0.4, 1.3, known, 1, 1, 1], "higher", 0.3721, "−0.6/1.83848 = −0.3264"),
    check([0.4, 1.3, known, 1, 1, 1], "trivial", 0.4047, "what remains"),
  ],
};
