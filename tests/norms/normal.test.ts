/** The normal distribution against printed tables and exact identities. */

import { describe, expect, it } from "vitest";
import { normalCdf, normalDensity, normalQuantile } from "../../src/kernel/normal.js";
import fc from "../tools/properties.js";

describe("normalCdf", () => {
  // Abramowitz & Stegun 1964, Table 26.1, P(x), from memory: 15 decimals.
  it.each([
    [0, 0.5],
    [1, 0.841344746068543],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
    [0.5, 0.691462461274013],
  ])("gives P(%d) as printed", (z, p) => {
    expect(Math.abs(normalCdf(z) - p)).toBeLessThan(1e-13);
    expect(Math.abs(normalCdf(-z) - (1 - p))).toBeLessThan(1e-13);
  });
  it("keeps its digits far out", () => {
    // Abramowitz & Stegun 1964, Table 26.2: −log Q(10) = 23.11805, so Q = 7.6199e−24.
    expect(Math.abs(-Math.log10(normalCdf(-10)) - 23.11805)).toBeLessThan(5e-6);
  });
  it("gives 0.7498 at 0.674, where a four-digit table's interpolation goes wrong", () => {
    expect(normalCdf(0.674)).toBeCloseTo(0.7498, 4);
  });
  it("refuses NaN", () => expect(() => normalCdf(Number.NaN)).toThrow(RangeError));
});

describe("normalQuantile", () => {
  // The classical critical values, to the digits every printed table gives.
  it.each([
    [0.95, 1.644853626951],
    [0.975, 1.95996398454],
    [0.995, 2.575829303549],
    [0.9, 1.281551565545],
    [0.75, 0.674489750196],
  ])("gives the %d quantile as printed", (p, z) => {
    expect(Math.abs(normalQuantile(p) - z)).toBeLessThan(1e-11);
    expect(Math.abs(normalQuantile(1 - p) + z)).toBeLessThan(1e-11);
  });
  it("undoes the cdf", () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 5, noNaN: true }), (z) => {
        const back = normalQuantile(normalCdf(z));
        // Above 0 the share itself holds only so many digits.
        expect(Math.abs(back - z)).toBeLessThan(1e-12 + 2e-16 / normalDensity(Math.max(0, z)));
      }),
    );
  });
  it.each([0, 1, -0.1, Number.NaN])("refuses a share of %d", (p) =>
    expect(() => normalQuantile(p)).toThrow(RangeError),
  );
});
