import { describe, expect, it } from "vitest";
import { deriveSize } from "../../src/derive/size.js";
import { deriveSubmaximal } from "../../src/derive/submaximal.js";
import type { Submaximal } from "../../src/kernel/generated/session.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import { type Around, because, quantity, table, visitOf } from "./visit-of.js";

const derived = (submaximal: Submaximal, around?: Around, mass_kg = 70) => {
  const book = openNotebook();
  const visit = visitOf({ submaximal, size: { mass_kg } }, around);
  deriveSize(book, visit);
  deriveSubmaximal(book, visit);
  return book.entries();
};
const stages: NonNullable<Submaximal["cycle_stages"]>["stages"] = [
  { power_w: 25, heart_rate_bpm: 98 },
  { power_w: 50, heart_rate_bpm: 115 },
  { power_w: 100, heart_rate_bpm: 140 },
];

describe("submaximal tests", () => {
  it("extrapolate the last two steady stages to the predicted maximum, as in the handbook's example", () => {
    // NSCA's Guide, Table 5.5: 300 kgm/min at 115, 600 at 140, maximum 185, 70 kg gives 36.31; at 6 kgm/min a watt.
    // 185 is what 211 − 0.64·age gives at 40.625 years
    const found = derived({ cycle_stages: { stages } }, { ageYears: 40.625, choices: { hrmax_equation: "nes-2013" } });
    expect(quantity(found, "cycle_power_at_maximal_heart_rate")?.value).toBeCloseTo(190, 6);
    expect(quantity(found, "vo2max_estimate_cycle_stages")?.value).toBeCloseTo(36.31, 2);
    expect(quantity(found, "vo2max_estimate_cycle_stages")?.note).toContain("10 to 15 %");
    expect(table(found, "submaximal_stages")?.rows.length).toBe(3);
  });
  it("need two stages inside the window of heart rate", () => {
    const found = derived({ cycle_stages: { stages: [stages[0], { power_w: 50, heart_rate_bpm: 115 }] } });
    expect(because(found, "vo2max_estimate_cycle_stages")).toContain("two stages");
  });
  it("are withheld with a medicine that slows the heart, except those that need no heart rate", () => {
    const block: Submaximal = {
      treadmill_walk: { speed_km_h: 5.6, heart_rate_bpm: 130 },
      treadmill_jog: { speed_km_h: 9.6, heart_rate_bpm: 150 },
      cycle_single: { power_w: 100, heart_rate_bpm: 140 },
      cycle_stages: { stages },
      treadmill_questionnaire: { speed_km_h: 8, functional_ability: 20, activity_rating: 6 },
    };
    for (const found of [
      derived({ ...block, beta_blocker: true }),
      derived(block, { client: { medication: ["beta blocker"] } }),
    ]) {
      for (const id of ["treadmill_walk", "treadmill_jog", "cycle_single", "cycle_stages"])
        expect(because(found, `vo2max_estimate_${id}`), id).toContain("slows the heart");
      expect(quantity(found, "vo2max_estimate_treadmill_questionnaire")?.error?.typical).toBe(3.09);
    }
    expect(quantity(derived(block), "vo2max_estimate_cycle_single")?.value).toBeGreaterThan(0);
  });
  it("give the oxygen cost of the stage by the steady-state equations", () => {
    const found = derived({
      treadmill_walk: { speed_km_h: 5.5, heart_rate_bpm: 120 },
      treadmill_jog: { speed_km_h: 12, heart_rate_bpm: 150 },
    });
    expect(quantity(found, "treadmill_walk_uptake")?.value).toBeCloseTo(20.92, 2); // by hand: 9.167 + 8.25 + 3.5
    expect(quantity(found, "treadmill_jog_uptake")?.value).toBeCloseTo(43.5, 9); // by hand: 40 + 3.5
  });
  it("choose the jog equation by age and refuse where none holds", () => {
    const jog: Submaximal = { treadmill_jog: { speed_km_h: 9.656064, heart_rate_bpm: 150 } };
    const see = (ageYears: number) =>
      quantity(derived(jog, { ageYears }), "vo2max_estimate_treadmill_jog")?.error?.typical;
    expect(see(22)).toBe(3.1);
    expect(see(30)).toBe(2.52);
    expect(because(derived(jog, { ageYears: 45 }), "vo2max_estimate_treadmill_jog")).toContain("18 to 40.999");
  });
  it("estimate from highest power with the equation of the client's sex", () => {
    const found = derived({ cycle_maximal_power: { power_w: 200 } }, { sex: "male" }, 80);
    expect(quantity(found, "vo2max_estimate_cycle_power")?.value).toBeCloseTo(2709.7, 6); // by hand
    expect(quantity(found, "vo2max_estimate_cycle_power")?.error?.typical).toBe(212); // Storer 1990, abstract
    expect(quantity(found, "vo2max_estimate_cycle_power_per_mass")?.value).toBeCloseTo(33.87, 2);
    expect(quantity(found, "vo2max_estimate_cycle_peak")?.value).toBeCloseTo(30.12, 2);
  });
});
