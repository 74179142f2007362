/** What may be claimed of a peak: plateau, verification bout, and the signs that are shown but never counted. */
import { describe, expect, it } from "vitest";
import { effortCriteria } from "../../../src/derive/incremental/effort-criteria.js";
import type { Incremental } from "../../../src/kernel/generated/session.js";
import type { Entry } from "../../../src/kernel/measure.js";
import type { Recipe } from "../../generator/recipe.js";
import { NO_FAULTS, NO_NOISE, USUAL_FAULTS } from "../../generator/recipe.js";
import { derive } from "./derived.js";
import { generated } from "./generated.js";
import { visitOf } from "./visit.js";

const verdict = (entries: readonly Entry[], id: string): string | undefined => {
  const found = entries.find((e) => e.id === id);
  return found?.kind === "judgement" ? found.verdict : undefined;
};
const run = (seed: number, changes: Partial<Recipe> = {}, more: Partial<Incremental> = {}) =>
  derive(generated(seed, changes, more).visit);
const calm = { noise: NO_NOISE, faults: NO_FAULTS };

describe("plateau", () => {
  const seeds = Array.from({ length: 40 }, (_, i) => i + 1);
  it("is found when uptake stays at its ceiling for two minutes, noise-free", () => {
    const long = seeds.filter((seed) => verdict(run(seed, { ...calm, plateauS: 150 }), "plateau") === "plateau");
    expect(long.length).toBeGreaterThanOrEqual(38);
  });
  it("is not found where uptake rises with work to the end, noise-free", () => {
    for (const seed of seeds) {
      const out = run(seed, { ...calm, plateauS: 0 });
      expect(verdict(out, "plateau"), String(seed)).not.toBe("plateau");
      expect(verdict(out, "maximality")).toBe("VO2peak");
    }
  });
  it("is claimed falsely in fewer than one noisy test in fifteen, maximal or not", () => {
    for (const stopAt of [1, 0.75]) {
      let claimed = 0;
      const all = Array.from({ length: 150 }, (_, i) => 500 + i);
      for (const seed of all)
        if (verdict(run(seed, { faults: USUAL_FAULTS, plateauS: 0, stopAt }), "plateau") === "plateau") claimed++;
      expect(claimed / all.length, `stopped at ${stopAt}`).toBeLessThan(1 / 15);
    }
  });
});

describe("verification bout", () => {
  const typed = (vo2: number) => {
    const { test, visit } = generated(4, { ...calm, plateauS: 0 });
    const peak = derive(visit).find((e) => e.id === "vo2_peak");
    if (peak?.kind !== "quantity") throw new Error("no peak");
    const verification = { vo2_peak_l_min: peak.value * vo2 };
    return derive(generated(test.recipe.seed, { ...calm, plateauS: 0 }, { verification }).visit);
  };
  // Limits of 3 % either way: Costa 2021 with the limit from memory; 1.7 % confirms in the worked check of the source.
  it.each([
    [1.017, "confirmed", "VO2max"],
    [0.972, "confirmed", "VO2max"],
    [1.05, "incremental test not maximal", "VO2peak"],
    [0.94, "not attained", "VO2peak"],
  ])("at %f of the peak is %s", (share, word, claim) => {
    const out = typed(share);
    expect(verdict(out, "verification")).toBe(word);
    expect(verdict(out, "maximality")).toBe(claim);
  });
  it("in the series lends its value when it was higher", () => {
    const changes = { ...calm, plateauS: 0, stopAt: 0.8, recoveryS: 300, verificationS: 240 };
    const out = run(6, changes);
    const bout = out.find((e) => e.id === "verification_vo2");
    const peak = out.find((e) => e.id === "vo2_peak");
    if (bout?.kind !== "quantity" || peak?.kind !== "quantity") throw new Error("no values");
    expect(peak.value).toBeGreaterThanOrEqual(bout.value);
    if (verdict(out, "verification") === "incremental test not maximal") {
      expect(peak.value).toBe(bout.value);
      expect(peak.note).toMatch(/verification bout/);
    }
  });
});

describe("signs of effort", () => {
  const base = { rer: 1.12, heartRate: 172, heartRateLowered: false, rpe: undefined, lactate: undefined };
  const of = (more: Partial<Parameters<typeof effortCriteria>[0]>) =>
    Object.fromEntries(effortCriteria({ ageYears: 45, ...base, ...more }).map((c) => [c.name, c.outcome]));

  it("meets both of the worked check: 45 years, RER 1.12, 172 /min (Wagner 2020: 97.5 % of 176.5)", () => {
    const out = of({});
    expect(out["Respiratory exchange ratio"]).toBe("met");
    expect(out["Heart rate of 208 − 0.7 · age"]).toBe("met");
  });
  it("compares the printed digits: 1.095 prints 1.10 and meets 1.10", () => {
    expect(of({ rer: 1.095 })["Respiratory exchange ratio"]).toBe("met");
    expect(of({ rer: 1.094 })["Respiratory exchange ratio"]).toBe("not met");
  });
  it("cannot be judged by heart rate on heart-rate lowering medication, nor outside the source's ages", () => {
    expect(of({ heartRateLowered: true })["Heart rate of 210 − age"]).toBe("not measurable");
    expect(of({ ageYears: 75 })["Respiratory exchange ratio"]).toBe("not measurable");
    expect(of({ rer: undefined })["Respiratory exchange ratio"]).toBe("not measurable");
    expect(of({})["Blood lactate"]).toBe("not measurable");
  });
  it("never make a maximum, however many are met", () => {
    const out = run(9, { ...calm, plateauS: 0, hrMax: 205 }, { rpe_at_end: { scale: "6-20", overall: 20 } });
    const table = out.find((e) => e.id === "maximality_criteria");
    if (table?.kind !== "table") throw new Error("no table");
    expect(table.rows.filter((row) => row[3] === "met").length).toBeGreaterThanOrEqual(3);
    expect(verdict(out, "maximality")).toBe("VO2peak");
  });
  it("reads medication from the client's record", () => {
    const incremental = { mode: "cycle" as const, heart_rate_peak_bpm: 120, stages: [{ power_w: 100, vo2_l_min: 2 }] };
    const out = derive(visitOf({ incremental: incremental as Incremental, medication: ["beta blocker"] as never }));
    const table = out.find((e) => e.id === "maximality_criteria");
    expect(table?.kind === "table" && table.rows[1]?.[1]).toMatch(/medication/);
  });
});

it("claims no maximum of a test that was ended by plan", () => {
  const out = run(2, { ...calm, plateauS: 150 }, { stop: { reason: "planned" } });
  expect(verdict(out, "plateau")).toBe("plateau");
  expect(verdict(out, "maximality")).toBe("VO2peak");
});
