import { describe, expect, it } from "vitest";
import { deriveSize } from "../../src/derive/size.js";
import { ONE_RM_EQUATIONS, oneRmSpan } from "../../src/derive/strength/one-rm-span.js";
import { deriveStrength } from "../../src/derive/strength.js";
import type { Strength } from "../../src/kernel/generated/session.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import fc from "../tools/properties.js";
import { type Around, because, find, judgement, quantity, table, visitOf } from "./visit-of.js";

const derived = (strength: Strength, around?: Around, massKg: number | null = 80) => {
  const book = openNotebook();
  const visit = visitOf({ strength, ...(massKg === null ? {} : { size: { mass_kg: massKg } }) }, around);
  deriveSize(book, visit);
  deriveStrength(book, visit);
  return book.entries();
};

describe("grip", () => {
  const grip: Strength["grip"] = {
    left_kg: [38.2, 40, 39.1],
    right_kg: [41, 42.5, 42],
    dominant: "right",
    posture: "seated-elbow-bent",
    device_type: "hydraulic",
  };
  it("takes the best of each hand and the better hand, and never adds two hands", () => {
    const found = derived({ grip });
    expect(quantity(found, "grip_strength_left")?.value).toBe(40);
    expect(quantity(found, "grip_strength_right")?.value).toBe(42.5);
    expect(quantity(found, "grip_strength")?.value).toBe(42.5);
    expect(quantity(found, "grip_difference")?.value).toBeCloseTo(5.88, 2); // by hand: 100 · 2.5 / 42.5
    expect(quantity(found, "grip_strength")?.note).toContain("posture seated-elbow-bent, device hydraulic");
    expect(found.filter((e) => e.kind === "quantity" && e.value === 40 + 42.5)).toEqual([]);
  });
  it("keeps every attempt", () => {
    expect(table(derived({ grip }), "grip_attempts")?.rows).toEqual([
      ["Left", "no", "38.2, 40, 39.1", 40],
      ["Right", "yes", "41, 42.5, 42", 42.5],
    ]);
  });
  it("says that one hand was not tested instead of taking it for 0", () => {
    const found = derived({ grip: { right_kg: 42 } });
    expect(because(found, "grip_strength_left")).toContain("left_kg was not recorded");
    expect(quantity(found, "grip_strength")?.note).toContain("only one hand");
    expect(because(derived({ grip: {} }), "grip_strength")).toBe("no hand was recorded");
  });
  it("holds the limits of older adults against older adults only", () => {
    const weak: Strength = { grip: { left_kg: 14, right_kg: 15 } };
    expect(find(derived(weak, { ageYears: 59.9 }), "older_adult_muscle_limits")).toBeUndefined();
    expect(judgement(derived(weak, { ageYears: 60 }), "older_adult_muscle_limits")?.verdict).toBe("below a limit");
    const just: Strength = { grip: { left_kg: 14, right_kg: 16 } }; // EWGSOP2 2019, Table 3: below 16 kg
    expect(judgement(derived(just, { ageYears: 70 }), "older_adult_muscle_limits")?.verdict).toBe("within limits");
  });
});

describe("lifts", () => {
  it("keeps a measured maximum and an estimate apart", () => {
    const measured = derived({ bench_press: { load_kg: 82.5, repetitions: 1 } });
    expect(quantity(measured, "bench_press_1rm")?.value).toBe(82.5);
    expect(quantity(measured, "bench_press_ratio")?.value).toBeCloseTo(1.031, 3); // by hand: 82.5 / 80
    const estimated = derived({ bench_press: { load_kg: 100, repetitions: 5 } });
    expect(find(estimated, "bench_press_1rm")).toBeUndefined();
    expect(quantity(estimated, "bench_press_1rm_estimated")?.value).toBeCloseTo(115.79, 2);
    // by hand: Brzycki 3600 / 32 and Mayhew 10000 / (52.2 + 41.9·e^−0.275)
    expect(quantity(estimated, "bench_press_1rm_estimated")?.note).toContain("112.5 to 119.0 kg");
    expect(because(estimated, "bench_press_ratio")).toContain("not a measurement");
    expect(table(estimated, "one_repetition_estimates")?.rows.length).toBe(6);
  });
  it("gives no estimate beyond ten repetitions and no ratio without body mass", () => {
    const many = derived({ leg_press: { load_kg: 100, repetitions: 11 } });
    expect(because(many, "leg_press_1rm_estimated")).toContain("2 to 10");
    const unweighed = derived({ leg_press: { load_kg: 100, repetitions: 1 } }, {}, null);
    expect(because(unweighed, "leg_press_ratio")).toBe("Body mass was not measured");
  });
  it("more load or more repetitions never lower the estimate, and it exceeds the load", () => {
    const load = fc.double({ min: 5, max: 300, noNaN: true });
    fc.assert(
      fc.property(load, fc.integer({ min: 2, max: 9 }), (w, r) => {
        for (const { compute } of ONE_RM_EQUATIONS) {
          expect(compute(w, r + 1)).toBeGreaterThan(compute(w, r));
          expect(compute(w + 1, r)).toBeGreaterThan(compute(w, r));
          expect(compute(w, r)).toBeGreaterThan(w);
        }
        const all = ONE_RM_EQUATIONS.map(({ compute }) => compute(w, r));
        expect(oneRmSpan(w, r)).toBeGreaterThan(Math.min(...all));
        expect(oneRmSpan(w, r)).toBeLessThan(Math.max(...all));
      }),
    );
  });
});

describe("jump, pull, steps", () => {
  it("takes the best height or flight time, and marks power as an estimate", () => {
    const found = derived({ jump: { height_cm: [52, 55], method: "jump-and-reach", type: "squat" } }, { ageYears: 25 });
    expect(quantity(found, "jump_height")?.value).toBe(55);
    expect(quantity(found, "jump_power_sayers")?.value).toBeCloseTo(4907.5, 6); // published worked example
    expect(quantity(found, "jump_power_sayers")?.note).toContain("not a measurement");
    const flown = derived({ jump: { flight_time_s: [0.48, 0.5] } }, { ageYears: 25 });
    expect(quantity(flown, "jump_height")?.value).toBeCloseTo(30.646, 3); // by hand: 980.665 · 0.25 / 8
    expect(because(derived({ jump: {} }), "jump_height")).toContain("neither");
  });
  it("refuses jump power outside the ages of the sample", () => {
    const found = derived({ jump: { height_cm: 40 } }, { ageYears: 55 });
    expect(quantity(found, "jump_height")?.value).toBe(40);
    expect(because(found, "jump_power_sayers")).toContain("17 to 40.999");
  });
  it("says of what has no norm that it has none", () => {
    const found = derived({
      pull_ups: { repetitions: 0 },
      mid_thigh_pull: { peak_force_n: [2100, 2240], force: "gross" },
    });
    expect(quantity(found, "pull_ups")?.value).toBe(0); // none made is a result
    expect(quantity(found, "pull_ups")?.note).toContain("No sound norm");
    expect(quantity(found, "pull_ups")?.note).not.toContain("added");
    const loaded = derived({ pull_ups: { repetitions: 5, added_load_kg: 10 } });
    expect(quantity(loaded, "pull_ups")?.note).toContain("with 10 kg added");
    expect(quantity(found, "mid_thigh_pull_force")?.value).toBe(2240);
    expect(quantity(found, "mid_thigh_pull_force_per_mass")?.value).toBe(28);
  });
  it("counts metres up, and estimates oxygen cost only without a load and inside the range", () => {
    const step = { step_height_cm: 30, cycles_per_min: 24, duration_min: 10 };
    const free = derived({ step_up: { ...step, load_kg: 0 } });
    expect(quantity(free, "step_up_vertical_rate")?.value).toBeCloseTo(432, 9); // by hand: 0.30 · 24 · 60
    expect(quantity(free, "step_up_vertical_metres")?.value).toBeCloseTo(72, 9);
    expect(quantity(free, "step_up_vo2_estimated")?.value).toBeCloseTo(25.54, 2);
    expect(because(derived({ step_up: { ...step, load_kg: 15 } }), "step_up_vo2_estimated")).toContain(
      "without a load",
    );
    expect(because(derived({ step_up: step }), "step_up_vo2_estimated")).toContain("not recorded");
  });
});
