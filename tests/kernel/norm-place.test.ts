import { describe, expect, it } from "vitest";
import type { Entry, Quantity } from "../../src/kernel/measure.js";
import { lowerOf, normPlace } from "../../src/kernel/norm-place.js";

describe("a place among a hundred people", () => {
  it("is a whole number that tells nobody that all are lower, or none", () => {
    expect([0.2, 0.6, 37.4, 37.5, 99.4, 99.7].map(lowerOf)).toEqual([1, 1, 37, 38, 99, 99]);
  });

  const quantity = (value: number): Quantity => ({
    kind: "quantity",
    id: "grip_strength",
    value,
    unit: "kg",
    decimals: 1,
    origin: { kind: "key", key: "session.yaml strength.grip" },
    norms: [{ table: "invented" }],
  });
  const curves: Entry = {
    kind: "table",
    id: "reference_percentiles",
    columns: ["measure", "table", "p10", "p50", "p90"].map((key) => ({ key, title: key })),
    rows: [["grip_strength", "invented", 20, 30, 40]],
    origin: { kind: "key", key: "" },
  };
  it("beyond the outermost printed percentile is known by its side only, and on it not at all", () => {
    expect(normPlace([curves], quantity(40.1))).toMatchObject({ kind: "above", lower: 90 });
    expect(normPlace([curves], quantity(19.9))).toMatchObject({ kind: "below", lower: 10 });
    expect(normPlace([curves], quantity(40))).toBeUndefined();
  });
});
