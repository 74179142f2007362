/**
 * Percentile of a value in a row of printed percentiles.
 *
 *     P = p₁ + (p₂ − p₁)·(x − v₁)/(v₂ − v₁)     between the printed neighbours v₁ ≤ x ≤ v₂
 *
 * A straight line between two printed points invents the least. Below the lowest and above the highest printed
 * percentile nothing is known, so nothing is given but the side.
 */
import { type FormulaInfo, OutOfRange } from "../kernel/formula.js";

export type Point = readonly [percentile: number, value: number];

/** 0 to 100. Points rise in both; throws OutOfRange beyond the first and last. */
export function percentileLinear(points: readonly Point[], x: number): number {
  for (let i = 1; i < points.length; i++) {
    const [p1, v1] = points[i - 1] as Point;
    const [p2, v2] = points[i] as Point;
    if (x >= v1 && x <= v2) return v2 === v1 ? p1 : p1 + ((p2 - p1) * (x - v1)) / (v2 - v1);
  }
  const first = points[0]?.[1];
  const last = points[points.length - 1]?.[1];
  throw new OutOfRange(info.id, "value", x, `${first} to ${last}, the printed percentiles`);
}

export const info: FormulaInfo<[readonly Point[], number], number> = {
  id: "percentile-linear",
  revision: 1,
  title: "Percentile by linear interpolation",
  equation: "P = p₁ + (p₂ − p₁)·(x − v₁)/(v₂ − v₁)",
  inputs: {
    points: { unit: "percentile and value", range: "printed, rising" },
    value: { unit: "as the table", range: "between the lowest and highest printed value" },
  },
  output: { unit: "percentile", decimals: 0 },
  caveat: "Beyond the printed percentiles only the side is given.",
  source: {
    authors: "this project",
    year: null,
    title: "Interpolation between printed percentiles",
    where: "linear between neighbours, never extrapolated; the worked rows are those of the tables used",
    verified: "own",
  },
  compute: percentileLinear,
  checks: [
    {
      given: [
        [
          [50, 42.4],
          [75, 49.2],
        ],
        45,
      ],
      expect: 59.56,
      tolerance: 0.01,
      from: "by hand: 50 + 25·(45.0 − 42.4)/(49.2 − 42.4), men 30 to 39 years of Kaminsky 2015",
    },
    {
      given: [
        [
          [75, 39.7],
          [90, 45.6],
        ],
        43,
      ],
      expect: 83.39,
      tolerance: 0.01,
      from: "by hand: 75 + 15·(43.0 − 39.7)/(45.6 − 39.7), men 50 to 59 years of Kaminsky 2015",
    },
    {
      given: [
        [
          [5, 17],
          [10, 18.8],
        ],
        16,
      ],
      expect: "refused",
      from: "own rule: below the lowest printed percentile",
    },
  ],
};
