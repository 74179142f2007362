/**
 * Regression to the mean: the change to expect after an extreme baseline when nothing has changed.
 *
 *     E(true | x) = μ + R (x − μ),   expected drift = (1 − R)(μ − x)
 *
 * Part of an extreme result is luck, and luck does not repeat. μ is the mean of the people the client is drawn from, R the
 * reliability among them. The best cure is two baseline tests, averaged.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Baseline and group mean in one unit, reliability 0 to 1; drift in that unit out. */
export function expectedDrift(baseline: number, groupMean: number, reliability: number): number {
  requireRange(info.id, "reliability", reliability, 0, 1, "");
  if (!Number.isFinite(baseline - groupMean)) throw new OutOfRange(info.id, "baseline", baseline, "finite numbers");
  return (1 - reliability) * (groupMean - baseline);
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "regression-to-the-mean",
  revision: 1,
  title: "Drift expected after an extreme baseline",
  equation: "(1 − R)(μ − x)",
  inputs: {
    baseline: { unit: "as the measure", range: "any" },
    groupMean: { unit: "as the measure", range: "any" },
    reliability: { unit: "1", range: "0 to 1" },
  },
  output: { unit: "as the measure", decimals: 2 },
  source: {
    authors: "Kelley TL",
    year: 1947,
    title: "Fundamentals of statistics",
    where: "estimate of the true score",
    verified: "memory",
  },
  compute: expectedDrift,
  checks: [
    { given: [34, 42, 0.9], expect: 0.8, tolerance: 1e-9, from: "by hand: 0.1 · 8; the expected true value is 34.8" },
    { given: [50, 42, 1], expect: 0, tolerance: 1e-12, from: "by hand: a perfectly reliable test does not drift" },
    { given: [50, 42, 1.1], expect: "refused", from: "reliability cannot exceed 1" },
  ],
};
