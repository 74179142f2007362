/**
 * z of a value on an LMS curve.
 *
 *     z = ((x/M)^L − 1)/(L·S)        z = ln(x/M)/S where L = 0
 *
 * M is the median, S the coefficient of variation, L the power that makes the distribution normal at this age.
 */
import { type FormulaInfo, OutOfRange } from "../kernel/formula.js";

/** Standard deviations from the median. Value, M and S above 0; throws OutOfRange elsewhere. */
export function lmsZ(value: number, L: number, M: number, S: number): number {
  for (const [name, number] of [
    ["value", value],
    ["M", M],
    ["S", S],
  ] as const)
    if (!(number > 0 && Number.isFinite(number))) throw new OutOfRange(info.id, name, number, "a number above 0");
  return L === 0 ? Math.log(value / M) / S : ((value / M) ** L - 1) / (L * S);
}

export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "lms-z",
  revision: 1,
  title: "z by the LMS method",
  equation: "z = ((x/M)^L − 1)/(L·S); z = ln(x/M)/S where L = 0",
  inputs: {
    value: { unit: "as the table", range: "above 0" },
    L: { unit: "1", range: "any" },
    M: { unit: "as the table", range: "above 0" },
    S: { unit: "1", range: "above 0" },
  },
  output: { unit: "SD", decimals: 2 },
  source: {
    authors: "Cole TJ, Green PJ",
    year: 1992,
    title: "Smoothing reference centile curves: the LMS method and penalized likelihood",
    journal: "Stat Med 11(10):1305–1319",
    where: "definition of z",
    verified: "memory",
  },
  compute: lmsZ,
  checks: [
    {
      given: [5.87, 0.1734, 7.2792, 0.3642],
      expect: -0.58,
      tolerance: 0.001,
      from: "by hand: (0.80641^0.1734 − 1)/(0.1734·0.3642) = −0.03663/0.06315",
    },
    { given: [7, 0.4, 7, 0.1], expect: 0, tolerance: 1e-12, from: "by definition: the median has z = 0" },
    { given: [0, 1, 7, 0.1], expect: "refused", from: "own rule: a value of 0 is no measurement" },
  ],
};
