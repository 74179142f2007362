/**
 * One estimate from several methods, by a rule that is printed.
 *
 * 1. Each identified method weighs by 1/(half width of its interval)²; V-slope and excess CO2 read the same two
 *    channels, as do VE on VCO2 and VE/VCO2, so each of such a pair weighs half.
 * 2. A method whose interval does not hold the weighted median is left out, and said to be.
 * 3. The estimate is the weighted mean of the rest. The methods share breaths, so the interval does not shrink with
 *    their number: its arms are the weighted means of theirs, joined (root of squares) by the spread between them.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { type Found, isFound, type MethodName, type Reading } from "./points.js";

export interface Combined {
  readonly vo2: number;
  readonly low: number;
  readonly high: number;
  readonly used: readonly MethodName[];
  readonly leftOut: readonly MethodName[];
}

const PAIRS: readonly (readonly MethodName[])[] = [
  ["V-slope", "excess CO2"],
  ["VE on VCO2", "VE/VCO2"],
];

export function combine(readings: readonly Reading[], widen: number): Combined | undefined {
  const found = readings.filter(isFound);
  if (found.length === 0) return undefined;
  const weightOf = (f: Found) => {
    const pair = PAIRS.find((p) => p.includes(f.method));
    const shared = pair === undefined ? 1 : found.filter((g) => pair.includes(g.method)).length;
    return 1 / (shared * Math.max(1e-4, (f.high - f.low) / 2) ** 2);
  };
  const middle = weightedMedian(found.map((f) => [f.vo2, weightOf(f)]));
  const used = found.filter((f) => f.low <= middle && middle <= f.high);
  const total = used.reduce((sum, f) => sum + weightOf(f), 0);
  const mean = (pick: (f: Found) => number) => used.reduce((sum, f) => sum + weightOf(f) * pick(f), 0) / total;
  const vo2 = mean((f) => f.vo2);
  const spread = Math.sqrt(mean((f) => (f.vo2 - vo2) ** 2));
  return {
    vo2,
    low:
      vo2 -
      widen *
        Math.hypot(
          mean((f) => f.vo2 - f.low),
          spread,
        ),
    high:
      vo2 +
      widen *
        Math.hypot(
          mean((f) => f.high - f.vo2),
          spread,
        ),
    used: used.map((f) => f.method),
    leftOut: found.filter((f) => !used.includes(f)).map((f) => f.method),
  };
}

function weightedMedian(items: readonly (readonly [value: number, weight: number])[]): number {
  const sorted = [...items].sort((a, b) => a[0] - b[0]);
  const half = sorted.reduce((sum, [, w]) => sum + w, 0) / 2;
  let sum = 0;
  for (const [value, weight] of sorted) {
    sum += weight;
    if (sum >= half) return value;
  }
  return Number(sorted.at(-1)?.[0]);
}

/** Each value with the same half width; for the worked check. */
function compute(halfWidth: number, ...values: number[]): number {
  const names: readonly MethodName[] = ["V-slope", "VE/VO2", "end-tidal O2"];
  const readings = values.map((vo2, i) => ({
    method: names[i % names.length] as MethodName,
    vo2,
    low: vo2 - halfWidth,
    high: vo2 + halfWidth,
    probability: 0,
  }));
  return Number(combine(readings, 1)?.vo2);
}

export const info: FormulaInfo<number[], number> = {
  id: "combined-threshold",
  revision: 2,
  title: "Threshold from several methods",
  equation: "weighted mean of the methods whose interval holds the weighted median; weight 1/(half width)²",
  inputs: {
    "half width": { unit: "L/min", range: "of each method's 95 % interval" },
    values: { unit: "L/min", range: "one a method" },
  },
  output: { unit: "L/min", decimals: 2 },
  source: {
    authors: "Gaskill SE, Ruby BC, Walker AJ, Sanchez OA, Serfass RC, Leon AS",
    year: 2001,
    title: "Validity and reliability of combining three methods to determine ventilatory threshold",
    journal: "Med Sci Sports Exerc 33(11):1841–1848",
    doi: "10.1097/00005768-200111000-00007",
    where: "abstract: combining methods gives a determination more often; the weights and the rule are this project's",
    verified: "seen",
  },
  compute,
  checks: [
    {
      given: [0.1, 2.2, 2.24, 2.45],
      expect: 2.22,
      tolerance: 1e-9,
      from: "by hand: 2.45 − 0.10 does not reach the median 2.24 and is left out; (2.20 + 2.24) / 2",
    },
    { given: [0.1, 2.2, 2.24, 2.28], expect: 2.24, tolerance: 1e-9, from: "by hand: mean of three that agree" },
  ],
};
