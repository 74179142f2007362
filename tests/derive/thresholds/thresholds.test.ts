/** Thresholds of generated tests with known truth, through the whole derivation; and what must be withheld. */

import { describe, expect, it } from "vitest";
import { derive } from "../../../src/derive/derive.js";
import type { Entry } from "../../../src/kernel/measure.js";
import { generateTest } from "../../generator/breaths.js";
import { chance } from "../../generator/random.js";
import { NO_FAULTS, NOISE, type Recipe, recipe, USUAL_FAULTS } from "../../generator/recipe.js";
import { type VisitParts, visitOfTest } from "../../generator/visit.js";
import fc from "../../tools/properties.js";
import { because, quantity, table } from "../visit-of.js";

const run = (r: Recipe, parts: VisitParts = {}) => {
  const test = generateTest(r);
  return { truth: test.truth, entries: derive(visitOfTest(test, parts)) };
};
const holds = (entries: readonly Entry[], id: string, truth: number) => {
  const found = quantity(entries, id);
  expect(found, because(entries, id)).toBeDefined();
  expect(found?.error?.low).toBeLessThanOrEqual(truth);
  expect(found?.error?.high).toBeGreaterThanOrEqual(truth);
};
const clean = (seed: number, changes: Partial<Recipe> = {}) => recipe(seed, { faults: NO_FAULTS, ...changes });

describe("thresholds of a ramp on the cycle", () => {
  const { truth, entries } = run(clean(1, { mode: "cycle" }));
  it("hold the truth in VO2, heart rate and power", () => {
    holds(entries, "vt1_vo2", truth.vt1?.vo2 as number);
    holds(entries, "vt2_vo2", truth.vt2?.vo2 as number);
    holds(entries, "vt1_heart_rate", truth.vt1?.heartRate as number);
    holds(entries, "vt1_power", truth.vt1?.load.power as number);
    holds(entries, "vt2_power", truth.vt2?.load.power as number);
    expect(quantity(entries, "vt1_speed")).toBeUndefined();
  });
  it("name every method, with a value or a reason", () => {
    expect(table(entries, "vt1_methods")?.rows).toHaveLength(4);
    expect(table(entries, "vt2_methods")?.rows).toHaveLength(3);
    for (const row of [...(table(entries, "vt1_methods")?.rows ?? []), ...(table(entries, "vt2_methods")?.rows ?? [])])
      expect(row[4] === "yes" ? typeof row[1] === "number" : String(row[5]).length > 10).toBe(true);
  });
  it("say the same per kilogram and as a share of the peak", () => {
    const vo2 = quantity(entries, "vt1_vo2")?.value as number;
    const mass = quantity(entries, "body_mass")?.value as number;
    expect(quantity(entries, "vt1_vo2_per_mass")?.value).toBeCloseTo((1000 * vo2) / mass, 6);
    const peak = quantity(entries, "vo2_peak")?.value as number;
    expect(quantity(entries, "vt1_percent_of_peak")?.value).toBeCloseTo((100 * vo2) / peak, 6);
  });
});

it("give speed on the treadmill, read earlier where that is the choice", () => {
  const r = clean(3, { mode: "treadmill" });
  const { truth, entries } = run(r);
  holds(entries, "vt2_speed", truth.vt2?.load.speed as number);
  const earlier = run(r, { choices: { threshold_load_lag_s: 60 } }).entries;
  const perMinute = r.protocol.kind === "ramp" ? r.protocol.rise : Number.NaN;
  const now = quantity(entries, "vt2_speed")?.value as number;
  expect(now - (quantity(earlier, "vt2_speed")?.value as number)).toBeCloseTo(perMinute, 1);
});

describe("what is withheld", () => {
  it("is all that needs CO2 when that channel is dead, and nothing else", () => {
    const dead = { ...USUAL_FAULTS, dead: [{ channel: "vco2" as const, fromS: 0 }] };
    const { entries } = run(recipe(5, { faults: dead }));
    expect(because(entries, "vt1_vo2")).toMatch(/CO2/);
    expect(because(entries, "vt2_vo2")).toMatch(/CO2/);
    expect(quantity(entries, "vo2_peak")).toBeDefined();
    expect(quantity(entries, "heart_rate_peak")).toBeDefined();
  });
  it("is both thresholds when CO2 dies early in the test", () => {
    const { truth } = run(recipe(5));
    const fromS = (truth.phases.find((p) => p.name === "incremental")?.fromS as number) + 200;
    const { entries } = run(recipe(5, { faults: { ...USUAL_FAULTS, dead: [{ channel: "vco2", fromS }] } }));
    expect(because(entries, "vt1_vo2")).toMatch(/missing in \d+ of \d+/);
  });
  it("is what rests on ventilation when the flow sensor is dead", () => {
    const { truth, entries } = run(clean(1, { mode: "cycle" }), {
      without: ["ventilation_l_min", "peto2_mmhg", "petco2_mmhg"],
    });
    holds(entries, "vt1_vo2", truth.vt1?.vo2 as number);
    expect(because(entries, "vt2_vo2")).toMatch(/ventilation was not recorded/);
  });
  it("is only the heart rate when the strap fails", () => {
    const { entries } = run(clean(1, { mode: "cycle" }), { without: ["heart_rate_bpm"] });
    expect(quantity(entries, "vt1_vo2")).toBeDefined();
    expect(because(entries, "vt1_heart_rate")).toMatch(/heart rate was not recorded/);
  });
  it("is the heart rate where the strap failed for minutes around the threshold", () => {
    const r = clean(1, { mode: "cycle" });
    const test = generateTest(r);
    const at = test.truth.vt1?.timeS as number;
    const rows = test.rows.map((row) => (Math.abs(row.time - at) < 100 ? { ...row, hr: 0 } : row));
    const entries = derive(visitOfTest({ ...test, rows }));
    expect(because(entries, "vt1_heart_rate")).toMatch(/not recorded there/);
    expect(quantity(entries, "vt2_heart_rate")).toBeDefined();
  });
  it("is VT2 of a test stopped before it", () => {
    let invented = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const peak = recipe(seed).vo2Peak;
      const { entries } = run(recipe(seed, { stopAt: 0.75, vt1: 0.55 * peak, vt2: 0.8 * peak }));
      if (quantity(entries, "vt2_vo2") !== undefined) invented++;
    }
    expect(invented).toBeLessThanOrEqual(2); // 5 % of 40
  });
  it("is VT1 of a test stopped before it", () => {
    let invented = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const peak = recipe(seed).vo2Peak;
      const { entries } = run(recipe(seed, { stopAt: 0.55, vt1: 0.6 * peak }));
      if (quantity(entries, "vt1_vo2") !== undefined) invented++;
    }
    expect(invented).toBeLessThanOrEqual(2);
  });
});

it("works without end-tidal gases, in hypoxia, with dropouts, from 10-s means", () => {
  const kinds: readonly [string, Partial<Recipe>, VisitParts][] = [
    ["no end-tidal", {}, { without: ["peto2_mmhg", "petco2_mmhg"] }],
    ["hypoxia", { fio2: 0.15, veSlope: 33 }, {}],
    ["dropouts", { faults: { ...USUAL_FAULTS, dropouts: 4 } }, {}],
    ["10-s means", { sampling: { kind: "mean", everyS: 10 } }, {}],
    ["phases from the load", {}, { findPhases: true }],
  ];
  for (const [name, changes, parts] of kinds) {
    const tally = { vt1: 0, vt2: 0, given1: 0, given2: 0 };
    for (let seed = 101; seed <= 130; seed++) {
      const { truth, entries } = run(recipe(seed, changes), parts);
      const [a, b] = [quantity(entries, "vt1_vo2"), quantity(entries, "vt2_vo2")];
      const inside = (q: typeof a, t: number) => (q?.error?.low as number) <= t && t <= (q?.error?.high as number);
      if (a) tally.given1++;
      if (b) tally.given2++;
      if (a && inside(a, truth.vt1?.vo2 as number)) tally.vt1++;
      if (b && inside(b, truth.vt2?.vo2 as number)) tally.vt2++;
      if (a && b) expect(b.value).toBeGreaterThanOrEqual(a.value);
    }
    expect(tally.given1, `${name}: VT1 given`).toBeGreaterThanOrEqual(22);
    expect(tally.given2, `${name}: VT2 given`).toBeGreaterThanOrEqual(18);
    expect(tally.vt1 / tally.given1, `${name}: VT1 held`).toBeGreaterThanOrEqual(0.86);
    expect(tally.vt2 / tally.given2, `${name}: VT2 held`).toBeGreaterThanOrEqual(0.85);
  }
});

describe("laws", () => {
  const base = clean(7, {
    mode: "cycle",
    protocol: { kind: "ramp", start: 60, rise: 22, stageS: 0, gradePct: 0, raises: "speed" },
  });
  const vt1 = (entries: readonly Entry[]) => quantity(entries, "vt1_vo2")?.value as number;
  it("a shift of the clock changes nothing", () => {
    const test = generateTest(base);
    const later = {
      ...test,
      rows: test.rows.map((row) => ({ ...row, time: row.time + 1000 })),
      truth: {
        ...test.truth,
        phases: test.truth.phases.map((p) => ({ ...p, fromS: p.fromS + 1000, toS: p.toS + 1000 })),
      },
    };
    expect(vt1(derive(visitOfTest(later)))).toBeCloseTo(vt1(derive(visitOfTest(test))), 6);
  });
  it("twice the mass halves the value per kilogram only", () => {
    const once = derive(visitOfTest(generateTest(base)));
    const twice = derive(visitOfTest({ ...generateTest(base), recipe: { ...base, massKg: 2 * base.massKg } }));
    expect(vt1(twice)).toBe(vt1(once));
    expect(quantity(twice, "vt1_vo2_per_mass")?.value).toBeCloseTo(
      (quantity(once, "vt1_vo2_per_mass")?.value as number) / 2,
      9,
    );
  });
  it("dropping every twentieth breath moves VT1 by less than its interval", () => {
    const test = generateTest(base);
    const fewer = derive(visitOfTest({ ...test, rows: test.rows.filter((_, i) => i % 20 !== 7) }));
    const whole = quantity(derive(visitOfTest(test)), "vt1_vo2");
    expect(vt1(fewer)).toBeGreaterThan(whole?.error?.low as number);
    expect(vt1(fewer)).toBeLessThan(whole?.error?.high as number);
  });
  it("twelve per cent noise widens the interval", () => {
    const width = (r: Recipe) => {
      const q = quantity(run(r).entries, "vt1_vo2");
      return (q?.error?.high as number) - (q?.error?.low as number);
    };
    expect(width({ ...base, noise: { ...NOISE, vo2Sd: 0.12 } })).toBeGreaterThan(
      width({ ...base, noise: { ...NOISE, vo2Sd: 0.02 } }),
    );
  });
});

it("answers any rubbish with a value inside the test or a reason, never NaN", () => {
  const test = generateTest(clean(2));
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 10_000 }), fc.constantFrom(0.02, 0.3, 0.9), (seed, share) => {
      const c = chance(seed);
      const rubbish = () => c.pick([0, Number.NaN, 1e6, -5, 3.1, c.uniform() * 5]);
      const rows = test.rows.map((row) =>
        c.happens(share)
          ? { ...row, vo2: rubbish(), vco2: rubbish(), ve: rubbish() * 30, petco2: rubbish() * 10, hr: rubbish() * 40 }
          : row,
      );
      const entries = derive(visitOfTest({ ...test, rows }));
      for (const name of ["vt1_vo2", "vt2_vo2"]) {
        const found = quantity(entries, name);
        if (found === undefined) expect(because(entries, name)?.length).toBeGreaterThan(10);
        else for (const x of [found.value, found.error?.low, found.error?.high]) expect(Number.isFinite(x)).toBe(true);
      }
    }),
    { numRuns: 40 },
  );
});

it("keep the practitioner's reading beside the computed one", () => {
  const r = clean(1, { mode: "cycle" });
  const { truth, entries } = run(r, { reading: { by: "AB", vt1: { vo2_l_min: 2.6 }, vt2: { not_seen: true } } });
  const rows = table(entries, "threshold_readings")?.rows ?? [];
  expect(rows.map((row) => row[1])).toEqual(["computed", "read by eye, AB", "computed", "read by eye, AB"]);
  expect(rows[1]?.[2]).toBe(2.6);
  expect(rows[1]?.[5] as number).toBeGreaterThan(0);
  expect(rows[3]?.[7]).toMatch(/not seen/);
  holds(entries, "vt1_vo2", truth.vt1?.vo2 as number);
});
