/** Indices of an incremental test, against the truth of generated tests and sums by hand. */
import { describe, expect, it } from "vitest";
import { deriveIncremental } from "../../src/derive/incremental.js";
import { deriveIndices } from "../../src/derive/indices.js";
import { deriveSize } from "../../src/derive/size.js";
import { deriveThresholds } from "../../src/derive/thresholds.js";
import type { Table } from "../../src/kernel/measure.js";
import type { MeasureId } from "../../src/kernel/measures.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import type { Visit } from "../../src/kernel/visit.js";
import { NO_FAULTS, NO_NOISE, type Recipe, recipe } from "../generator/recipe.js";
import { generatedVisit } from "./indices/generated-visit.js";
import { testSeries, testVisit, type VisitParts } from "./rest/visit.js";

const derived = (visit: Visit) => {
  const book = openNotebook();
  deriveSize(book, visit);
  const test = deriveIncremental(book, visit);
  deriveThresholds(book, visit, test);
  deriveIndices(book, visit);
  return book;
};
const run = (seed: number, changes: Partial<Recipe> = {}, more: VisitParts = {}) =>
  derived(generatedVisit(recipe(seed, changes), more));
const clean = { noise: NO_NOISE, faults: NO_FAULTS } as const;
const steps = {
  mode: "treadmill",
  massKg: 70,
  vo2Peak: 4.2,
  vt1: 3.2,
  vt2: 3.7,
  protocol: { kind: "step", start: 8, rise: 1, stageS: 240, gradePct: 1, raises: "speed" },
} as const;

describe("indices of an incremental test", () => {
  it("find the true slope of ventilation on VCO2 below the second threshold", () => {
    for (const seed of [1, 2, 5, 8]) {
      const r = recipe(seed, { mode: "cycle", ...clean });
      const slope = derived(generatedVisit(r)).value("ventilation_vco2_slope");
      if (slope !== undefined) expect(Math.abs(slope - r.veSlope)).toBeLessThan(0.6);
    }
    expect(run(1, { mode: "cycle", ...clean }).value("ventilation_vco2_slope")).toBeDefined();
  });

  it("find the true slope of uptake on power, 10.3 mL/min/W in the generator, through breath noise", () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const slope = run(seed, { mode: "cycle" }).value("vo2_work_slope") ?? 0;
      expect(Math.abs(slope - 10.3)).toBeLessThan(0.9);
    }
  });

  it("hardly move the efficiency slope when the last quarter is left out, as its authors say", () => {
    const book = run(2, { mode: "cycle", ...clean });
    const [whole, part] = ["oxygen_uptake_efficiency_slope", "oxygen_uptake_efficiency_slope_75"].map(
      (id) => book.value(id as MeasureId) ?? 0,
    );
    expect(Math.abs((part as number) / (whole as number) - 1)).toBeLessThan(0.06);
  });

  it("give the generator's cost of running", () => {
    const book = run(3, { ...steps, ...clean });
    const stages = (book.entry("economy_stages") as Table).rows.filter((row) => row.at(-1) === null);
    // by hand: rest + 0.19 mL/kg a metre level + 0.9·1 % = 0.199 mL/kg/m gross of rest; 199 mL/kg/km + 60·rest/speed
    const r = recipe(3, { ...steps, ...clean });
    for (const row of stages) {
      const speed = row[3] as number;
      expect(Math.abs((row[7] as number) - (199 + (60_000 * r.vo2Rest) / r.massKg / speed))).toBeLessThan(4);
    }
    expect(stages.length).toBeGreaterThan(2);
  });

  it("write no economy for a ramp", () => {
    expect(run(1, { mode: "cycle" }).entry("economy_stages")).toBeUndefined();
  });

  it("state posture beside heart-rate recovery, read it from the series, and say where a typed value differs", () => {
    const more = { session: { incremental: { recovery: { posture: "sitting", heart_rate_1_min_bpm: 240 } } as never } };
    const book = run(1, { mode: "cycle" }, more);
    const plain = run(1, { mode: "cycle" });
    const entry = book.entry("heart_rate_recovery_1_min");
    expect(entry?.kind === "quantity" && entry.note).toMatch(/^posture: sitting; read from the series, .* says 240$/);
    expect(book.value("heart_rate_recovery_1_min")).toBeDefined();
    expect(book.value("heart_rate_recovery_1_min")).toBe(plain.value("heart_rate_recovery_1_min"));
  });

  it("read the fall of heart rate one and two minutes after the load was taken off", () => {
    const stop = 605;
    const time = Array.from({ length: 450 }, (_, i) => 2 * (i + 1));
    const loaded = (t: number) => t <= stop;
    const series = testSeries(
      "test.csv",
      {
        time_s: time,
        power_w: time.map((t) => (t > 120 && loaded(t) ? 20 + (t - 120) / 2 : 20)),
        vo2_l_min: time.map((t) => (loaded(t) ? 0.5 + t / 250 : 1 + 0.001 * (t % 7))),
        vco2_l_min: time.map((t) => (loaded(t) ? 0.4 + t / 230 : 1.1 + 0.001 * (t % 5))),
        ventilation_l_min: time.map((t) => 12 + t / 8),
        heart_rate_bpm: time.map((t) => (loaded(t) ? 80 + (100 * t) / stop : 180 - (t - stop) / 2)),
      },
      { ventilation_l_min: "BTPS" },
    );
    const phases = { incremental_start_s: 120, recovery_start_s: stop };
    const incremental = { mode: "cycle", series: "test.csv", phases } as never;
    const book = derived(testVisit({ session: { incremental }, series: { "test.csv": series } }));
    // By hand: the last 5 s before the stop average 179.50; the line falls to 150 after 60 s and to 120 after 120 s.
    expect(book.value("heart_rate_recovery_1_min")).toBeCloseTo(29.5, 0);
    expect(book.value("heart_rate_recovery_2_min")).toBeCloseTo(59.5, 0);
  });

  it("say beside the chronotropic index that a medicine slows the heart", () => {
    const book = run(1, { mode: "cycle" }, { client: { medication: ["beta blocker"] } });
    const entry = book.entry("chronotropic_index");
    expect(entry?.kind === "quantity" && entry.note).toMatch(/beta blocker/);
  });

  it("withhold what needs carbon dioxide when that channel is dead, and nothing else", () => {
    const dead = { ...clean, faults: { ...NO_FAULTS, dead: [{ channel: "vco2" as const, fromS: 0 }] } };
    const book = run(1, { mode: "cycle", ...dead });
    expect(book.entry("ventilation_vco2_slope_whole")?.kind).toBe("not given");
    expect(book.entry("ventilation_vco2_lowest")?.kind).toBe("not given");
    expect(book.value("vo2_work_slope")).toBeDefined();
    expect(book.value("oxygen_uptake_efficiency_slope")).toBeDefined();
  });
});

describe("saturation and pressure in exercise", () => {
  const pressures = (list: readonly (readonly [string, number, number?])[], sex: "female" | "male" = "female") =>
    derived(
      testVisit({
        client: { sex },
        session: {
          incremental: {
            mode: "cycle",
            pressures: list.map(([when, systolic_mmhg, diastolic_mmhg]) => ({
              when,
              systolic_mmhg,
              ...(diastolic_mmhg === undefined ? {} : { diastolic_mmhg }),
            })),
          } as never,
        },
      }),
    ).entry("exercise_pressure_response");
  it("follow the published limits", () => {
    // 204 in a woman: at or above 190, below the limit for stopping (American Heart Association list: 250/115).
    expect(
      pressures([
        ["rest", 120],
        ["peak", 204],
      ]),
    ).toMatchObject({ verdict: "in the upper range" });
    expect(
      pressures(
        [
          ["rest", 120],
          ["peak", 204],
        ],
        "male",
      ),
    ).toMatchObject({ verdict: "within the limits" });
    expect(
      pressures([
        ["rest", 120],
        ["peak", 251],
      ]),
    ).toMatchObject({ verdict: "above the limit for stopping" });
    expect(
      pressures([
        ["rest", 120],
        ["exercise", 150],
        ["peak", 109],
      ]),
    ).toMatchObject({ verdict: "fell below rest" });
    expect(
      pressures([
        ["rest", 120],
        ["exercise", 150],
        ["peak", 110],
      ]),
    ).toMatchObject({ verdict: "within the limits" });
  });
  it("give the fall of saturation only with a value at rest", () => {
    const saturations = [
      { when: "exercise", spo2_pct: 93 },
      { when: "rest", spo2_pct: 98 },
    ];
    const give = (list: object[]) =>
      derived(testVisit({ session: { incremental: { mode: "cycle", saturations: list } as never } }));
    expect(give(saturations).value("saturation_fall")).toBe(5);
    expect(give(saturations.slice(0, 1)).entry("saturation_fall")?.kind).toBe("not given");
  });
});

describe("critical power", () => {
  const bouts = [
    { duration_s: 360, power_w: 306 },
    { duration_s: 180, power_w: 361 },
    { duration_s: 720, power_w: 278 },
  ];
  const give = (list: object[], model = "work-time") =>
    derived(
      testVisit({
        session: { critical_power: { bouts: list } as never },
        choices: { critical_power_model: model as never },
      }),
    );
  it("does not care about the order of the bouts and states its error", () => {
    const book = give(bouts);
    expect(book.value("critical_power")).toBeCloseTo(250.29, 2);
    expect(book.value("work_above_critical_power")).toBeCloseTo(19.98, 2);
    const entry = book.entry("critical_power");
    expect(entry?.kind === "quantity" && entry.error?.typical).toBeCloseTo(0.25, 2);
  });
  it("gives critical speed from distances", () => {
    const book = give([
      { duration_s: 255, distance_m: 1200 },
      { duration_s: 560, distance_m: 2400 },
      { duration_s: 875, distance_m: 3600 },
    ]);
    expect(book.value("critical_speed")).toBeCloseTo(13.93, 2);
    expect(book.value("distance_above_critical_speed")).toBeCloseTo(219.5, 1);
  });
  it("is withheld from two bouts, or bouts too alike", () => {
    expect(give(bouts.slice(0, 2)).entry("critical_power")?.kind).toBe("not given");
    const alike = [300, 340, 400].map((duration_s, i) => ({ duration_s, power_w: 300 - 10 * i }));
    expect(give(alike).entry("critical_power")?.kind).toBe("not given");
  });
});
