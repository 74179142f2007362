/** Stages, loads, cleaning, heart rate and how the test went. */
import { describe, expect, it } from "vitest";
import { oddBreaths } from "../../../src/derive/incremental/clean.js";
import { localOutliers } from "../../../src/derive/incremental/local-outlier.js";
import { foundPhases } from "../../../src/derive/incremental/phases.js";
import { gapsIn } from "../../../src/derive/incremental/rhythm.js";
import type { Columns } from "../../../src/derive/incremental/samples.js";
import { prescribed } from "../../../src/derive/incremental/workload.js";
import type { Incremental } from "../../../src/kernel/generated/session.js";
import type { Entry, Table } from "../../../src/kernel/measure.js";
import { recipe } from "../../generator/recipe.js";
import { derive } from "./derived.js";
import { generated, seriesFrom, visitFrom } from "./generated.js";
import { preparedOf } from "./prepared.js";
import { seriesOf, visitOf } from "./visit.js";

const table = (entries: readonly Entry[], id: string): Table => {
  const found = entries.find((e) => e.id === id);
  if (found?.kind !== "table") throw new Error(`${id} is no table`);
  return found;
};
const column = (t: Table, key: string) => {
  const at = t.columns.findIndex((c) => c.key === key);
  return t.rows.map((row) => row[at] ?? null);
};
const value = (entries: readonly Entry[], id: string) => {
  const found = entries.find((e) => e.id === id);
  return found?.kind === "quantity" ? found.value : undefined;
};

/** Twelve minutes in steps of 3 min by 50 W, stopped 90 s into the last one; uptake exactly on a line. */
const steps = (more: Partial<Incremental> = {}) => {
  const time = Array.from({ length: 330 }, (_, i) => 2 * (i + 1));
  const power = time.map((t) => (t <= 120 ? 0 : 100 + 50 * Math.floor((t - 120.5) / 180)));
  const channels = {
    time_s: time,
    power_w: power,
    vo2_l_min: power.map((w, i) => 0.4 + 0.01 * w + (i % 2 ? 0.001 : -0.001)),
    vco2_l_min: power.map((w) => 0.35 + 0.0105 * w),
    ventilation_l_min: power.map((w, i) => 12 + 0.3 * w + 0.001 * i),
    heart_rate_bpm: power.map((w, i) => 70 + 0.4 * w + 0.001 * i),
  };
  const series = seriesOf(channels, { ventilation_l_min: "BTPS" });
  const phases = { rest_start_s: 0, incremental_start_s: 120, recovery_start_s: 660 };
  return visitOf({ series, incremental: { mode: "cycle", series: "test.csv", phases, ...more } });
};

describe("stages", () => {
  it("are found from the steps of the workload", () => {
    const t = table(derive(steps()), "incremental_stages");
    expect(column(t, "stage")).toEqual(["rest", "1", "2", "3"]);
    expect(column(t, "power_w")).toEqual([0, 100, 150, 200]);
    expect(column(t, "vo2_l_min").map((x) => Number(x).toFixed(3))).toEqual(["0.400", "1.400", "1.900", "2.400"]);
    expect(column(t, "complete")).toEqual(["yes", "yes", "yes", "yes"]);
  });
  it("count the part of the last one that was done (Kuipers 1985: 150 + 90/180 · 50)", () => {
    const phases = { rest_start_s: 0, incremental_start_s: 120, recovery_start_s: 570 };
    const out = derive(steps({ phases }));
    expect(value(out, "power_peak")).toBeCloseTo(175, 6);
    expect(column(table(out, "incremental_stages"), "complete").at(-1)).toBe("no");
    expect(value(derive(steps()), "power_peak")).toBe(200);
  });
  it.each([660, 656, 650])(
    "do not take the recovery's load in, where it is set at %s s and the stop noted at 660",
    (fallen) => {
      const time = Array.from({ length: 360 }, (_, i) => 2 * (i + 1));
      const ramp = (t: number) => (t <= 120 ? 0 : 50 + (t - 120) / 3);
      const power = time.map((t) => (t < fallen ? ramp(t) : 20));
      const vo2 = time.map((t) => 0.4 + 0.01 * ramp(Math.min(t, 660)));
      const channels = { time_s: time, power_w: power, vo2_l_min: vo2, vco2_l_min: vo2 };
      const phases = { rest_start_s: 0, incremental_start_s: 120, recovery_start_s: 660 };
      const protocol = { kind: "ramp", start_power_w: 50, power_rate_w_min: 20 } as const;
      const incremental = { mode: "cycle", series: "test.csv", phases, protocol } as const;
      const out = derive(visitOf({ series: seriesOf(channels), incremental }));
      expect(value(out, "power_peak")).toBeCloseTo(ramp(fallen - 2), 2);
      expect(column(table(out, "incremental_stages"), "power_w").at(-1)).toBeCloseTo(ramp(fallen - 2), 6);
    },
  );
  it("follow the protocol's clock where the workload was not recorded", () => {
    const visit = steps({ protocol: { kind: "step", start_power_w: 100, power_step_w: 50, stage_length_s: 180 } });
    const series = visit.series["test.csv"];
    if (series === undefined) throw new Error("no series");
    const { power_w: _, ...channels } = series.channels;
    const out = derive({ ...visit, series: { "test.csv": { ...series, channels } } });
    expect(column(table(out, "incremental_stages"), "power_w")).toEqual([null, 100, 150, 200]);
    expect(table(out, "incremental_phases").note).toMatch(/workload is the protocol's/);
  });
  it("take their means over the part that was chosen", () => {
    const long = table(derive(steps({ protocol: { stage_mean_s: 120 } })), "incremental_stages");
    expect(long.note).toMatch(/last 120 s/);
    const [a, b] = [long, table(derive(steps()), "incremental_stages")].map(
      (t) => column(t, "ventilation_l_min")[1] as number,
    ) as [number, number];
    expect(a).toBeLessThan(b); // ventilation creeps up within a stage
  });
});

it("gives a typed stage that was broken off the credit of its time, and none when nobody wrote the time down", () => {
  const rows = (end_s?: number) =>
    [100, 150, 200].map((power_w, i) => ({
      power_w,
      vo2_l_min: 1.5 + 0.5 * i,
      ...(i < 2 || end_s === undefined ? {} : { end_s }),
      ...(i < 2 ? {} : { completed: false }),
    })) as unknown as NonNullable<Incremental["stages"]>;
  const of = (end_s?: number) =>
    derive(
      visitOf({
        incremental: { mode: "cycle", protocol: { kind: "step", stage_length_s: 180 }, stages: rows(end_s) },
      }),
    );
  expect(value(of(450), "power_peak")).toBeCloseTo(175, 6); // by hand: 150 + 90/180 · 50
  expect(value(of(450), "test_duration")).toBe(7.5);
  expect(value(of(), "power_peak")).toBe(150);
  expect(of().find((e) => e.id === "test_duration")?.kind).toBe("not given");
});

it("reads a protocol: steps, ramps and stages one by one", () => {
  const step = { start_power_w: 100, power_step_w: 25, stage_length_s: 60 };
  expect([1, 60, 61, 180, 181].map((t) => prescribed(step, t).power)).toEqual([100, 100, 125, 150, 175]);
  expect(prescribed({ start_speed_km_h: 8, speed_rate_km_h_min: 1 }, 90).speed).toBe(9.5);
  const stages: Incremental["protocol"] = {
    stages: [
      { duration_s: 60, power_w: 50 },
      { duration_s: 120, power_w: 120 },
    ],
  };
  expect([30, 60, 61, 500].map((t) => prescribed(stages ?? {}, t).power)).toEqual([50, 50, 120, 120]);
});

it("lays fifteen-second blocks from the start of each phase, and no block over two phases", () => {
  const t = table(derive(steps()), "incremental_bins");
  const middles = column(t, "time_s") as number[];
  expect(middles[0]).toBeCloseTo(7.5, 6);
  expect(middles.filter((m) => m > 120)[0]).toBeCloseTo(127.5, 6);
  expect(t.rows.length).toBe(8 + 36);
  expect(column(t, "phase").filter((p) => p === "incremental").length).toBe(36);
});

describe("cleaning", () => {
  it("marks coughs and swallows and leaves 99 of 100 true breaths", () => {
    const { test } = generated(21, { faults: { coughs: 0, lost: 0, dropouts: 0, dead: [] } });
    const rows = test.rows.map((row, i) => (i % 50 === 25 && row.time > 320 ? { ...row, ve: row.ve * 2.5 } : row));
    const found = preparedOf(visitFrom(test, rows))?.excluded.map((e) => e.index) ?? [];
    const odd = rows.flatMap((row, i) => (row.ve !== test.rows[i]?.ve ? [i] : []));
    expect(odd.filter((i) => !found.includes(i))).toEqual([]);
    expect(new Set(found.filter((i) => !odd.includes(i))).size).toBeLessThan(0.01 * rows.length);
  });
  it("does not take a step of work for an outlier, phase by phase", () => {
    const time = Float64Array.from({ length: 80 }, (_, i) => i);
    const xs = time.map((_, i) => (i < 40 ? 0.3 : 1.5) + 0.02 * Math.sin(i * 2.1));
    const phase = Uint8Array.from(time, (_, i) => (i < 40 ? 0 : 1));
    expect(localOutliers(time, xs, phase, new Uint8Array(80)).some((x) => x === 1)).toBe(false);
  });
  it("leaves means of 10 s alone", () => {
    const { visit } = generated(22, { sampling: { kind: "mean", everyS: 10 } });
    expect(preparedOf(visit)?.excluded).toEqual([]);
  });
  it("lists an impossible heart rate, blanks only it, and keeps the breath", () => {
    const { test } = generated(23, { faults: { coughs: 0, lost: 0, dropouts: 0, dead: [] } });
    const at = test.rows.findIndex((row) => row.time > 600);
    const prepared = preparedOf(
      visitFrom(
        test,
        test.rows.map((row, i) => (i === at ? { ...row, hr: 260 } : row)),
      ),
    );
    expect(prepared?.excluded.filter((e) => e.index === at)).toEqual([
      { index: at, rule: "outside-possible", channel: "heartRate", found: 260 },
    ]);
    expect(prepared?.breaths.excluded[at]).toBe(0);
    expect(prepared?.breaths.heartRate[at]).toBeNaN();
  });
  it("changes no array of the series it was given", () => {
    const { visit } = generated(24, { faults: { coughs: 0.05, lost: 0.02, dropouts: 1, dead: [] } });
    const copy = JSON.stringify(Object.values(visit.series["test.csv"]?.channels ?? {}).map((xs) => [...xs]));
    derive(visit);
    expect(JSON.stringify(Object.values(visit.series["test.csv"]?.channels ?? {}).map((xs) => [...xs]))).toBe(copy);
  });
  it("takes a channel for stuck only when the others move", () => {
    const { test } = generated(28, { faults: { coughs: 0, lost: 0, dropouts: 0, dead: [] } });
    const resting = (row: { time: number }) => row.time < 110;
    const one = test.rows.map((row) => (resting(row) ? { ...row, vco2: 0.25 } : row));
    const all = one.map((row) => (resting(row) ? { ...row, vo2: 0.3, ve: 9 } : row));
    const dead = (rows: typeof one) => preparedOf(visitFrom(test, rows))?.dead.map((run) => run.channel);
    expect(dead(one)).toEqual(["vco2"]);
    expect(dead(all)).toEqual([]);
  });
  it("asks for four different values of another channel before one is called stuck", () => {
    const { test } = generated(28, { faults: { coughs: 0, lost: 0, dropouts: 0, dead: [] } });
    const dead = (values: number) => {
      const rows = test.rows.map((row, i) =>
        row.time < 110 ? { ...row, vco2: 0.25, ve: 9, vo2: 0.3 + 0.001 * (i % values) } : row,
      );
      return preparedOf(visitFrom(test, rows))?.dead.map((run) => run.channel);
    };
    expect(dead(3)).toEqual([]);
    expect(dead(4)).toContain("vco2");
  });
  it("blanks a heart rate only beyond six robust SD: the signal drifts more than breaths do", () => {
    // 100 breaths of 2 s about 120 per minute; two in three lie 2 per minute off, so the robust SD is 1.4826 · 2 = 2.97.
    const n = 100;
    const beats = (odd: number) =>
      Float64Array.from({ length: n }, (_, i) => (i === 50 ? odd : 120 + 2 * ((i % 3) - 1)));
    const blanked = (odd: number) => {
      const none = new Float64Array(n).fill(Number.NaN);
      const time = Float64Array.from({ length: n }, (_, i) => 2 * (i + 1));
      const columns = { time, vo2: none, vco2: none, ve: none, heartRate: beats(odd) } as unknown as Columns;
      oddBreaths(columns, new Uint8Array(n), new Uint8Array(n), [], true);
      return columns.heartRate.some(Number.isNaN);
    };
    expect(blanked(136)).toBe(false); // 16 off: 5.4 SD, 13 %
    expect(blanked(142)).toBe(true); // 22 off: 7.4 SD
  });
  it("takes for a gap a step above 8 s and above three usual ones", () => {
    const gaps = (times: number[], intervalS: number) =>
      gapsIn(Float64Array.from(times), new Uint8Array(times.length), intervalS);
    expect(gaps([1, 9], 1)).toEqual([]);
    expect(gaps([1, 9.1], 1)).toEqual([{ fromS: 1, toS: 9.1 }]);
    expect(gaps([5, 20], 5)).toEqual([]);
    expect(gaps([5, 20.1], 5)).toEqual([{ fromS: 5, toS: 20.1 }]);
  });
  it("names gaps", () => {
    const { test } = generated(25);
    const rows = test.rows.filter((row) => row.time < 500 || row.time > 520);
    const gaps = preparedOf(visitFrom(test, rows))?.gaps ?? [];
    expect(gaps.some((gap) => gap.fromS > 490 && gap.toS < 530)).toBe(true);
  });
});

describe("phases", () => {
  it("are not invented where the load never rises", () => {
    const time = Float64Array.from({ length: 300 }, (_, i) => i);
    const load = time.map((t) => (t < 60 ? 0 : 100));
    expect(foundPhases(time, load, new Float64Array(300).fill(Number.NaN), 0)).toBeUndefined();
  });
  it("without times or workload: a peak with a remark, but no duration, no plateau", () => {
    const { visit } = generated(26);
    const series = visit.series["test.csv"];
    if (series === undefined) throw new Error("no series");
    const { speed_km_h: _, grade_pct: __, power_w: ___, ...channels } = series.channels;
    const incremental: Incremental = { mode: "cycle", series: "test.csv" };
    const out = derive(visitOf({ series: { ...series, channels }, incremental }));
    const reason = (id: string) => out.find((e) => e.id === id && e.kind === "not given");
    expect(value(out, "vo2_peak")).toBeGreaterThan(1);
    expect(reason("test_duration")).toBeDefined();
    expect(reason("plateau")).toBeDefined();
  });
  it("end where the workload falls when only the start is stated", () => {
    const { test } = generated(27);
    const start = test.truth.phases.find((p) => p.name === "incremental");
    const phases = { incremental_start_s: start?.fromS ?? 0 };
    const incremental: Incremental = { mode: recipe(27).mode, series: "test.csv", phases };
    const found = preparedOf(visitOf({ series: seriesFrom(test.rows), incremental }));
    const span = found?.phases.find((p) => p.phase === "incremental");
    expect(span?.fromS).toBe(start?.fromS);
    expect(Math.abs((span?.toS ?? 0) - (start?.toS ?? 0))).toBeLessThan(5);
    expect(found?.notes.join()).toMatch(/end of the incremental phase was found/);
  });
});

describe("heart rate", () => {
  it("predicts by the chosen equation (hand: 40 years, Tanaka 180, Gellish 179, Nes 185.4) and prints its error", () => {
    const of = (hrmax_equation: "tanaka-2001" | "gellish-2007" | "nes-2013") =>
      derive(visitOf({ ageYears: 40.7, choices: { hrmax_equation }, incremental: { mode: "cycle" } })).find(
        (e) => e.id === "heart_rate_max_predicted",
      );
    expect(of("tanaka-2001")).toMatchObject({ value: 180 });
    expect(of("gellish-2007")).toMatchObject({ value: 179 });
    expect(of("nes-2013")).toMatchObject({ value: 185.4, error: { typical: 10.8 } });
  });
  it("takes the typed one where there is no series", () => {
    const out = derive(visitOf({ incremental: { mode: "cycle", heart_rate_peak_bpm: 188 } }));
    expect(value(out, "heart_rate_peak")).toBe(188);
  });
});

describe("conduct", () => {
  const of = (more: Partial<Incremental>) => derive(visitOf({ incremental: { mode: "cycle", ...more } }));
  it("says what was not recorded, and tells none from not asked", () => {
    const silent = of({});
    expect(silent.find((e) => e.id === "stop_reason")?.kind).toBe("not given");
    expect(silent.find((e) => e.id === "adverse_signs")?.kind).toBe("not given");
    expect(of({ adverse_signs: [] }).find((e) => e.id === "adverse_signs")).toMatchObject({ verdict: "none seen" });
    const signs = of({ adverse_signs: ["chest pain", "dizziness"] });
    expect(signs.find((e) => e.id === "adverse_signs")).toMatchObject({ verdict: "chest pain, dizziness" });
  });
});
