/** The two quick medians give what sorting gives. */

import { expect, it } from "vitest";
import { enter, leave, middle, movingWindow } from "../../src/kernel/moving-median.js";
import { median, medianInPlace } from "../../src/kernel/statistics.js";
import fc from "../tools/properties.js";

// Few different values, so that many are equal, and any double of a size that is measured.
const value = fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ min: -1e6, max: 1e6, noNaN: true }));

it("finds the median without sorting", () => {
  fc.assert(
    fc.property(fc.array(value, { minLength: 1, maxLength: 200 }), (xs) => {
      expect(medianInPlace(new Float64Array(xs)) + 0).toBe(median(xs) + 0);
    }),
  );
  expect(() => medianInPlace(new Float64Array(0))).toThrow(RangeError);
});

it("follows the median of a window that moves along a series", () => {
  fc.assert(
    fc.property(
      fc.array(value, { minLength: 1, maxLength: 150 }),
      fc.constantFrom(1, 2, 3, 11, 60, 120),
      (xs, width) => {
        const window = movingWindow(width);
        xs.forEach((x, i) => {
          if (i >= width) leave(window, xs[i - width] as number);
          enter(window, x);
          expect(middle(window) + 0).toBe(median(xs.slice(Math.max(0, i - width + 1), i + 1)) + 0);
        });
      },
    ),
  );
});
