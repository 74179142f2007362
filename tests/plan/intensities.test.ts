/**
 * Intensities: the client's own thresholds first, then the stated fallbacks. Karvonen's worked example (60, 190, 70 % → 151)
 * and the metabolic equations stand beside their formulas; here the choice among them, and what is said of the error.
 */
import { describe, expect, it } from "vitest";
import type { Entry, Judgement } from "../../src/kernel/measure.js";
import { judged, number, PROCEED, planFor, quantity, resultsOf, rowsOf, THRESHOLDS, visitFor } from "./plan-for.js";

const PLAN = { days_per_week: 4, hours_per_week: 5, hours_now: 3 };
const made = (entries: readonly Entry[], client = {}, more = {}, plan = {}) =>
  planFor(resultsOf([PROCEED, ...entries], more), visitFor({ plan: { ...PLAN, ...plan }, client }));
const basis = (out: readonly Entry[]) => out.find((e): e is Judgement => e.id === "intensity_basis") as Judgement;
const domains = (out: readonly Entry[]) => rowsOf(out, "intensity_domains");
const words = (out: readonly Entry[]) => domains(out).map((row) => row.domain);

describe("three domains from two thresholds", () => {
  const out = made(THRESHOLDS);
  it("begin and end at the thresholds, each with its interval", () => {
    expect(basis(out).verdict).toBe("two thresholds");
    expect(words(out)).toEqual(["easy", "steady", "hard"]);
    const [easy, steady, hard] = domains(out);
    expect([easy?.heart_rate_from, easy?.heart_rate_to]).toEqual([null, 142]);
    expect([steady?.heart_rate_from, steady?.heart_rate_to]).toEqual([142, 168]); // HR 150 lies in the middle domain
    expect([hard?.heart_rate_from, hard?.heart_rate_to]).toEqual([168, null]);
    expect(steady?.heart_rate_interval).toBe("lower 137 to 147; upper 160 to 176");
    expect(easy?.work).toBe("up to 8.4 km/h, 7:09 min/km"); // by hand: 3600/8.4 = 428.6 s
  });

  it("are shown with the client's own exertion where it was asked, else with the published classes", () => {
    const own = made([...THRESHOLDS, quantity("vt1_rpe", 12), quantity("vt2_rpe", 16)]);
    expect(domains(own).map((row) => row.exertion)).toEqual(["up to 12 (own)", "12 to 16 (own)", "from 16 (own)"]);
    expect(domains(out).map((row) => row.exertion)).toEqual(["9 to 13", "14 to 17", "18 to 20"]);
  });

  it("lose the middle one where the gap is smaller than the error, and no session is laid out there", () => {
    // Least gap by hand: 1.96·√2·0.09·25 = 6.24 mL/kg/min.
    const at = (second: number) => [
      quantity("vt1_heart_rate", 142),
      quantity("vt2_heart_rate", 155),
      quantity("vt1_vo2_per_mass", 25),
      quantity("vt2_vo2_per_mass", second),
    ];
    const near = made(at(31.2));
    expect(basis(near).verdict).toBe("thresholds not separable");
    expect(basis(near).because).toContain("6.2 mL/kg/min");
    expect(words(near)).toEqual(["easy", "hard"]);
    expect(domains(near).map((row) => [row.heart_rate_from, row.heart_rate_to])).toEqual([
      [null, 142],
      [155, null],
    ]);
    expect(rowsOf(near, "programme_weeks").every((week) => number(week, "steady") === 0)).toBe(true);
    expect(words(made(at(31.3)))).toEqual(["easy", "steady", "hard"]);
  });

  it("take wide intervals of the thresholds themselves for the error where these are larger", () => {
    const wide = (id: "vt1_vo2_per_mass" | "vt2_vo2_per_mass", value: number) =>
      quantity(id, value, { low: value - 12, high: value + 12, from: "fit" });
    expect(basis(made([wide("vt1_vo2_per_mass", 25), wide("vt2_vo2_per_mass", 40)])).verdict).toBe(
      "thresholds not separable",
    );
  });

  it("never end easy at the second threshold: at 60 % of reserve where that is known, else without a number", () => {
    const second = THRESHOLDS.filter((e) => e.id.startsWith("vt2"));
    const bare = made(second);
    expect(words(bare)).toEqual(["easy", "steady", "hard"]);
    const limit = quantity("vt2_heart_rate", 172);
    const known = made([limit, quantity("resting_heart_rate", 60), quantity("heart_rate_peak", 190)]);
    // by hand: 60 + 0.6 · (190 − 60) = 138
    expect(domains(known).map((row) => [row.heart_rate_from ?? null, row.heart_rate_to ?? null])).toEqual([
      [null, 138],
      [138, 172],
      [172, null],
    ]);
    expect(basis(known).because).toMatch(/hard begins there\. Easy ends at 60 % of heart-rate reserve/);
    const unknown = made([limit]);
    expect(domains(unknown)[0]?.heart_rate_to ?? null).toBeNull();
    expect(basis(unknown).because).toMatch(/not known as a number/);
  });

  it("stop at one where only one is given, and take the lactate threshold for the second", () => {
    const first = THRESHOLDS.filter((e) => e.id.startsWith("vt1"));
    expect(words(made(first))).toEqual(["easy", "steady to hard"]);
    const cycle = { conditions: { mode: "cycle" } };
    const power = [quantity("vt1_power", 150), quantity("lactate_threshold_power", 220)];
    const both = made(power, {}, cycle);
    expect(basis(both).because).toContain("stands in for the second");
    expect(domains(both).map((row) => row.power_to)).toEqual([150, 220, null]);
  });
});

describe("fallbacks, in the order stated", () => {
  const rest = quantity("resting_heart_rate", 60);
  const peak = quantity("heart_rate_peak", 190);
  const uptake = quantity("vo2_peak_per_mass", 46);

  it("first: heart-rate reserve from a measured maximum (Karvonen: 60 + 0.6 · 130 = 138)", () => {
    const out = made([rest, peak, uptake, judged("maximality", "VO2max")]);
    expect(basis(out).verdict).toBe("heart-rate reserve");
    expect(domains(out).map((row) => [row.heart_rate_from, row.heart_rate_to])).toEqual([
      [112, 138],
      [138, 177],
      [177, null],
    ]);
  });

  it("a peak far below the predicted one, without a claimed maximum, is no maximum", () => {
    const out = made([rest, quantity("heart_rate_peak", 156), judged("maximality", "VO2peak")]);
    expect(basis(out).verdict).toBe("predicted maximum");
  });

  it("second: uptake reserve, 0.6 · (46 − 3.5) + 3.5 = 29.0, as speed uphill and as power", () => {
    const out = made([uptake, judged("maximality", "VO2max")]);
    expect(basis(out).verdict).toBe("uptake reserve");
    expect(domains(out)[0]?.uptake_to).toBe(29);
    // 7.65 km/h is slower than the running equation's runners: printed as a walk at 10 %, by hand 5.46 km/h.
    expect(domains(out)[0]?.work).toContain("to walk 5.5 km/h at 10 % (equation)");
    const cycle = made(
      [uptake, quantity("body_mass", 70), judged("maximality", "VO2max")],
      {},
      { conditions: { mode: "cycle" } },
    );
    expect(domains(cycle)[0]?.power_to).toBe(143); // by hand: 22 · 70 / 10.8 = 142.6 W
  });

  it("third: a maximum predicted from age, with its SD on the page", () => {
    const out = made([rest]);
    expect(basis(out).verdict).toBe("predicted maximum");
    expect(basis(out).because).toContain("11 beats/min (one SD)");
    // By hand at 40 years: 185.4; 60 + 0.6 · 125.4 = 135.2, ± 1.96 · 0.6 · 10.8 = 12.7.
    expect(domains(out)[0]).toMatchObject({
      heart_rate_to: 135,
      heart_rate_interval: "lower 102 to 119; upper 123 to 148",
    });
  });

  it("last: exertion alone, and outside the ages of the prediction too", () => {
    expect(basis(made([])).verdict).toBe("exertion only");
    expect(basis(made([rest], {}, { ageYears: 92 })).verdict).toBe("exertion only");
    expect(domains(made([])).every((row) => row.heart_rate_to === undefined)).toBe(true);
  });
});

describe("drugs that slow the heart", () => {
  it.each(["beta blocker", "calcium-channel blocker", "other heart-rate lowering"] as const)(
    "%s: no heart rate anywhere in the plan",
    (drug) => {
      const out = made([...THRESHOLDS, quantity("resting_heart_rate", 55)], { medication: [drug] });
      expect(basis(out).because).toContain(`a ${drug} changes what a heart rate means`);
      expect(domains(out).every((row) => row.heart_rate_from === undefined && row.heart_rate_to === undefined)).toBe(
        true,
      );
      const sessions = rowsOf(out, "programme_sessions");
      expect(sessions.length).toBeGreaterThan(5);
      for (const row of sessions) {
        expect(row.heart_rate).toBeNull();
        expect(String(row.prescription)).not.toContain("heart rate");
      }
    },
  );

  it("falls back on no reserve of heart rate either", () => {
    const out = made([quantity("resting_heart_rate", 55), quantity("heart_rate_peak", 185)], {
      medication: ["beta blocker"],
    });
    expect(basis(out).verdict).toBe("exertion only");
  });
});

describe("a test of another kind", () => {
  it("is said to be one where the client trains otherwise", () => {
    const because = (mode: string, modes: string[]) =>
      basis(made(THRESHOLDS, {}, { conditions: { mode } }, { modes })).because;
    expect(because("cycle", ["row", "cycle"])).toContain("in other kinds of training (row)");
    expect(because("treadmill", ["walk", "run"])).not.toContain("other kinds");
    expect(because("rowing", ["row"])).not.toContain("other kinds");
  });
});

describe("grade and load", () => {
  it("turn the upper limit of easy into walking speeds", () => {
    const out = made(
      [...THRESHOLDS, quantity("body_mass", 70)],
      {},
      {},
      { walk: { speed_km_h: 3, grade_pct: 10, load_kg: 20, terrain: "rough path" } },
    );
    const row = rowsOf(out, "intensity_equivalents").find((one) => one.grade === 10);
    expect(row?.walk).toBe(4.6); // by hand: 21.5/0.28 = 76.8 m/min
    // By hand: 25·70·20.1/60 = 586.25 W; less 105 and 14.69 over 1.2·90 = 4.320; 1.5V² + 3.5V = 4.320, V = 0.895 m/s.
    expect(row?.loaded).toBe(3.2);
    const level = rowsOf(out, "intensity_equivalents").find((one) => one.grade === 0);
    expect(level?.walk).toBeNull(); // by hand 12.9 km/h: no walk
  });
});
