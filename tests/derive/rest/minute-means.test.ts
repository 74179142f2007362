/** Minute means of a resting record, by sums on paper. */
import { describe, expect, it } from "vitest";
import { minuteMeans } from "../../../src/derive/rest/minute-means.js";

const means = (time: number[], xs: number[], toS = 60) => minuteMeans(time, [xs], 0, toS).channels[0];

describe("minute means", () => {
  it("weigh a breath by its length", () => {
    // 20 s of 1, 40 s in one breath of 4 that stands for 35 s at most: (20·1 + 35·4)/55
    expect(means([10, 20, 60], [1, 1, 4])?.[0]).toBeCloseTo(160 / 55, 12);
  });

  it("are given from half a minute of samples on", () => {
    const every = (stepS: number, missing: number) =>
      Array.from({ length: 60 / stepS }, (_, i) => (i < missing ? Number.NaN : 2));
    const time = Array.from({ length: 60 }, (_, i) => i + 1);
    expect(means(time, every(1, 30))).toEqual([2]);
    expect(means(time, every(1, 31))).toEqual([null]);
  });

  it("put a breath into the minute in which its middle lies", () => {
    // The breath from 55 to 63 s has its middle at 59 s.
    const time = [
      ...Array.from({ length: 11 }, (_, i) => 5 * (i + 1)),
      63,
      ...Array.from({ length: 10 }, (_, i) => 68 + 5 * i),
      120,
    ];
    const xs = time.map((t) => (t === 63 ? 9 : 1));
    const [first, second] = means(time, xs, 120) ?? [];
    expect(first).toBeCloseTo((55 + 8 * 9) / 63, 12);
    expect(second).toBe(1);
  });

  it("leave an unfinished minute out, but not one that ends within 2 s of full", () => {
    const time = Array.from({ length: 120 }, (_, i) => i + 1);
    const xs = time.map(() => 1);
    expect(means(time, xs, 118)).toHaveLength(2);
    expect(means(time, xs, 117)).toHaveLength(1);
  });
});
