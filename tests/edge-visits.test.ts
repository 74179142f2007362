/**
 * Visits at the edge of what a laboratory sends, through the whole program: each gives a sensible result or a reason,
 * never a crash, a NaN or an invented number. Expectations are worked by hand or follow from the body that made the
 * file (tests/examiner/body.ts).
 */
import { describe, expect, it } from "vitest";
import type { Results } from "../src/kernel/results.js";
import { type Answer, clientText, type Sent, send, sessionText } from "./examiner/bench.js";
import { type Breath, exercise, mixed, PERSON, raw, truePeak, vapour } from "./examiner/body.js";
import { commaCsv, EXAMINER_LAB, phasesText, rawCsv } from "./examiner/files.js";

const RAMP = { start: 60, rise: 25, stageS: 0 } as const;
const SIZE = "size: {stature_cm: 178, mass_kg: 74, clothing: minimal}\n";
const room = (more = "pressure_mmhg: 755, inspired_gas: room air") =>
  `room: {temperature_c: 21, humidity_pct: 40, ${more}}\n`;
const cart = (test: ReturnType<typeof exercise>) =>
  `incremental:\n  mode: cycle\n  series: a.csv\n  instrument: comma_cart\n${phasesText(test)}`;
const chamber = (test: ReturnType<typeof exercise>, instrument = "chamber") =>
  `incremental:\n  mode: cycle\n  series: r.csv\n  instrument: ${instrument}\n  gas_temperature_c: 24\n${phasesText(test)}`;
const whole = exercise(PERSON, RAMP, 4);
type Edit = Parameters<typeof commaCsv>[1];
const cycle = (more: Partial<Sent> & { blocks?: string; edit?: Edit } = {}) =>
  clean({
    lab: EXAMINER_LAB,
    session: sessionText(`${more.blocks ?? room() + SIZE}${cart(whole)}`),
    files: { "a.csv": commaCsv(whole, more.edit) },
    ...more,
  });
const blocks = (text: string, more: Partial<Sent> = {}) => clean({ session: sessionText(text), ...more });

/** Sends, and holds every answer to the rule that no text of a results file says NaN, Infinity or undefined. */
async function clean(sent: Sent): Promise<Answer> {
  const answer = await send(sent);
  expect(answer.text).not.toMatch(/\bNaN\b|Infinity|\bundefined\b|\[object/);
  return answer;
}
const ids = (answer: Answer) => answer.results?.entries.map((e) => e.id) ?? [];
const norm = (answer: Answer, id: string, table: RegExp) =>
  answer.quantity(id)?.norms?.find((position) => table.test(position.table));

describe("little was done", () => {
  it("a header alone gives the age and nothing else", async () => {
    expect(ids(await blocks(""))).toEqual(["age"]);
  });
  it("only a very high pressure: referral leads, nothing of exercise is said", async () => {
    const answer = await blocks("blood_pressure: {readings: [{systolic_mmhg: 190, diastolic_mmhg: 112}]}\n");
    expect(answer.value("systolic_pressure")).toBe(190);
    expect(answer.verdict("blood_pressure_referral")).not.toBe("within limits");
    expect(answer.verdict("screening_decision")).not.toBe("proceed");
    expect(ids(answer).some((id) => id.startsWith("vo2"))).toBe(false);
  });
  it("only a DXA: masses by hand, indices wait for a stature", async () => {
    const answer = await blocks("dxa: {scanner_maker: hologic, whole: {fat_g: 18000, lean_g: 55000, bmc_g: 2800}}\n");
    expect(answer.value("body_fat_percent")).toBe(23.7); // by hand: 18 000 / 75 800
    expect(answer.value("fat_free_mass")).toBe(57.8);
    expect(answer.because("fat_mass_index")).toBe("Stature was not measured");
  });
  it("a half-empty block says what is missing", async () => {
    expect((await blocks("blood_pressure: {}\n")).because("systolic_pressure")).toMatch(/holds no reading/);
    expect((await blocks("incremental: {mode: cycle}\n")).because("vo2_peak")).toMatch(/no series, stages or bags/);
  });
  it("a session without a clock time is fine", async () => {
    const text = `waymark: session 1\nclient: "c-900"\ndate: 2026-03-02\npurpose: baseline\nsize: {mass_kg: 70}\n`;
    expect((await clean({ session: text })).value("body_mass")).toBe(70);
  });
});

describe("impossible values stop the build", () => {
  it.each([
    ["a diastolic of 0", "blood_pressure: {readings: [{systolic_mmhg: 120, diastolic_mmhg: 0}]}\n"],
    ["a grip of 0", "strength: {grip: {left_kg: [0, 30], right_kg: [32, 33]}}\n"],
    ["a negative skinfold", "skinfolds: {triceps_mm: [-8]}\n"],
  ])("%s", async (_, text) => {
    const answer = await send({ session: sessionText(text) });
    expect(answer.results).toBeUndefined();
    expect(answer.errors.join()).toMatch(/^impossible-value/);
  });
  it("grips that look like the sum of two hands are questioned", async () => {
    const answer = await blocks("strength: {grip: {left_kg: [92], right_kg: [99]}}\n");
    expect(answer.diagnostics.map((d) => d.code)).toContain("unit-slip");
  });
});

describe("people outside the tables", () => {
  it("a child of 12 meets no adult table and no adult equation", async () => {
    const answer = await cycle({ client: clientText({ birth: "2014-01-05" }), blocks: `${room()}${SIZE}` });
    expect(norm(answer, "vo2_peak_per_mass", /kaminsky/)?.notGiven).toMatch(/the age is 12/);
    expect(answer.quantity("body_mass_index")?.norms).toBeUndefined();
    expect(answer.because("heart_rate_max_predicted")).toBe("age is 12, but the method covers 18 to 90 years");
    const signs = answer.rows("maximality_criteria").filter((row) => row.source === "Wagner 2020");
    expect(signs.map((row) => row.outcome)).toEqual(["not measurable", "not measurable", "not measurable"]);
  });
  it("a refused age is printed with four digits, not sixteen", async () => {
    const answer = await blocks("skinfolds: {chest_mm: [8], abdomen_mm: [12], thigh_mm: [12]}\n", {
      client: clientText({ birth: "2014-01-05" }),
    });
    expect(answer.because("body_density_three_site")).toMatch(/^age is 12\.15, but the method covers 18 to /);
  });
  it("a man of 95 has no predicted maximal heart rate and no percentile", async () => {
    const answer = await cycle({ client: clientText({ birth: "1931-01-05" }) });
    expect(answer.because("heart_rate_percent_predicted")).toMatch(/age is 95/);
    expect(norm(answer, "vo2_peak_per_mass", /kaminsky/)?.notGiven).toMatch(/covers ages 20 to 89/);
  });
  it("a pregnant woman has no class of body mass index or waist", async () => {
    const answer = await blocks(
      "size: {stature_cm: 165, mass_kg: 70, waist_cm: 92, waist_site: midpoint, pregnant: true}\n",
      {
        client: clientText({ sex: "female" }),
      },
    );
    expect(answer.because("body_mass_index")).toMatch(/pregnancy/);
    expect(answer.because("waist_to_height")).toMatch(/pregnancy/);
    expect(answer.quantity("waist")?.norms?.every((position) => position.category === undefined) ?? true).toBe(true);
  });
  it("a scan in pregnancy is put in no reference", async () => {
    const scan = (pregnant: boolean) =>
      blocks(
        `size: {stature_cm: 165, mass_kg: 66, pregnant: ${pregnant}}\ndxa: {scanner_maker: hologic, pregnancy: ${pregnant ? "possible" : "excluded"}, whole: {fat_g: 18000, lean_g: 45000, bmc_g: 2600}}\n`,
        { client: clientText({ sex: "female" }) },
      );
    const norms = async (pregnant: boolean) => (await scan(pregnant)).quantity("body_fat_percent")?.norms ?? [];
    expect((await norms(true)).map((p) => [p.percentile, p.notGiven])).toEqual([
      [undefined, "it does not hold in pregnancy"],
    ]);
    expect((await norms(false)).some((p) => p.percentile !== undefined)).toBe(true);
  });
  it("a woman on the cycle gets no percentile by default, and the German band when it is chosen", async () => {
    const woman = { client: clientText({ sex: "female" }) };
    const plain = await cycle(woman);
    expect(plain.quantity("vo2_peak_per_mass")?.norms?.some((p) => p.percentile !== undefined)).toBe(false);
    expect(plain.text).not.toMatch(/vo2peak-cycle-women-kaminsky-2022/);
    expect(norm(plain, "vo2_peak_per_mass", /cycle-men/)?.notGiven).toMatch(/it covers men only/);
    const choice = `${EXAMINER_LAB}choices: {vo2_reference: ship-2009}\n`;
    const german = await cycle({ ...woman, lab: choice });
    expect(german.quantity("vo2_peak_per_mass")?.norms?.some((p) => /ship|koch/i.test(p.table))).toBe(true);
  });
  it("body mass missing: uptake in litres, nothing per kilogram; 38 kg: given, and shown as unusual", async () => {
    const none = await cycle({ blocks: room() });
    expect(none.value("vo2_peak")).toBeGreaterThan(3);
    expect(none.because("vo2_peak_per_mass")).toBe("Body mass was not measured");
    const light = await cycle({ blocks: `${room()}size: {stature_cm: 178, mass_kg: 34, clothing: minimal}\n` });
    expect(light.diagnostics.map((d) => d.code)).toContain("unusual-value");
    expect(light.value("body_mass_index")).toBe(10.7); // by hand: 34 / 1.78²
  });
  it("a beta blocker stands beside everything that rests on a predicted heart rate", async () => {
    const answer = await cycle({ client: clientText({ more: "medication: [beta blocker]\n" }) });
    expect(answer.quantity("heart_rate_percent_predicted")?.note).toMatch(/beta blocker/);
    const rates = answer.rows("maximality_criteria").filter((row) => /^Heart rate/.test(String(row.criterion)));
    expect(rates.map((row) => row.outcome)).toEqual(["not measurable", "not measurable"]);
  });
});

describe("air that is not room air near sea level", () => {
  // Conversions are held against the body's own uptake and ventilation; 2 in the last digit for the file's rounding.
  it.each([
    [0.14, 755, 30, "chamber"],
    [0.12, 755, 10, "fast_chamber"],
    [0.16, 500, 30, "chamber"],
    [0.2093, 500, 10, "fast_chamber"],
  ])("raw fractions of %f oxygen at %f mmHg, ATPS volumes every %f s", async (fio2, pressureMmhg, w, instrument) => {
    const person = { ...PERSON, fio2, pressureMmhg, vo2Peak: 2.8, vt1: 1.6, vt2: 2.25 };
    const test = exercise(person, { start: 50, rise: 20, stageS: 0 }, 11);
    const means = mixed(test.breaths, w);
    const gas = `pressure_mmhg: ${pressureMmhg}, inspired_gas: stated, fio2: ${fio2}, fico2: 0.0003`;
    const answer = await clean({
      lab: EXAMINER_LAB,
      session: sessionText(`${room(gas)}${SIZE}${chamber(test, instrument)}`),
      files: { "r.csv": rawCsv(means, person, 24) },
    });
    const inside = means.filter((b) => b.t > test.startS + w && b.t <= test.stopS);
    const windows = inside.slice(0, inside.length - 30 / w + 1).map((_, i) => inside.slice(i, i + 30 / w));
    const mean = (part: readonly Breath[], key: "vo2" | "vco2" | "ve") =>
      part.reduce((sum, b) => sum + b[key], 0) / part.length;
    const best = windows.reduce((a, b) => (mean(b, "vo2") > mean(a, "vo2") ? b : a));
    expect(answer.value("vo2_peak")).toBeCloseTo(mean(best, "vo2"), 1);
    expect(Math.abs((answer.value("vo2_peak") ?? 0) - mean(best, "vo2"))).toBeLessThan(0.02);
    expect(Math.abs((answer.value("ventilation_peak") ?? 0) / mean(best, "ve") - 1)).toBeLessThan(0.003);
    expect(Math.abs((answer.value("rer_peak") ?? 0) - mean(best, "vco2") / mean(best, "vo2"))).toBeLessThan(0.012);
    for (const position of answer.quantity("vo2_peak_per_mass")?.norms ?? []) {
      expect(position.percentile).toBeUndefined();
      expect(position.notGiven).toMatch(/room air|near sea level/);
    }
    for (const position of answer.quantity("vo2_peak")?.norms ?? []) expect(position.predicted).toBeUndefined();
  });
  it("the vapour pressure of this test agrees with a printed table", () => {
    // Saturated vapour at 20, 24 and 37 °C: 17.5, 22.4 and 47.1 mmHg (CRC Handbook, from memory).
    expect([20, 24, 37].map((c) => Math.round(10 * vapour(c)) / 10)).toEqual([17.5, 22.3, 47]);
  });
  it("without a pressure nothing is converted, and without stated gas nothing is computed", async () => {
    const files = { "r.csv": rawCsv(mixed(whole.breaths, 30), PERSON, 24) };
    const lab = EXAMINER_LAB;
    const open = await clean({
      lab,
      files,
      session: sessionText(`${room("inspired_gas: room air")}${SIZE}${chamber(whole)}`),
    });
    expect(open.because("vo2_peak")).toMatch(/station pressure .* is not stated, and there is no default/);
    expect(open.because("ventilation_peak")).toMatch(/station pressure/);
    expect(open.value("heart_rate_peak")).toBeGreaterThan(170);
    const unsaid = await clean({
      lab,
      files,
      session: sessionText(`${room("pressure_mmhg: 755")}${SIZE}${chamber(whole)}`),
    });
    expect(unsaid.because("vo2_peak")).toMatch(/does not state what was breathed in/);
  });
  it("oxygen-enriched gas gives no uptake, from fractions or from the instrument's own", async () => {
    const gas = room("pressure_mmhg: 755, inspired_gas: stated, fio2: 0.5, fico2: 0.0003");
    const own = await cycle({ blocks: `${gas}${SIZE}` });
    expect(own.because("vo2_peak")).toMatch(/inspired oxygen was 0\.5/);
    expect(own.because("vt1_vo2")).toMatch(/inspired oxygen was 0\.5/);
    const person = { ...PERSON, fio2: 0.5 };
    const fractions = await clean({
      lab: EXAMINER_LAB,
      session: sessionText(`${gas}${SIZE}${chamber(whole)}`),
      files: { "r.csv": rawCsv(mixed(whole.breaths, 30), person, 24) },
    });
    expect(fractions.because("vo2_peak")).toMatch(/oxygen-enriched/);
  });
});

describe("tests that went wrong or were short", () => {
  it("two minutes: a 30-s peak, no threshold, no plateau, no maximum, no percentile", async () => {
    const test = exercise({ ...PERSON, stopAt: 0.45 }, { start: 60, rise: 60, stageS: 0 }, 4);
    const answer = await clean({
      lab: EXAMINER_LAB,
      session: sessionText(`${room()}${SIZE}${cart(test)}`),
      files: { "a.csv": commaCsv(test) },
    });
    expect(Math.abs((answer.value("vo2_peak") ?? 0) - truePeak(test))).toBeLessThan(0.15);
    expect(answer.because("vt1_vo2")).toMatch(/12 are needed/);
    expect(answer.because("vt2_vo2")).toMatch(/12 are needed/);
    expect(answer.entry("plateau")?.kind).toBe("not given");
    expect(answer.verdict("maximality")).toBe("VO2peak");
    expect(norm(answer, "vo2_peak_per_mass", /kaminsky/)?.notGiven).toMatch(/exchange ratio of 1\.00 or more/);
    expect(answer.because("chronotropic_index")).toMatch(/after a maximal effort only/);
  });
  it("a strap that died half-way leaves no peak heart rate and nothing built on one", async () => {
    const answer = await cycle({ edit: (b) => (b.t > 500 ? { hr: 0 } : {}) });
    expect(answer.because("heart_rate_peak")).toMatch(
      /from 499 to \d+ s: the peak may lie in the part that is missing/,
    );
    for (const id of ["heart_rate_percent_predicted", "chronotropic_index", "oxygen_pulse_peak"])
      expect(answer.entry(id)?.kind, id).toBe("not given");
    expect(answer.value("vt1_heart_rate")).toBeDefined(); // before it died
    expect(answer.value("vo2_peak")).toBe((await cycle()).value("vo2_peak"));
  });
  it("a heart rate that stands still is no heart rate", async () => {
    const answer = await cycle({ edit: (b) => (b.t > 500 ? { hr: 131 } : {}) });
    expect(answer.because("heart_rate_peak")).toMatch(/stood still/);
  });
  it("a dead CO2 channel leaves uptake and takes ratio and thresholds with it", async () => {
    const answer = await cycle({ edit: (b) => (b.t > 400 ? { vco2: "-" } : {}) });
    expect(answer.value("vo2_peak")).toBe((await cycle()).value("vo2_peak"));
    for (const id of ["rer_peak", "vt1_vo2", "vt2_vo2", "vco2_at_peak"])
      expect(answer.entry(id)?.kind, id).toBe("not given");
  });
  it("heart rate alone: its peak and the load, and no uptake out of it", async () => {
    const answer = await blocks(
      `${SIZE}incremental:\n  mode: cycle\n  protocol: {kind: step, stage_length_s: 120}\n  stages:\n    - {power_w: 100, heart_rate_bpm: 120}\n    - {power_w: 150, heart_rate_bpm: 145}\n    - {power_w: 200, heart_rate_bpm: 170}\n`,
    );
    expect(answer.value("heart_rate_peak")).toBe(170);
    expect(answer.value("power_peak")).toBe(200);
    for (const id of ["vo2_peak", "vt1_vo2", "maximality", "plateau"])
      expect(answer.entry(id)?.kind, id).toBe("not given");
  });
  it("typed stage means three minutes apart are not 15-s means", async () => {
    const stage = (v: number, o2: number, co2: number, ve: number) =>
      `    - {speed_km_h: ${v}, vo2_l_min: ${o2}, vco2_l_min: ${co2}, ventilation_l_min: ${ve}, heart_rate_bpm: ${100 + 5 * v}}\n`;
    const rows = Array.from({ length: 14 }, (_, i) =>
      stage(
        6 + 0.7 * i,
        Number((1.4 + 0.16 * i).toFixed(2)),
        Number((1.2 + 0.16 * i + 0.12 * Math.max(0, i - 6)).toFixed(2)),
        35 + 5 * i,
      ),
    );
    const answer = await blocks(
      `${SIZE}incremental:\n  mode: treadmill\n  protocol: {kind: step, stage_length_s: 180}\n  stages:\n${rows.join("")}`,
    );
    expect(answer.value("vo2_peak")).toBe(3.48);
    expect(answer.because("vt1_vo2")).toMatch(/180 s apart/);
  });
  it("Douglas bags by hand", async () => {
    const answer = await blocks(
      `${room("pressure_mmhg: 750, inspired_gas: room air")}size: {mass_kg: 70, stature_cm: 175}\nincremental:\n  mode: cycle\n  bags:\n    - {start_s: 120, duration_s: 60, volume_l: 60, o2_pct: 16.4, co2_pct: 4.2, gas_temperature_c: 22, power_w: 150}\n    - {start_s: 300, duration_s: 60, volume_l: 95, o2_pct: 16.6, co2_pct: 4.4, gas_temperature_c: 22, power_w: 220}\n`,
    );
    // By hand: 95 · (750 − 19.8)/760 · 273.15/295.15 = 84.47 L STPD; VI = 84.47 · 0.790/0.7904 = 84.43;
    // VO2 = 84.43 · 0.2093 − 84.47 · 0.166 = 3.65; VCO2 = 84.47 · 0.044 − 0.03 = 3.69; VE BTPS = 84.47 · 863/703 = 103.7
    expect(answer.value("vo2_peak")).toBeCloseTo(3.65, 1);
    expect(answer.value("ventilation_peak")).toBeCloseTo(103.7, 0);
    expect(answer.value("rer_peak")).toBeCloseTo(1.01, 1);
  });
  it("stages downhill, level and uphill keep their grades", async () => {
    const answer = await blocks(
      `${SIZE}incremental:\n  mode: treadmill\n  protocol: {kind: step, stage_length_s: 240}\n  stages:\n    - {speed_km_h: 6, grade_pct: -10, vo2_l_min: 0.9, heart_rate_bpm: 90, confirmed: {grade_pct: downhill on purpose}}\n    - {speed_km_h: 6, grade_pct: 0, vo2_l_min: 1.1, heart_rate_bpm: 100}\n    - {speed_km_h: 6, grade_pct: 10, vo2_l_min: 2.2, heart_rate_bpm: 140}\n`,
    );
    expect(answer.rows("incremental_stages").map((row) => row.grade_pct)).toEqual([-10, 0, 10]);
    expect(answer.value("grade_peak")).toBe(10);
    expect(answer.value("vo2_peak")).toBe(2.2);
  });
});

describe("resting values typed by hand", () => {
  it("Weir by hand, and no series is imagined", async () => {
    const answer = await blocks("rest: {posture: supine, typed: {vo2_ml_min: 240, vco2_ml_min: 200}}\n");
    expect(answer.value("resting_energy_expenditure")).toBe(1681); // 1.44 · (3.941 · 240 + 1.106 · 200) = 1680.5
    expect(answer.value("resting_rer")).toBe(0.83);
    expect(answer.because("rest_trace")).toMatch(/typed/);
    expect(answer.because("resting_energy_predicted")).toBe("body mass and stature were not measured");
  });
  it("a ratio of 1.3 at rest gives no fuel and no energy", async () => {
    const answer = await blocks("rest: {typed: {vo2_ml_min: 240, vco2_ml_min: 312}}\n");
    expect(answer.value("resting_rer")).toBe(1.3);
    for (const id of ["resting_energy_expenditure", "resting_fat_oxidation", "resting_carbohydrate_share"])
      expect(answer.because(id), id).toMatch(/overbreathing or of an analyser error/);
  });
});

describe("lactate curves without a threshold", () => {
  const steps = (values: readonly number[]) =>
    `lactate:\n  mode: cycle\n  step_duration_s: 240\n  steps:\n${values
      .map((x, i) => `    - {power_w: ${100 + 30 * i}, lactate_mmol_l: ${x}, heart_rate_bpm: ${110 + 10 * i}}\n`)
      .join("")}`;
  it.each([
    ["three steps", [1.1, 2.2, 5.0], /number of steps with lactate is 3/],
    ["equal lactates", [1.2, 1.2, 1.2, 1.2, 1.2, 1.2], /last step or absent/],
    ["falling lactates", [4.5, 3.5, 2.5, 2.0, 1.5, 1.2], /last step or absent/],
  ])("%s", async (_, values, reason) => {
    const answer = await blocks(steps(values));
    expect(answer.because("lactate_threshold_power")).toMatch(reason);
    const given = answer.rows("lactate_definitions").filter((row) => row.power_w !== null);
    expect(given).toEqual([]);
  });
});

describe("visits after another", () => {
  const uphill = (o2: number) =>
    `${SIZE}incremental:\n  mode: treadmill\n  protocol: {kind: step, stage_length_s: 180}\n  stages:\n    - {speed_km_h: 8, vo2_l_min: 2.1, vco2_l_min: 1.8, heart_rate_bpm: 130}\n    - {speed_km_h: 14, vo2_l_min: ${o2}, vco2_l_min: ${o2 + 0.3}, heart_rate_bpm: 185}\n`;
  it("a retest of another mode is never compared", async () => {
    const first = (await cycle()).results as Results;
    const before: Results = { ...first, date: "2025-12-01" };
    const answer = await blocks(uphill(3.9), { earlier: [before] });
    expect(answer.verdict("change_vo2_peak")).toBe("not comparable");
    expect(answer.because("change_vo2_peak")).toMatch(/cycle.*treadmill/);
    const change = answer.entry("change_vo2_peak");
    expect(change?.kind === "change" && change.low).toBeUndefined();
  });
  it("six visits with gaps: each is compared with the baseline, and the trend holds what was measured", async () => {
    const earlier: Results[] = [];
    for (const [month, o2] of [
      ["01", 3.4],
      ["02", undefined],
      ["04", 3.5],
      ["05", undefined],
      ["09", 3.6],
    ] as const) {
      const text = o2 === undefined ? SIZE : uphill(o2);
      const made = (await blocks(text, { earlier })).results as Results;
      earlier.push({ ...made, date: `2025-${month}-10`, purpose: month === "01" ? "baseline" : "retest" });
    }
    const session = sessionText(uphill(3.7)).replace("purpose: baseline", "purpose: retest");
    const answer = await clean({ session, earlier });
    const trend = answer.rows("trend_vo2_peak");
    expect(trend.map((row) => row.value)).toEqual([3.4, 3.5, 3.6, 3.7]);
    expect(trend.map((row) => row.date)).toEqual(["2025-01-10", "2025-04-10", "2025-09-10", "2026-03-02"]);
    const change = answer.entry("change_vo2_peak");
    expect(change?.kind === "change" && [change.before, change.now]).toEqual([3.4, 3.7]);
  });
});

it("what an analyser would read goes there and back (nitrogen balance by hand)", () => {
  const still = whole.still[700];
  if (still === undefined) throw new Error("the test lasts that long");
  const read = raw(still, PERSON, 24);
  const expired = still.ve * ((PERSON.pressureMmhg - 47) / 863);
  const inspired = (expired * (1 - read.feo2 - read.feco2)) / (1 - 0.2093 - 0.0003);
  expect(inspired * 0.2093 - expired * read.feo2).toBeCloseTo(still.vo2, 6);
  expect(expired * read.feco2 - inspired * 0.0003).toBeCloseTo(still.vco2, 6);
});
