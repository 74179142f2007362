/**
 * Value at a z of an LMS curve, the inverse of lms-z.
 *
 *     x = M·(1 + L·S·z)^(1/L)        x = M·exp(S·z) where L = 0
 */
import { type FormulaInfo, OutOfRange } from "../kernel/formula.js";

/** In the unit of M. Throws OutOfRange where the curve has no value at that z (1 + L·S·z ≤ 0). */
export function lmsValue(z: number, L: number, M: number, S: number): number {
  if (L === 0) return M * Math.exp(S * z);
  const base = 1 + L * S * z;
  if (!(base > 0)) throw new OutOfRange(info.id, "z", z, "z at which 1 + L·S·z is above 0");
  return M * base ** (1 / L);
}

export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "lms-value",
  revision: 1,
  title: "Value at a z by the LMS method",
  equation: "x = M·(1 + L·S·z)^(1/L); x = M·exp(S·z) where L = 0",
  inputs: {
    z: { unit: "SD", range: "where 1 + L·S·z is above 0" },
    L: { unit: "1", range: "any" },
    M: { unit: "as the table", range: "above 0" },
    S: { unit: "1", range: "above 0" },
  },
  output: { unit: "as the table", decimals: 2 },
  source: {
    authors: "Cole TJ, Green PJ",
    year: 1992,
    title: "Smoothing reference centile curves: the LMS method and penalized likelihood",
    journal: "Stat Med 11(10):1305–1319",
    where: "centile curve",
    verified: "memory",
  },
  compute: lmsValue,
  checks: [
    {
      given: [-1.645, 1, 4, 0.1],
      expect: 3.342,
      tolerance: 1e-9,
      from: "by hand: 4·(1 − 0.1·1.645)",
    },
    { given: [1, 0, 2, 0.5], expect: 3.2974, tolerance: 0.0001, from: "by hand: 2·e^0.5" },
    { given: [-10, 1, 4, 0.1], expect: "refused", from: "by hand: 1 − 1 = 0, no value lies there" },
  ],
};
