import { describe, expect, it } from "vitest";
import { compareAtDecimals, roundTo, toDecimals } from "../../src/kernel/rounding.js";
import fc from "../tools/properties.js";

describe("rounding", () => {
  it.each([
    [2.675, 2, "2.68"],
    [1.005, 2, "1.01"],
    [-2.5, 0, "-3"],
    [-0.04, 1, "0.0"],
    [1e-9, 2, "0.00"],
    [1e15, 0, "1000000000000000"],
    [0, 2, "0.00"],
    [73.95, 1, "74.0"],
  ])("prints %d to %d decimals as %s", (value, decimals, text) => expect(toDecimals(value, decimals)).toBe(text));

  it("rounds as the decimal text rounds, at ties and beside them", () => {
    const text = (x: number, d: number) => {
      const [whole = "", part = ""] = x.toString().split(".");
      const digits = `${whole}${part.padEnd(d + 1, "0").slice(0, d)}`;
      const up = Number(part.padEnd(d + 1, "0")[d]) >= 5 ? 1n : 0n;
      return Number(`${BigInt(digits) + up}e-${d}`);
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 9_999_999 }),
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: 0, max: 4 }),
        (n, shift, d) => {
          const x = Number(`${n}e-${shift}`);
          if (x !== 0 && x < 1e-6) return;
          expect(roundTo(x, d)).toBe(text(x, d));
        },
      ),
      { numRuns: 5000 },
    );
  });

  it("rounds to tens with negative decimals", () => expect(roundTo(1988, -1)).toBe(1990));
  it("refuses what is not a number", () => expect(() => toDecimals(Number.NaN, 1)).toThrow(RangeError));
  it("compares printed decimals: 1.6 − 1.2 is not above 0.4, though floating point says so", () => {
    expect(1.6 - 1.2 > 0.4).toBe(true);
    expect(compareAtDecimals(1.6 - 1.2, 0.4, 1)).toBe(0);
  });
  it("is idempotent and never moves a value by more than half a unit", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 0, max: 4 }), (x, d) => {
        const once = roundTo(x, d);
        expect(roundTo(once, d)).toBe(once);
        expect(Math.abs(once - x)).toBeLessThanOrEqual(0.5000001 * 10 ** -d);
      }),
    );
  });
});
