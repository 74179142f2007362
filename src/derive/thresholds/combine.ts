/**
 * One estimate from several methods, by a rule that is printed.
 *
 * 1. Each identified method weighs by 1/(half width of its interval)²; V-slope and excess CO2 read the same two
 *    channels, as do VE on VCO2 and VE/VCO2, so each of such a pair weighs half.
 * 2. A method whose interval does not hold the weighted median is left out, and said to be.
 * 3. The estimate is the weighted mean of the rest. The methods share breaths, so the interval does not shrink with
 *    their number: its arms are the weighted means of theirs, joined (root of squares) by the spread between them.
 */
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
