/**
 * False alarms when many measures are compared at one retest.
 *
 *     P(at least one) = 1 − 0.95ᵏ,   expected number = 0.05 k
 *
 * Exact for independent measures; linked measures give fewer occasions for alarm but alarm together. The expected number
 * holds either way.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { studentQuantile } from "../../kernel/student.js";

export interface FalseAlarms {
  /** Share of 1. */
  readonly atLeastOne: number;
  readonly expected: number;
  /** Multiplier of the standard error that keeps the chance of any false alarm at 5 % (Bonferroni). */
  readonly multiplier: number;
}

/** Number of measures, 1 or more. */
export function falseAlarms(measures: number): FalseAlarms {
  if (!(Number.isInteger(measures) && measures >= 1))
    throw new OutOfRange(info.id, "measures", measures, "a whole number, 1 or more");
  return {
    atLeastOne: 1 - 0.95 ** measures,
    expected: 0.05 * measures,
    multiplier: studentQuantile(1 - 0.05 / (2 * measures), Number.POSITIVE_INFINITY),
  };
}

// k, chance of at least one, Bonferroni multiplier.
const rows = [
  [1, 0.05, 1.96],
  [5, 0.226, 2.576],
  [10, 0.401, 2.807],
  [15, 0.537, 2.935],
  [20, 0.642, 3.023],
] as const;
export const info: FormulaInfo<[number], FalseAlarms> = {
  id: "false-alarms",
  revision: 1,
  title: "False alarms among many comparisons",
  equation: "1 − 0.95^k; 0.05 k",
  inputs: { measures: { unit: "", range: "1 or more" } },
  output: { unit: "share", decimals: 2 },
  source: {
    authors: "standard probability",
    year: null,
    title: "Family-wise error; Bonferroni's inequality",
    where: "any textbook of statistics",
    verified: "common practice",
  },
  compute: falseAlarms,
  checks: [
    ...rows.map(([k, share]) => ({
      given: [k] as [number],
      expect: share,
      tolerance: 0.0005,
      pick: (x: FalseAlarms) => x.atLeastOne,
      from: `by hand: 1 − 0.95 to the power ${k}`,
    })),
    ...rows.map(([k, , multiplier]) => ({
      given: [k] as [number],
      expect: multiplier,
      tolerance: 0.0005,
      pick: (x: FalseAlarms) => x.multiplier,
      from: `printed normal table, two-sided ${0.05 / k}`,
    })),
    { given: [0], expect: "refused", from: "nothing compared, nothing claimed" },
  ],
};
