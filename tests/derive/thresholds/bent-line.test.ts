/** The bend fit: laws, its refusals, and agreement with a plain search by least squares. */

import { expect, it } from "vitest";
import { type BentFit, fitBend } from "../../../src/derive/thresholds/bent-line.js";
import { chance } from "../../generator/random.js";
import fc from "../../tools/properties.js";

const hinge = (x: number, v: number) => Math.max(0, x - v);
function problem(x: number[], y: number[]) {
  const xs = Float64Array.from(x);
  const one = xs.map(() => 1);
  const bent = (at: Float64Array, v: number, into: Float64Array) => into.set(at.map((value) => hinge(value, v)));
  return { x: xs, y: Float64Array.from(y), weight: one, terms: [one, xs], bent, sign: 1 as const, side: 4 };
}
const axis = Array.from({ length: 40 }, (_, i) => 1 + i / 20);
const noisy = (seed: number, sd: number, v = 2.1) => {
  const c = chance(seed);
  return axis.map((x) => 0.9 * x + 0.4 * hinge(x, v) + sd * c.normal());
};
const fitOf = (y: number[], x = axis): BentFit => {
  const out = fitBend(problem(x, y));
  if ("because" in out) throw new Error(out.because);
  return out.fit;
};

it("finds a bend without noise where it is, with a narrow interval", () => {
  const fit = fitOf(noisy(1, 0));
  expect(fit.at).toBeCloseTo(2.1, 2);
  expect(fit.high - fit.low).toBeLessThan(0.06);
  expect(fit.change).toBeCloseTo(0.4, 2);
});

it("finds the least squares that a plain search finds", () => {
  const y = noisy(7, 0.03);
  const rss = (v: number) => {
    // normal equations of 1, x and the hinge, solved by Cramer's rule: an independent way
    const rows = axis.map((x) => [1, x, hinge(x, v)] as const);
    const m = (i: number, j: number) => rows.reduce((s, r) => s + (r[i] as number) * (r[j] as number), 0);
    const b = (i: number) => rows.reduce((s, r, k) => s + (r[i] as number) * (y[k] as number), 0);
    const det = (a: number[][]) => {
      const [p, q, r] = a as [number[], number[], number[]];
      const at = (row: number[], k: number) => row[k] as number;
      return (
        at(p, 0) * (at(q, 1) * at(r, 2) - at(q, 2) * at(r, 1)) -
        at(p, 1) * (at(q, 0) * at(r, 2) - at(q, 2) * at(r, 0)) +
        at(p, 2) * (at(q, 0) * at(r, 1) - at(q, 1) * at(r, 0))
      );
    };
    const full = [0, 1, 2].map((i) => [0, 1, 2].map((j) => m(i, j)));
    const coefficient = [0, 1, 2].map(
      (k) => det(full.map((row, i) => row.map((value, j) => (j === k ? b(i) : value)))) / det(full),
    );
    return rows.reduce(
      (s, r, k) => s + ((y[k] as number) - r.reduce((t, value, i) => t + value * (coefficient[i] as number), 0)) ** 2,
      0,
    );
  };
  let best = 1.2;
  for (let v = 1.2; v < 2.8; v += 0.001) if (rss(v) < rss(best)) best = v;
  expect(fitOf(y).at).toBeCloseTo(best, 1);
  expect(rss(fitOf(y).at)).toBeLessThan(rss(best) * 1.002);
});

it("moves with the axis and does not care for the scale of y", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.double({ min: 0.5, max: 20, noNaN: true }), (seed, scale) => {
      const y = noisy(seed, 0.02);
      const fit = fitOf(y);
      const scaled = fitOf(y.map((v) => v * scale));
      expect(scaled.at).toBeCloseTo(fit.at, 6);
      expect(scaled.probability).toBeCloseTo(fit.probability, 6);
      const moved = fitOf(
        y,
        axis.map((x) => x + 1),
      );
      expect(moved.at).toBeCloseTo(fit.at + 1, 4);
    }),
    { numRuns: 40 },
  );
});

it("holds the truth in about 95 of 100 intervals, and rarely sees a bend in a straight line", () => {
  let held = 0;
  let seen = 0;
  for (let seed = 1; seed <= 400; seed++) {
    const fit = fitOf(noisy(seed, 0.02));
    if (fit.low <= 2.1 && 2.1 <= fit.high) held++;
    const c = chance(seed + 5000);
    const straight = fitOf(axis.map((x) => 0.9 * x + 0.02 * c.normal()));
    if (straight.change > 0 && !straight.edge && straight.probability < 0.01) seen++;
  }
  expect(held / 400).toBeGreaterThanOrEqual(0.92);
  expect(held / 400).toBeLessThanOrEqual(0.99);
  expect(seen / 400).toBeLessThanOrEqual(0.03);
});

it("refuses too few points and says an edge is an edge", () => {
  expect(fitBend(problem(axis.slice(0, 7), noisy(1, 0).slice(0, 7)))).toHaveProperty("because");
  expect(fitOf(noisy(3, 0.005, 2.93)).edge || fitOf(noisy(3, 0.005, 2.93)).probability > 0.01).toBe(true);
  const downwards = fitOf(axis.map((x) => 0.9 * x - 0.4 * hinge(x, 2)));
  expect(downwards.change).toBeLessThan(0.02);
});
