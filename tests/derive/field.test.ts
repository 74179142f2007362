import { describe, expect, it } from "vitest";
import { mileWalkKline } from "../../src/derive/field/mile-walk-kline.js";
import { deriveField } from "../../src/derive/field.js";
import { deriveSize } from "../../src/derive/size.js";
import type { FieldTests } from "../../src/kernel/generated/session.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import fc from "../tools/properties.js";
import { type Around, because, find, quantity, visitOf } from "./visit-of.js";

const derived = (field_tests: FieldTests, around?: Around) => {
  const book = openNotebook();
  const visit = visitOf({ field_tests, size: { mass_kg: 80, stature_cm: 175 } }, around);
  deriveSize(book, visit);
  deriveField(book, visit);
  return book.entries();
};

describe("field tests", () => {
  it("mark every estimate of peak uptake as one, with its standard error where published", () => {
    const found = derived(
      {
        mile_walk: { time_min: 14, heart_rate_bpm: 125 },
        two_km_walk: { time_min: 17, heart_rate_bpm: 140 },
        twelve_minute_run: { distance_m: 2600 },
        mile_and_half_run: { time_min: 12 },
        mile_jog: { time_min: 10, heart_rate_bpm: 150 },
        shuttle_run: { last_stage: 9, last_half_stage: 9 },
        treadmill_time: { protocol: "bruce", time_min: 12 },
      },
      { ageYears: 29.5, sex: "male" },
    );
    const estimates = found.filter((e) => e.id.startsWith("vo2max_estimate"));
    const numbers = estimates.filter((e) => e.kind === "quantity");
    expect(numbers.length).toBeGreaterThanOrEqual(7);
    for (const { id, note, error } of numbers) {
      expect(note, id).toMatch(/^An estimate, not a measurement\./);
      if (id === "vo2max_estimate_twelve_minute_run") expect(note).toContain("standard error was not published");
      else expect(error?.typical, id).toBeGreaterThan(2);
    }
    expect(quantity(found, "vo2max_estimate_shuttle_run")?.error?.typical).toBe(4.4); // Léger & Gadoury 1989, abstract
    expect(because(found, "vo2max_estimate_mile_walk")).toContain("30 to 69.999 years");
    expect(find(found, "vo2_peak")).toBeUndefined();
  });
  it("refuse an age outside the sample instead of extrapolating", () => {
    const found = derived({ mile_jog: { time_min: 10, heart_rate_bpm: 150 } }, { ageYears: 45 });
    expect(because(found, "vo2max_estimate_mile_jog")).toContain("18 to 29.999");
  });
  it("say what is missing", () => {
    expect(because(derived({ mile_walk: { time_min: 14 } }), "vo2max_estimate_mile_walk")).toContain("heart rate");
    expect(because(derived({ shuttle_run: {} }), "vo2max_estimate_shuttle_run")).toContain("neither");
  });
  it("do not estimate from treadmill time with a hand on the rail or on the modified protocol", () => {
    const time = (more: object) => derived({ treadmill_time: { protocol: "bruce", time_min: 12, ...more } });
    expect(because(time({ handrail: true }), "vo2max_estimate_bruce_time")).toContain("handrail");
    expect(because(time({ protocol: "modified-bruce" }), "vo2max_estimate_bruce_time")).toContain("modified");
    // Bruce 1973 and Pollock 1982 for women at 12 min: 7 mL/kg/min apart
    expect(quantity(time({}), "vo2max_estimate_bruce_time")?.value).toBeCloseTo(41.38, 2);
    expect(quantity(time({}), "vo2max_estimate_bruce_time_by_sex")?.value).toBeCloseTo(48.66, 2);
  });
  it("use the six-minute reference only inside its ages", () => {
    const walk: FieldTests = { six_minute_walk: { distance_m: 600 } };
    expect(quantity(derived(walk, { ageYears: 60, sex: "male" }), "six_minute_walk_reference")?.value).toBeCloseTo(
      573.75,
      6,
    );
    expect(quantity(derived(walk, { ageYears: 40 }), "six_minute_walk_percent")?.value).toBeDefined();
    const young = derived(walk, { ageYears: 19 });
    expect(because(young, "six_minute_walk_reference")).toContain("20 to 49.999");
    expect(quantity(young, "six_minute_walk_distance")?.value).toBe(600);
  });
  it("estimate a loaded walk only uphill or level and with the ground known", () => {
    const walk = { load_kg: 15, speed_km_h: 4.5, grade_percent: 10, terrain: "treadmill" } as const;
    expect(quantity(derived({ loaded_walk: walk }), "loaded_walk_metabolic_rate")?.value).toBeGreaterThan(724);
    const { terrain: _, ...unknown } = walk;
    expect(because(derived({ loaded_walk: unknown }), "loaded_walk_metabolic_rate")).toContain("terrain");
  });
  it("a slower walk or a faster heart never raises the estimate", () => {
    fc.assert(
      fc.property(fc.double({ min: 9, max: 25, noNaN: true }), fc.integer({ min: 70, max: 200 }), (time, pulse) => {
        const here = mileWalkKline("female", 45, 65, time, pulse);
        expect(mileWalkKline("female", 45, 65, time + 1, pulse)).toBeLessThan(here);
        expect(mileWalkKline("female", 45, 65, time, pulse + 5)).toBeLessThan(here);
      }),
    );
  });
});
