/** Cross-check rules: tripped by faults a laboratory knows, silent on sound tests. */
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Findings, Rule } from "../../../src/kernel/rule.js";
import { rule as heartAgainstRest } from "../../../src/validity/gas/heart-rate-against-rest.js";
import { metabolicCost } from "../../../src/validity/gas/metabolic-cost.js";
import { rule as pulseCeiling } from "../../../src/validity/gas/oxygen-pulse-ceiling.js";
import { rule as pulseFall } from "../../../src/validity/gas/oxygen-pulse-fall.js";
import { rule as ratioCourse } from "../../../src/validity/gas/ratio-course.js";
import { rule as restingQuotient } from "../../../src/validity/gas/resting-quotient.js";
import { rule as restingSteady } from "../../../src/validity/gas/resting-steady.js";
import { rule as restingUptake } from "../../../src/validity/gas/resting-uptake.js";
import { rule as roomRecorded } from "../../../src/validity/gas/room-recorded.js";
import { rule as uptakeForWork } from "../../../src/validity/gas/uptake-for-work.js";
import { rule as uptakeWorkSlope } from "../../../src/validity/gas/uptake-work-slope.js";
import { rule as equivalents } from "../../../src/validity/gas/ventilatory-equivalents.js";
import { generatedVisit } from "../../derive/indices/generated-visit.js";
import { testSeries, testVisit } from "../../derive/rest/visit.js";
import type { Row } from "../../generator/breaths.js";
import { recipe } from "../../generator/recipe.js";
import { derivedFindings, stated } from "../findings.js";

const EXERCISE = [uptakeForWork, uptakeWorkSlope, ratioCourse, equivalents, pulseCeiling, pulseFall, restingUptake];
const cycle = (seed: number, change?: (row: Row) => Row) =>
  derivedFindings(generatedVisit(recipe(seed, { mode: "cycle" }), {}, change));
const names = (findings: Findings, rules: readonly Rule[] = EXERCISE) =>
  rules.filter((rule) => rule.judge(findings).length > 0).map((rule) => rule.id);
const scale = (factor: number) => (row: Row) => ({
  ...row,
  ve: factor * row.ve,
  vo2: factor * row.vo2,
  vco2: factor * row.vco2,
});

describe("metabolic cost", () => {
  it("gives the published worked examples", () => {
    // Slide deck and Bushman 2020: 93.8 m/min at 10 % 29.76; 12 km/h at 1 % 45.3; 150 W and 75 kg 28.6; 50 W arms and 75 kg 15.5
    expect(metabolicCost({ mode: "treadmill", speed: (93.8 * 60) / 1000, grade: 10, massKg: 70 })).toBeCloseTo(
      29.76,
      2,
    );
    expect(metabolicCost({ mode: "treadmill", speed: 12, grade: 1, massKg: 70 })).toBeCloseTo(45.3, 6);
    expect(metabolicCost({ mode: "treadmill", speed: 5.5, grade: 10, massKg: 70 })).toBeCloseTo(29.17, 2);
    expect(metabolicCost({ mode: "cycle", power: 150, massKg: 75 })).toBeCloseTo(28.6, 6);
    expect(metabolicCost({ mode: "cycle", power: 200, massKg: 80 })).toBeCloseTo(34, 6);
    expect(metabolicCost({ mode: "arm-crank", power: 50, massKg: 75 })).toBeCloseTo(15.5, 6);
  });
  it("gives nothing outside its range", () => {
    expect(metabolicCost({ mode: "cycle", power: 250, massKg: 75 })).toBeUndefined();
    expect(metabolicCost({ mode: "treadmill", speed: 7, massKg: 75 })).toBeUndefined();
  });
});

describe("cross-checks of an incremental test", () => {
  it("are silent on 60 sound generated tests, at most one remark", () => {
    let remarks = 0;
    for (let seed = 1; seed <= 30; seed++) {
      remarks += names(cycle(seed)).length;
      const run = recipe(seed, { mode: "treadmill", vo2Peak: 4, massKg: 65 });
      remarks += names(derivedFindings(generatedVisit(run))).length;
    }
    expect(remarks).toBeLessThanOrEqual(1);
  });
  it("see a leak of expired gas: all volumes 35 % low, the ratio as it was", () => {
    expect(names(cycle(2, scale(0.65)))).toEqual(["uptake-for-work", "uptake-work-slope"]);
  });
  it("see BTPS taken for STPD (1.224 by hand: 1.09130/0.89156) in at least eight of ten tests", () => {
    const seeds = Array.from({ length: 10 }, (_, i) => i + 1);
    const wrong = (row: Row) => ({ ...row, vo2: 1.224 * row.vo2, vco2: 1.224 * row.vco2 });
    const seen = seeds.filter((seed) => names(cycle(seed, wrong), [uptakeForWork, uptakeWorkSlope]).length > 0);
    expect(seen.length).toBeGreaterThanOrEqual(8);
  });
  it("see an oxygen analyser that drifts: uptake rises by 45 % through the file and the ratio falls", () => {
    const last = cycle(2).visit.series["test.csv"]?.channels.time_s?.at(-1) ?? 1;
    expect(names(cycle(2, (row) => ({ ...row, vo2: row.vo2 * (1 + (0.45 * row.time) / last) })))).toContain(
      "ratio-course",
    );
    expect(names(cycle(2, (row) => ({ ...row, vo2: row.vo2 * (1 + (0.02 * row.time) / last) })))).toEqual([]);
  });
  it("see a carbon dioxide analyser that reads 45 % high", () => {
    expect(names(cycle(2, (row) => ({ ...row, vco2: 1.45 * row.vco2 })))).toContain("ratio-course");
  });
  it("see ventilation of half the size while the gases are right", () => {
    expect(names(cycle(2, (row) => ({ ...row, ve: 0.5 * row.ve })))).toEqual(["ventilatory-equivalents"]);
  });
  it("hold typed stages against the equations: sound ones pass, a third too little does not", () => {
    // by hand at 75 kg: 100 W 21.4, 150 W 28.6, 200 W 35.8 mL/kg/min
    const typed = (factor: number) =>
      derivedFindings(
        testVisit({
          session: {
            size: { mass_kg: 75, stature_cm: 178 } as never,
            incremental: {
              mode: "cycle",
              protocol: { kind: "step", stage_length_s: 240 },
              stages: [
                [100, 1.605],
                [150, 2.145],
                [200, 2.685],
              ].map(([power_w = 0, vo2 = 0]) => ({
                power_w,
                vo2_l_min: factor * vo2,
                vco2_l_min: 0.9 * factor * vo2,
              })) as never,
            },
          },
        }),
      );
    expect(names(typed(1), [uptakeForWork])).toEqual([]);
    expect(names(typed(0.67), [uptakeForWork])).toEqual(["uptake-for-work"]);
  });
  it("do not judge equivalents in hypoxia", () => {
    const thin = cycle(2, (row) => ({ ...row, ve: 2 * row.ve }));
    expect(names(thin)).toContain("ventilatory-equivalents");
    const visit = { ...thin.visit, session: { ...thin.visit.session, room: { fio2: 0.15 } } };
    expect(names({ ...thin, visit }, [equivalents])).toEqual([]);
  });
  it("see a leak that opens late, and not a fall of 10 %", () => {
    const late = (factor: number) => {
      const times = cycle(2).visit.series["test.csv"]?.channels.time_s ?? new Float64Array();
      const from = (times.at(-1) ?? 0) - 120 - 120; // two minutes of recovery stand at the end
      return cycle(2, (row) => (row.time < from ? row : scale(factor)(row)));
    };
    expect(names(late(0.7), [pulseFall])).toEqual(["oxygen-pulse-fall"]);
    expect(names(late(0.9), [pulseFall])).toEqual([]);
  });
});

describe("limits, just inside and just outside", () => {
  const visit = testVisit();
  it("slope on power: 8.1 and 12.3 pass, 8.0 and 12.4 do not", () => {
    for (const [slope, remarks] of [
      [8.1, 0],
      [12.3, 0],
      [8, 1],
      [12.4, 1],
    ] as const)
      expect(uptakeWorkSlope.judge(stated(visit, { vo2_work_slope: slope })).length).toBe(remarks);
  });
  it("oxygen pulse: 34.0 passes, 34.1 does not", () => {
    expect(pulseCeiling.judge(stated(visit, { oxygen_pulse_peak: 34 }))).toEqual([]);
    expect(pulseCeiling.judge(stated(visit, { oxygen_pulse_peak: 34.1 })).length).toBe(1);
  });
  it("heart rate: a rise of 60 in a hard test passes, 59 does not; five times the resting rate passes, more does not", () => {
    const judge = (rest: number, peak: number, rer: number, of = visit) =>
      heartAgainstRest
        .judge(stated(of, { resting_heart_rate: rest, heart_rate_peak: peak, rer_peak: rer }))
        .map((f) => f.severity);
    expect(judge(70, 130, 1.05)).toEqual([]);
    expect(judge(70, 129, 1.05)).toEqual(["weakens"]);
    expect(judge(70, 129, 1.04), "a test ended early says nothing").toEqual([]);
    expect(judge(70, 129, 1.05, testVisit({ client: { medication: ["beta blocker"] } }))).toEqual([]);
    expect(judge(40, 200, 1)).toEqual([]);
    expect(judge(40, 201, 1)).toEqual(["weakens"]);
  });
  it("heart rate: the pulse at the cuff serves where none was taken at rest; without either nothing is said", () => {
    const judge = (values: object) =>
      heartAgainstRest.judge(stated(visit, { heart_rate_peak: 120, rer_peak: 1.1, ...values })).length;
    expect(judge({ resting_pulse: 72 })).toBe(1);
    expect(judge({})).toBe(0);
  });
  it("resting quotient: bands of the guideline of 2014", () => {
    const severity = (ratio: number) => restingQuotient.judge(stated(visit, { resting_rer: ratio }))[0]?.severity;
    expect([0.66, 0.67, 0.9, 0.904, 0.91, 1.3, 1.31].map(severity)).toEqual([
      "fatal",
      undefined,
      undefined,
      undefined,
      "weakens",
      "weakens",
      "fatal",
    ]);
  });
  it("resting uptake: 70 and 140 % of the prediction pass, 69 and 141 do not", () => {
    for (const [share, remarks] of [
      [70, 0],
      [140, 0],
      [69, 1],
      [141, 1],
    ] as const)
      expect(restingUptake.judge(stated(visit, { resting_energy_percent_predicted: share })).length).toBe(remarks);
  });
  it("rest before exercise: 1.9 mL/kg/min is too little", () => {
    const quiet = (factor: number) => (row: Row) => (row.power > 0 ? row : { ...row, vo2: factor * row.vo2 });
    expect(names(cycle(3, quiet(0.4)), [restingUptake])).toEqual(["resting-uptake"]);
    expect(names(cycle(3, quiet(0.8)), [restingUptake])).toEqual([]);
  });
  it("steadiness: a typed variation of 10.0 % passes, 10.1 does not, none is a finding", () => {
    const judge = (typed: object) =>
      restingSteady
        .judge(stated(testVisit({ session: { rest: { typed } } }), { resting_vo2: 250 }))
        .map((f) => f.severity);
    expect(judge({ vo2_cv_pct: 10, vco2_cv_pct: 9 })).toEqual([]);
    expect(judge({ vo2_cv_pct: 10.1, vco2_cv_pct: 9 })).toEqual(["weakens"]);
    expect(judge({ vco2_cv_pct: 9 })).toEqual(["record"]);
  });
  it("room: pressure, temperature and humidity recorded, or a finding", () => {
    const room = { pressure_mmhg: 752, temperature_c: 21, humidity_pct: 45 };
    const judge = (r: object) =>
      roomRecorded.judge(stated(testVisit({ session: { room: r } }), { vo2_peak: 3 })).length;
    expect(judge(room)).toBe(0);
    expect(judge({ ...room, pressure_mmhg: undefined })).toBe(1);
  });
});

const DATA = "../shared/data/ramp72";
it.skipIf(!existsSync(DATA))(`are silent on 67 real ramps (skipped without ${DATA})`, () => {
  const read = (file: string) => {
    const [head = "", ...lines] = readFileSync(`${DATA}/${file}`, "utf8").trim().split("\n");
    const keys = head.split(",");
    return lines.map((line) => Object.fromEntries(line.split(",").map((cell, i) => [keys[i] ?? "", cell])));
  };
  const tests = read("tests.csv");
  expect(tests.length).toBe(67);
  const remarks = tests.flatMap((test) => {
    const rows = read(`tests/${String(test.test).padStart(2, "0")}.csv`);
    const column = (key: string) => rows.map((row) => Number(row[key]));
    const gas = (key: string) => column(key).map((x) => (x === 0 ? null : x));
    // The gas condition of ventilation is not stated in these files, so ventilation is left out.
    const series = testSeries("test.csv", {
      time_s: column("time_s"),
      vo2_l_min: gas("vo2_L_min"),
      vco2_l_min: gas("vco2_L_min"),
      speed_km_h: column("speed_km_h"),
      grade_pct: column("grade_pct"),
    });
    const phases = {
      rest_start_s: Number(test.rest_start_s),
      warm_up_start_s: Number(test.warmup_start_s),
      incremental_start_s: Number(test.load_start_s),
      recovery_start_s: Number(test.recovery_start_s),
    };
    const visit = testVisit({
      session: {
        size: { mass_kg: Number(test.body_mass_kg), stature_cm: Number(test.height_cm) } as never,
        incremental: { mode: "treadmill", series: "test.csv", phases },
      },
      series: { "test.csv": series },
    });
    return names(derivedFindings(visit));
  });
  expect(remarks).toEqual([]);
});
