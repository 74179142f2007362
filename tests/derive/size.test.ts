import { describe, expect, it } from "vitest";
import { duplicateReadings } from "../../src/derive/size/duplicate-readings.js";
import { technicalError } from "../../src/derive/size/technical-error.js";
import { deriveSize } from "../../src/derive/size.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import fc from "../tools/properties.js";
import { because, find, quantity, table, visitOf } from "./visit-of.js";

const size = (block: object) => {
  const book = openNotebook();
  deriveSize(book, visitOf({ size: block }));
  return book.entries();
};

describe("size", () => {
  it("writes nothing but age for a visit without size", () => {
    const book = openNotebook();
    deriveSize(book, visitOf({}));
    expect(book.entries().map((e) => e.id)).toEqual(["age"]);
  });
  it("takes one value as recorded and names its key", () => {
    const found = size({ mass_kg: 82.4, stature_cm: 178 });
    expect(quantity(found, "body_mass")?.origin).toEqual({ kind: "key", key: "session.yaml size.mass_kg" });
    expect(quantity(found, "body_mass_index")?.value).toBeCloseTo(26.01, 2); // by hand: 82.4 / 1.78²
    expect(table(found, "size_readings")).toBeUndefined();
  });
  it("takes the mean of two and the median of three, and keeps the readings", () => {
    const found = size({ mass_kg: [82.4, 82.6], stature_cm: [178, 178.4, 181.9] });
    expect(quantity(found, "body_mass")?.value).toBeCloseTo(82.5, 9);
    expect(quantity(found, "stature")?.value).toBe(178.4);
    expect(table(found, "size_readings")?.rows.map((r) => r[2])).toEqual(["178, 178.4, 181.9", "82.4, 82.6"]);
    // by hand: one pair 0.2 apart gives √(0.04 / 2) = 0.1414
    expect(table(found, "size_readings")?.rows[1]?.[4]).toBeCloseTo(0.1414, 4);
  });
  it("says what is missing of a block that is half there", () => {
    expect(because(size({ mass_kg: 82.4 }), "body_mass_index")).toBe("Stature was not measured");
    expect(because(size({ waist_cm: 88, stature_cm: 178 }), "waist_site")).toMatch(/waist_site was not recorded/);
    expect(find(size({ waist_cm: 88 }), "waist_to_hip")).toBeUndefined();
  });
  it("gives no index in pregnancy", () => {
    const found = size({ mass_kg: 82.4, stature_cm: 178, waist_cm: 99, hip_cm: 100, pregnant: true });
    for (const id of ["body_mass_index", "waist_to_height", "waist_to_hip"])
      expect(because(found, id), id).toContain("pregnancy");
    expect(quantity(found, "body_mass")?.value).toBe(82.4);
  });
  it("gives waist against height and hip", () => {
    const found = size({ waist_cm: 88, stature_cm: 178, hip_cm: 100, waist_site: "midpoint" });
    expect(quantity(found, "waist_to_height")?.value).toBeCloseTo(0.4944, 4); // by hand: 88 / 178
    expect(quantity(found, "waist_to_hip")?.value).toBeCloseTo(0.88, 9);
  });
});

describe("laws", () => {
  const reading = fc.double({ min: 1, max: 200, noNaN: true });
  it("the value lies between the readings and ignores their order", () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 5 }), (xs) => {
        const value = duplicateReadings(xs);
        expect(value).toBeGreaterThanOrEqual(Math.min(...xs) - 1e-9);
        expect(value).toBeLessThanOrEqual(Math.max(...xs) + 1e-9);
        expect(duplicateReadings([...xs].reverse())).toBeCloseTo(value, 9);
      }),
    );
  });
  it("the technical error does not care which reading came first, and scales with the differences", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 1 }), (ds) => {
        expect(technicalError(ds.map((d) => -d))).toBe(technicalError(ds));
        expect(technicalError(ds.map((d) => 2 * d))).toBeCloseTo(2 * technicalError(ds), 9);
      }),
    );
  });
});
