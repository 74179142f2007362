/**
 * Detectable change where the error is a percentage: unequal upwards and downwards.
 *
 *     up = 100 (exp(q s √(1/m₁ + 1/m₂)) − 1),   down = 100 (exp(−q s √(1/m₁ + 1/m₂)) − 1),   s = ln(1 + CV/100)
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { detectableChange } from "./detectable-change.js";
import { weir2005 } from "./sources.js";
import { logErrorOfPercent } from "./typical-error-percent.js";

export interface UpDown {
  readonly up: number;
  readonly down: number;
}

/** CV in % above 0, its df, tests averaged; percent of the earlier value out (down is negative). */
export function detectableChangePercent(cvPercent: number, df: number, testsBefore = 1, testsNow = 1): UpDown {
  const change = detectableChange(logErrorOfPercent(cvPercent), df, testsBefore, testsNow);
  return { up: 100 * Math.expm1(change), down: 100 * Math.expm1(-change) };
}

const known = Number.POSITIVE_INFINITY;
// CV %, and the limits to one decimal, as 100 (exp(±2.77181 ln(1 + CV/100)) − 1) gives them by hand.
const rows = [
  [1.3, 3.6, -3.5],
  [2.4, 6.8, -6.4],
  [3.0, 8.5, -7.9],
  [3.7, 10.6, -9.6],
  [4.2, 12.1, -10.8],
  [4.9, 14.2, -12.4],
  [5.6, 16.3, -14.0],
  [7.7, 22.8, -18.6],
  [10.4, 31.6, -24.0],
  [27.0, 94.0, -48.4],
] as const;
export const info: FormulaInfo<[number, number, number, number], UpDown> = {
  id: "detectable-change-percent",
  revision: 1,
  title: "Detectable change in percent (95 %)",
  equation: "100 (exp(± t(0.975; df) · ln(1 + CV/100) · √(1/m₁ + 1/m₂)) − 1)",
  inputs: {
    cvPercent: { unit: "%", range: "above 0" },
    df: { unit: "", range: "1 or more" },
    testsBefore: { unit: "", range: "1 or more" },
    testsNow: { unit: "", range: "1 or more" },
  },
  output: { unit: "%", decimals: 1 },
  source: { ...weir2005, where: "minimal difference, carried to logarithms" },
  compute: detectableChangePercent,
  checks: [
    {
      given: [5.0, known, 1, 1],
      expect: 14.4808,
      tolerance: 0.0001,
      pick: (x) => x.up,
      from: "by hand: exp(1.95996 · 1.41421 · ln 1.05) − 1; a baseline of 46.0 needs 52.661",
    },
    {
      given: [1.54356, known, 1, 1],
      expect: -4.15689,
      tolerance: 0.0001,
      pick: (x) => x.down,
      from: "by hand: exp(−1.95996 · 1.41421 · 0.0153177) − 1",
    },
    ...rows.flatMap(([cv, up, down]) => [
      {
        given: [cv, known, 1, 1] as [number, number, number, number],
        expect: up,
        tolerance: 0.05,
        pick: (x: UpDown) => x.up,
        from: `by hand: (1 + ${cv}/100) to the power 2.77181`,
      },
      {
        given: [cv, known, 1, 1] as [number, number, number, number],
        expect: down,
        tolerance: 0.05,
        pick: (x: UpDown) => x.down,
        from: `by hand: (1 + ${cv}/100) to the power −2.77181`,
      },
    ]),
  ],
};
