/** Distribution functions against printed tables and against identities that hold for every argument. */

import { describe, expect, it } from "vitest";
import { incompleteBeta, incompleteGamma, logGamma, upperIncompleteGamma } from "../../src/kernel/special-functions.js";
import {
  chiSquareCdf,
  chiSquareQuantile,
  fisherCdf,
  fisherQuantile,
  studentCdf,
  studentQuantile,
} from "../../src/kernel/student.js";
import fc from "../tools/properties.js";

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2: upper critical values of Student's t (three decimals).
const T_975 = { 1: 12.706, 2: 4.303, 5: 2.571, 9: 2.262, 10: 2.228, 30: 2.042, 100: 1.984, [Infinity]: 1.96 };
const T_995 = { 1: 63.657, 5: 4.032, 9: 3.25, 30: 2.75, [Infinity]: 2.576 };
// NIST/SEMATECH e-Handbook, 1.3.6.7.4: critical values of chi-square.
const CHI = [
  [0.025, 9, 2.7],
  [0.975, 9, 19.023],
  [0.95, 1, 3.841],
  [0.95, 10, 18.307],
  [0.05, 10, 3.94],
  [0.99, 30, 50.892],
] as const;
// NIST/SEMATECH e-Handbook, 1.3.6.7.3: upper critical values of F, 5 %.
const F_95 = [
  [1, 1, 161.448],
  [1, 10, 4.965],
  [5, 10, 3.326],
  [10, 5, 4.735],
  [9, 9, 3.179],
] as const;

describe("Student's t", () => {
  for (const [p, table] of [
    [0.975, T_975],
    [0.995, T_995],
  ] as const)
    for (const [df, value] of Object.entries(table))
      it(`has the printed ${p} quantile ${value} at ${df} degrees of freedom`, () => {
        expect(Math.abs(studentQuantile(p, Number(df)) - value)).toBeLessThanOrEqual(0.0005);
      });

  it("has the closed forms of one and two degrees of freedom", () => {
    // Cauchy: 1/2 + atan(t)/π. Two degrees: 1/2 + t / (2√(2 + t²)).
    for (const t of [-30, -2.5, -0.1, 0, 0.7, 3, 80]) {
      expect(Math.abs(studentCdf(t, 1) - (0.5 + Math.atan(t) / Math.PI))).toBeLessThan(1e-13);
      expect(Math.abs(studentCdf(t, 2) - (0.5 + t / (2 * Math.sqrt(2 + t * t))))).toBeLessThan(1e-13);
    }
  });

  it("is the normal distribution when the spread is known", () => {
    // Abramowitz & Stegun (1964), Table 26.1, fifteen decimals.
    expect(Math.abs(studentCdf(1, Infinity) - 0.841344746068543)).toBeLessThan(1e-14);
    expect(Math.abs(studentCdf(2, Infinity) - 0.977249868051821)).toBeLessThan(1e-14);
    expect(Math.abs(studentCdf(-3, Infinity) - 0.00134989803163)).toBeLessThan(1e-14);
    expect(Math.abs(studentQuantile(0.975, Infinity) - 1.959963984540054)).toBeLessThan(1e-12);
  });

  it("goes there and back", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1 - 1e-4, noNaN: true }), fc.integer({ min: 1, max: 500 }), (p, df) => {
        expect(Math.abs(studentCdf(studentQuantile(p, df), df) - p)).toBeLessThan(1e-11);
      }),
    );
  });

  it("refuses what has no answer", () => {
    expect(() => studentCdf(1, 0)).toThrow(RangeError);
    expect(() => studentCdf(Number.NaN, 3)).toThrow(RangeError);
    expect(() => studentQuantile(1, 5)).toThrow(RangeError);
    expect(() => chiSquareQuantile(0, 5)).toThrow(RangeError);
    expect(() => fisherQuantile(0.5, -1, 5)).toThrow(RangeError);
  });
});

describe("chi-square and F", () => {
  for (const [p, df, value] of CHI)
    it(`chi-square has the printed ${p} quantile ${value} at ${df}`, () => {
      expect(Math.abs(chiSquareQuantile(p, df) - value)).toBeLessThanOrEqual(0.0006);
    });
  for (const [df1, df2, value] of F_95)
    it(`F has the printed 0.95 quantile ${value} at ${df1} and ${df2}`, () => {
      expect(Math.abs(fisherQuantile(0.95, df1, df2) - value)).toBeLessThanOrEqual(0.0006);
    });

  it("chi-square with two degrees of freedom is an exponential", () => {
    for (const x of [0.01, 1, 5, 40]) expect(Math.abs(chiSquareCdf(x, 2) - (1 - Math.exp(-x / 2)))).toBeLessThan(1e-14);
  });

  it("F with one degree of freedom is the square of t, and turns over", () => {
    for (const df of [3, 9, 40]) {
      expect(fisherQuantile(0.95, 1, df)).toBeCloseTo(studentQuantile(0.975, df) ** 2, 9);
      expect(fisherCdf(2, 4, df)).toBeCloseTo(1 - fisherCdf(0.5, df, 4), 12);
    }
  });
});

describe("special functions", () => {
  it("log-gamma gives factorials and Γ(1/2) = √π", () => {
    expect(logGamma(11)).toBeCloseTo(Math.log(3628800), 12);
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
    expect(logGamma(1e5)).toBeCloseTo(1e5 * Math.log(1e5) - 1e5 - 0.5 * Math.log(1e5 / (2 * Math.PI)) + 1 / 12e5, 6);
  });
  it("upper and lower shares make one", () => {
    for (const [a, x] of [
      [0.5, 0.2],
      [3, 2.9],
      [40, 60],
      [200, 180],
    ] as const)
      expect(incompleteGamma(a, x) + upperIncompleteGamma(a, x)).toBeCloseTo(1, 14);
    expect(incompleteBeta(0.3, 2, 5) + incompleteBeta(0.7, 5, 2)).toBeCloseTo(1, 14);
  });
  it("refuses arguments outside the domain", () => {
    expect(() => logGamma(0)).toThrow(RangeError);
    expect(() => incompleteGamma(-1, 2)).toThrow(RangeError);
    expect(() => upperIncompleteGamma(1, -2)).toThrow(RangeError);
    expect(() => incompleteBeta(1.2, 2, 2)).toThrow(RangeError);
  });
});
