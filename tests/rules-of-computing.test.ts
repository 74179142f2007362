/**
 * The twelve rules the computing must keep (each cost somebody a wrong number), tried through the whole program on
 * files that break them where they can. The body that makes the files is tests/examiner/body.ts; sums are by hand.
 */
import { describe, expect, it } from "vitest";
import type { Results } from "../src/kernel/results.js";
import { type Answer, clientText, type Sent, send, sessionText } from "./examiner/bench.js";
import { type Breath, exercise, mixed, PERSON, truePeak } from "./examiner/body.js";
import { commaCsv, EXAMINER_LAB, phasesText, rawCsv } from "./examiner/files.js";

const RAMP = { start: 60, rise: 25, stageS: 0 } as const;
const SIZE = "size: {stature_cm: 178, mass_kg: 74, clothing: minimal}\n";
const AIR = "room: {temperature_c: 21, humidity_pct: 40, pressure_mmhg: 755, inspired_gas: room air}\n";
const whole = exercise(PERSON, RAMP, 4);
const incremental = (test: ReturnType<typeof exercise>, instrument = "comma_cart", more = "") =>
  `incremental:\n  mode: cycle\n  series: a.csv\n  instrument: ${instrument}\n${phasesText(test)}${more}`;
type Edit = Parameters<typeof commaCsv>[1];
const cycle = (test = whole, more: Partial<Sent> & { edit?: Edit; tail?: string; block?: string } = {}) =>
  send({
    lab: EXAMINER_LAB,
    session: sessionText(`${AIR}${SIZE}${incremental(test, "comma_cart", more.block)}${more.tail ?? ""}`),
    files: { "a.csv": commaCsv(test, more.edit) },
    ...more,
  });
const because = (answer: Answer, id: string) => answer.because(id) ?? "";
const SEEDS = Array.from({ length: 20 }, (_, i) => i + 1);

describe("1 · VE is BTPS, gases are STPD, and inspired fractions come from the file", () => {
  const person = { ...PERSON, fio2: 0.14, vo2Peak: 2.8, vt1: 1.6, vt2: 2.25 };
  const test = exercise(person, { start: 50, rise: 20, stageS: 0 }, 3);
  const files = { "a.csv": rawCsv(mixed(test.breaths, 30), person, 24) };
  const sent = (gas: string) =>
    send({
      lab: EXAMINER_LAB,
      session: sessionText(
        `room: {temperature_c: 21, humidity_pct: 40, ${gas}}\n${SIZE}${incremental(test, "chamber", "  gas_temperature_c: 24\n")}`,
      ),
      files,
    });
  it("in 14 % oxygen the stated fraction gives the body's uptake, room air twice as much or more", async () => {
    const right = await sent("pressure_mmhg: 755, inspired_gas: stated, fio2: 0.14, fico2: 0.0003");
    expect(Math.abs((right.value("vo2_peak") ?? 0) / truePeak(test) - 1)).toBeLessThan(0.06);
    const wrong = await sent("pressure_mmhg: 755, inspired_gas: room air");
    const value = wrong.value("vo2_peak");
    expect(value === undefined || value > 2 * truePeak(test)).toBe(true);
    // Whoever states room air over such a file is told: the numbers do not fit each other.
    if (value !== undefined) expect(wrong.text).toMatch(/remark_/);
  });
  it("there is no default pressure and no default gas", async () => {
    expect(because(await sent("inspired_gas: room air"), "vo2_peak")).toMatch(/there is no default/);
    expect(because(await sent("pressure_mmhg: 755"), "vo2_peak")).toMatch(/does not state what was breathed/);
  });
  it("a volume without a gas condition is not converted", async () => {
    const lab = EXAMINER_LAB.replaceAll("{column: VE, unit: L/min, condition: ATPS}", "{column: VE, unit: L/min}");
    const session = sessionText(`${AIR}${SIZE}${incremental(test, "chamber", "  gas_temperature_c: 24\n")}`);
    expect(because(await send({ lab, session, files }), "vo2_peak")).toMatch(/gas condition/);
  });
  it("the house pair of room air is printed in results.yaml", async () => {
    expect((await cycle()).text).toMatch(/room_air: 0\.2093\/0\.0003/);
    const other = await cycle(whole, { lab: `${EXAMINER_LAB}choices: {room_air: 0.2095/0.0004}\n` });
    expect(other.text).toMatch(/room_air: 0\.2095\/0\.0004/);
  });
});

describe("2 · Weir: the form used is named", () => {
  const typed = "rest: {typed: {vo2_ml_min: 250, vco2_ml_min: 200}}\n";
  it.each([
    ["weir-1949", 1737], // 1.44 · (3.941 · 250 + 1.106 · 200) = 1737.3
    ["weir-short", 1721], // 1.44 · (3.9 · 250 + 1.1 · 200) = 1720.8
  ])("%s gives its own number under its own name", async (name, expected) => {
    const answer = await send({
      session: sessionText(typed),
      lab: `${EXAMINER_LAB}choices: {energy_equation: ${name}}\n`,
    });
    expect(answer.value("resting_energy_expenditure")).toBe(expected);
    expect(answer.text).toMatch(
      new RegExp(`resting_energy_expenditure:\\n {2}value: ${expected}\\n.*\\n {2}formula: ${name} r`),
    );
  });
});

describe("3 · VO2peak is the best 30-s mean, never a single breath", () => {
  it("one breath of three times the size changes nothing", async () => {
    const at = whole.breaths.findIndex((b) => b.t > whole.stopS - 60);
    const plain = await cycle();
    const spiked = await cycle(whole, {
      edit: (b: Breath) => (b === whole.breaths[at] ? { vo2: 3 * b.vo2, vco2: 3 * b.vco2, ve: 3 * b.ve } : {}),
    });
    expect(Math.abs((spiked.value("vo2_peak") ?? 0) - (plain.value("vo2_peak") ?? 0))).toBeLessThan(0.05);
    expect(plain.value("vo2_peak")).toBeLessThan(Math.max(...whole.breaths.map((b) => b.vo2)) - 0.2);
  });
  it("the window is a choice, is printed, and shorter windows never give less", async () => {
    const answer = await cycle();
    expect(answer.text).toMatch(/peak_window_s: 30/);
    const rows = answer.rows("vo2_peak_window_effect").map((row) => Number(row.vo2_l_min));
    expect([...rows].sort((a, b) => b - a)).toEqual(rows);
  });
  it("visits of different windows are not compared", async () => {
    const first = (await cycle(whole, { lab: `${EXAMINER_LAB}choices: {peak_window_s: 60}\n` })).results as Results;
    const answer = await cycle(whole, { earlier: [{ ...first, date: "2025-12-01" }] });
    expect(answer.verdict("change_vo2_peak")).toBe("not comparable");
  });
});

describe("4 · thresholds on 15-s means, first minute dropped, with intervals, or not at all", () => {
  it("hold the truth in their intervals: 20 tests, nominal 95 %", async () => {
    const held = { vt1: 0, vt2: 0 };
    for (const seed of SEEDS) {
      const answer = await cycle(exercise(PERSON, RAMP, 100 + seed));
      for (const name of ["vt1", "vt2"] as const) {
        const error = answer.quantity(`${name}_vo2`)?.error;
        if (
          error?.low !== undefined &&
          error.high !== undefined &&
          error.low <= PERSON[name] &&
          PERSON[name] <= error.high
        )
          held[name]++;
      }
    }
    // Binomial: 16 or fewer of 20 at 95 % has a probability of 0.02.
    expect(held.vt1).toBeGreaterThanOrEqual(17);
    expect(held.vt2).toBeGreaterThanOrEqual(17);
  });
  it("invent no VT2 in tests that stop below it", async () => {
    let invented = 0;
    for (const seed of SEEDS) {
      const answer = await cycle(exercise({ ...PERSON, stopAt: 0.7 }, RAMP, seed));
      if (answer.value("vt2_vo2") !== undefined) invented++;
      else expect(because(answer, "vt2_vo2")).toMatch(/not identified, because .{15}/);
    }
    expect(invented).toBeLessThanOrEqual(1);
  });
  it("invent no VT1 in tests that start above it", async () => {
    const above = { ...PERSON, vo2Peak: 3, vt1: 1.2, vt2: 2.4 };
    let invented = 0;
    for (const seed of SEEDS)
      if ((await cycle(exercise(above, { start: 95, rise: 20, stageS: 0 }, seed))).value("vt1_vo2") !== undefined)
        invented++;
    expect(invented).toBeLessThanOrEqual(2);
  });
});

describe("5 · VO2max only with a plateau or a verification bout", () => {
  const signs = "  stop: {reason: exhaustion}\n  rpe_at_end: {scale: 6-20, overall: 20}\n";
  it("all secondary criteria together promote nothing", async () => {
    for (const seed of SEEDS.slice(0, 8)) {
      // Exhausted at the top of a steep ramp: high ratio, high heart rate, exertion 20, lactate 12; still rising.
      const test = exercise({ ...PERSON, hrMax: 192 }, { start: 60, rise: 35, stageS: 0 }, seed);
      const answer = await cycle(test, {
        block: signs,
        tail: "lactate:\n  mode: cycle\n  steps:\n    - {power_w: 300, lactate_mmol_l: 12}\n",
      });
      if (answer.verdict("plateau") !== "plateau") expect(answer.verdict("maximality"), `seed ${seed}`).toBe("VO2peak");
    }
  });
  it("a bout that agrees makes a maximum, one that took up more unmakes it", async () => {
    const bout = (vo2: number) =>
      `  verification: {rest_before_s: 600, duration_s: 150, power_w: 330, vo2_peak_l_min: ${vo2}}\n`;
    const peak = (await cycle()).value("vo2_peak") ?? 0;
    expect((await cycle(whole, { block: bout(peak) })).verdict("maximality")).toBe("VO2max");
    const more = await cycle(whole, { block: bout(Number((1.06 * peak).toFixed(2))) });
    expect(more.verdict("maximality")).toBe("VO2peak");
  });
  it("a bout far below the peak power confirms nothing, whatever was typed", async () => {
    const peak = (await cycle()).value("vo2_peak") ?? 0;
    const light = `  verification: {rest_before_s: 600, duration_s: 150, power_w: 200, vo2_peak_l_min: ${peak}}\n`;
    const answer = await cycle(whole, { block: light });
    expect(answer.verdict("verification")).toBe("not attained");
    expect(answer.verdict("maximality")).toBe("VO2peak");
  });
  it("a test ended by plan is no maximum", async () => {
    const answer = await cycle(whole, { block: "  stop: {reason: planned}\n" });
    expect(answer.verdict("maximality")).toBe("VO2peak");
  });
});

describe("6 · change: gate first, then error, then verdict", () => {
  const typed = (o2: number, mode = "treadmill") =>
    `${SIZE}incremental:\n  mode: ${mode}\n  protocol: {kind: step, stage_length_s: 180}\n  stages:\n    - {speed_km_h: 8, vo2_l_min: 2.1, vco2_l_min: 1.8, heart_rate_bpm: 130}\n    - {speed_km_h: 14, vo2_l_min: ${o2}, vco2_l_min: ${(o2 * 1.1).toFixed(2)}, heart_rate_bpm: 185}\n`;
  const at = async (o2: number) => ({
    ...((await send({ session: sessionText(typed(o2)) })).results as Results),
    date: "2025-12-01",
  });
  it("a rise of 4 % between two tests is not claimed, and its interval holds zero", async () => {
    const answer = await send({ session: sessionText(typed(3.64)), earlier: [await at(3.5)] });
    const change = answer.entry("change_vo2_peak");
    if (change?.kind !== "change") throw new Error("a change was expected");
    expect(change.low).toBeLessThan(0);
    expect(change.high).toBeGreaterThan(0);
    expect(change.verdict).not.toMatch(/beyond error/);
    expect(change.errorFrom).toMatch(/.{10}/);
  });
  it("a rise of 30 % is claimed; the interval agrees with the verdict whatever the change", async () => {
    const before = await at(3);
    for (const o2 of [2.1, 2.5, 2.8, 2.95, 3, 3.05, 3.2, 3.5, 3.9]) {
      const change = (await send({ session: sessionText(typed(o2)), earlier: [before] })).entry("change_vo2_peak");
      if (change?.kind !== "change" || change.low === undefined || change.high === undefined)
        throw new Error("no interval");
      const claims = change.low > 0 ? "higher, beyond error" : change.high < 0 ? "lower, beyond error" : "none";
      if (claims === "none") expect(change.verdict).not.toMatch(/beyond/);
      else expect(change.verdict).toBe(claims);
      expect(Math.abs(change.change) > (change.detectable ?? 0)).toBe(claims !== "none");
    }
  });
});

describe("7 · typical error and root-mean-square are not mixed up", () => {
  it("a shift common to all pairs leaves the typical error alone", async () => {
    const { typicalError } = await import("../src/compare/error/typical-error.js");
    const pairs = [
      [40, 42],
      [50, 53],
      [45, 46],
      [38, 41],
      [55, 56],
    ] as const;
    // by hand: differences 2 3 1 3 1; mean 2, SD 1 → TE 0.707; root-mean-square √(24/10) = 1.549
    expect(typicalError(pairs)).toBeCloseTo(Math.SQRT1_2, 9);
    expect(Math.sqrt(24 / 10)).toBeGreaterThan(2 * typicalError(pairs));
  });
});

describe("8 · one reference for good; a second band near an age boundary; DXA per maker", () => {
  it("a man of 29.9 is shown the next band too, one of 25 is not", async () => {
    const near = await cycle(whole, { client: clientText({ birth: "1996-04-01" }) });
    const groups = near.quantity("vo2_peak_per_mass")?.norms?.map((p) => p.group ?? "") ?? [];
    expect(groups.filter((g) => /20 to 29|30 to 39/.test(g)).length).toBe(2);
    const inside = await cycle(whole, { client: clientText({ birth: "2001-01-01" }) });
    const one = inside.quantity("vo2_peak_per_mass")?.norms?.filter((p) => /\d0 to \d9/.test(p.group ?? "")) ?? [];
    expect(one.length).toBe(1);
  });
  it("a scanner of another maker gets no DXA reference", async () => {
    const dxa = (maker: string) =>
      sessionText(`${SIZE}dxa: {scanner_maker: ${maker}, whole: {fat_g: 18000, lean_g: 55000, bmc_g: 2800}}\n`);
    const other = await send({ session: dxa("other") });
    for (const id of ["body_fat_percent", "fat_mass_index", "lean_mass_index"])
      for (const position of other.quantity(id)?.norms ?? []) expect(position.percentile, id).toBeUndefined();
    const own = await send({ session: dxa("hologic") });
    expect(own.quantity("body_fat_percent")?.norms?.some((p) => p.percentile !== undefined)).toBe(true);
  });
});

describe("9 · mountains have West's atmosphere", () => {
  it("8848 m is 253 mmHg there, not the standard atmosphere's 236", async () => {
    const { info: mountain } = await import("../src/derive/altitude/mountain-pressure.js");
    // West 1996 (J Appl Physiol 81:1850–1854): 253 mmHg at 8848 m; ICAO standard atmosphere 236 mmHg.
    expect(Math.round(mountain.compute(8848) as number)).toBe(253);
  });
});

describe("10 · decimals are compared as integers", () => {
  it("a levelling at an exchange ratio printed as 1.00 is not refused for 0.996", async () => {
    const { maximality } = await import("../src/derive/incremental/maximality.js");
    expect(maximality("plateau", undefined, false, 0.996).verdict).toBe("VO2max");
    expect(maximality("plateau", undefined, false, 0.994).verdict).toBe("VO2peak");
  });
  it("a rise of exactly 0.4 mmol/L is not above 0.4, in floating point either", async () => {
    // 1.6 − 1.2 = 0.40000000000000013: the step before the first rise above 0.4 is the third, at 160 W.
    const steps = [1.0, 1.2, 1.6, 2.3, 4.0, 7.5].map(
      (x, i) => `    - {power_w: ${100 + 30 * i}, lactate_mmol_l: ${x}}\n`,
    );
    const answer = await send({ session: sessionText(`lactate:\n  mode: cycle\n  steps:\n${steps.join("")}`) });
    const shifted = [1.0, 1.2, 1.59, 2.3, 4.0, 7.5].map(
      (x, i) => `    - {power_w: ${100 + 30 * i}, lactate_mmol_l: ${x}}\n`,
    );
    const beside = await send({ session: sessionText(`lactate:\n  mode: cycle\n  steps:\n${shifted.join("")}`) });
    expect(
      Math.abs((answer.value("lactate_threshold_power") ?? 0) - (beside.value("lactate_threshold_power") ?? 0)),
    ).toBeLessThanOrEqual(1);
  });
});

describe("11 · missing is never zero", () => {
  it("zeros, blanks and dashes in a hundred breaths move no mean by more than their absence does", async () => {
    const marks = ["0", "", "-"];
    const holes = (value: (i: number) => string | null) => (b: Breath) => {
      const i = whole.breaths.indexOf(b);
      if (i % 4 !== 0) return {};
      const mark = value(i);
      return mark === null ? null : { vo2: mark, vco2: mark, ve: mark, hr: mark };
    };
    const marked = await cycle(whole, { edit: holes((i) => marks[(i / 4) % 3] ?? "") });
    const absent = await cycle(whole, { edit: holes(() => null) });
    for (const id of ["vo2_peak", "ventilation_peak", "rer_peak", "heart_rate_peak"])
      expect(Math.abs((marked.value(id) ?? 0) / (absent.value(id) ?? 1) - 1), id).toBeLessThan(0.01);
  });
  it("a channel that dies while uptake looks fine takes its own values with it", async () => {
    const answer = await cycle(whole, { edit: (b) => (b.t > 450 ? { ve: "", petCO2: "" } : {}) });
    expect(answer.value("vo2_peak")).toBeDefined();
    expect(answer.entry("ventilation_peak")?.kind).toBe("not given");
    expect(answer.entry("vt2_vo2")?.kind).toBe("not given");
  });
});

describe("12 · plausibility is part of the schema", () => {
  it.each([
    [
      "mean diastolic of 0",
      "blood_pressure: {readings: [{systolic_mmhg: 118, diastolic_mmhg: 0}]}\n",
      "impossible-value",
    ],
    ["stature in metres", "size: {stature_cm: 1.78}\n", "unit-slip"],
    ["pressure in kPa", "room: {pressure_mmhg: 100.6}\n", "unit-slip"],
    ["oxygen fraction in per cent", "room: {inspired_gas: stated, fio2: 20.93}\n", "unit-slip"],
  ])("%s", async (_, block, code) => {
    const answer = await send({ session: sessionText(block) });
    expect(answer.diagnostics.map((d) => d.code)).toContain(code);
  });
  it("a grip that is the sum of two hands is questioned", async () => {
    const answer = await send({ session: sessionText("strength: {grip: {left_kg: [92], right_kg: [95]}}\n") });
    expect(answer.diagnostics.length).toBeGreaterThan(0);
  });
});
