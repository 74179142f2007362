/**
 * One test of an invented body (tests/examiner/body.ts), written down in many ways. What the client did stays the same,
 * so what is said of it stays the same: no number may hang on the clock, the order of columns, the unit or the quotes.
 */
import { beforeAll, describe, expect, it } from "vitest";
import type { Entry } from "../src/kernel/measure.js";
import { type Answer, send, sessionText } from "./examiner/bench.js";
import { type Breath, exercise, PERSON } from "./examiner/body.js";

type Row = Readonly<Record<string, string>>;
const CHANNELS: readonly (readonly [column: string, key: keyof Breath, decimals: number])[] = [
  ["t", "t", 3],
  ["VO2", "vo2", 4],
  ["VCO2", "vco2", 4],
  ["VE", "ve", 2],
  ["AF", "bf", 2],
  ["PETO2", "petO2", 2],
  ["PETCO2", "petCO2", 2],
  ["HF", "hr", 0],
  ["W", "power", 1],
];
const test = exercise(PERSON, { start: 60, rise: 25, stageS: 0 }, 4);
const rows: readonly Row[] = test.breaths.map((b) =>
  Object.fromEntries(CHANNELS.map(([column, key, decimals]) => [column, b[key].toFixed(decimals)])),
);
const csv = (of: readonly Row[], columns = CHANNELS.map(([name]) => name), end = "\n") =>
  [columns, ...of.map((row) => columns.map((name) => row[name] ?? ""))].map((cells) => cells.join(",") + end).join("");
const edited = (edit: (row: Row, i: number) => Row) => csv(rows.map(edit));
const at = (row: Row) => Number(row.t);
const times = (row: Row, factor: number, ...columns: string[]): Row => ({
  ...row,
  ...Object.fromEntries(columns.map((name) => [name, (factor * Number(row[name])).toFixed(4)])),
});

interface Written {
  readonly file?: string;
  /** Start of the clock, s. */
  readonly clock?: number;
  readonly phases?: string;
  readonly timeUnit?: string;
  readonly gasUnit?: string;
}
const lab = ({ timeUnit = "s", gasUnit = "L/min" }: Written) => `waymark: laboratory 1
name: Invented laboratory
altitude_m: 100
instruments:
  cart:
    kind: gas exchange system
    mixing: breath by breath
    columns:
      time_s: {column: t, unit: ${timeUnit}}
      vo2_l_min: {column: VO2, unit: ${gasUnit}, condition: STPD}
      vco2_l_min: {column: VCO2, unit: ${gasUnit}, condition: STPD}
      ventilation_l_min: {column: VE, unit: L/min, condition: BTPS}
      breathing_frequency_per_min: {column: AF, unit: 1/min}
      peto2_mmhg: {column: PETO2, unit: mmHg}
      petco2_mmhg: {column: PETCO2, unit: mmHg}
      heart_rate_bpm: {column: HF, unit: 1/min}
      power_w: {column: W, unit: W}
`;
const session = ({ clock = 0, phases }: Written) =>
  sessionText(`room: {temperature_c: 21, humidity_pct: 40, pressure_mmhg: 755, inspired_gas: room air}
size: {stature_cm: 178, mass_kg: 74, clothing: minimal}
incremental:
  mode: cycle
  series: a.csv
  instrument: cart
  phases: {${
    phases ??
    `rest_start_s: ${clock}, warm_up_start_s: ${clock + 60}, incremental_start_s: ${clock + test.startS}, recovery_start_s: ${clock + test.stopS}`
  }}
`);
const written = (how: Written): Promise<Answer> =>
  send({ lab: lab(how), session: session(how), files: { "a.csv": how.file ?? csv(rows) } });

/** What is said of each measure, and what its tables hold. */
const said = (answer: Answer): Map<string, unknown> =>
  new Map((answer.results?.entries ?? []).map((e) => [e.id, saying(e)]));
const saying = (e: Entry): unknown =>
  e.kind === "quantity" ? e.value : e.kind === "table" ? e.rows : "because" in e ? e.because : e;
const differing = (a: Answer, b: Answer): string[] => {
  const [x, y] = [said(a), said(b)];
  return [...new Set([...x.keys(), ...y.keys()])].filter(
    (id) => JSON.stringify(x.get(id)) !== JSON.stringify(y.get(id)),
  );
};

const clockText = (seconds: number) => {
  const minutes = Math.floor(seconds / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}:${(seconds - 60 * minutes).toFixed(3).padStart(6, "0")}`;
};
let plain: Answer;
beforeAll(async () => {
  plain = await written({});
  expect(plain.errors).toEqual([]);
  for (const id of ["vo2_peak", "vt1_vo2", "vt2_vo2", "heart_rate_recovery_1_min"])
    expect(plain.value(id)).toBeGreaterThan(0);
});

describe("nothing at all changes with", () => {
  const quoted = edited((row) => Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, `"${cell}"`])));
  it.each<[string, Written]>([
    ["ends of lines", { file: csv(rows, undefined, "\r\n") }],
    ["quotes", { file: quoted }],
    ["the order of columns", { file: csv(rows, ["W", "HF", "VE", "t", "VCO2", "AF", "VO2", "PETCO2", "PETO2"]) }],
    [
      "the unit of uptake",
      {
        gasUnit: "mL/min",
        file: edited((row) => times(row, 1000, "VO2", "VCO2")),
      },
    ],
    ["a clock in hours", { timeUnit: "h:mm:ss", file: edited((row) => ({ ...row, t: clockText(at(row)) })) }],
  ])("%s", async (_, how) => expect(differing(await written(how), plain)).toEqual([]));
});

describe("no finding changes with", () => {
  /** Tables that show the series itself, row by row, on its own clock. */
  const OF_THE_SERIES = [
    "incremental_phases",
    "incremental_stages",
    "incremental_bins",
    "incremental_excluded",
    "incremental_data",
  ];
  it.each<[string, Written, readonly string[]]>([
    [
      "a clock that started earlier",
      { clock: 600, file: edited((row) => ({ ...row, t: (at(row) + 600).toFixed(3) })) },
      [],
    ],
    ["rows written twice", { file: csv(rows.flatMap((row, i) => (i % 97 === 50 ? [row, row] : [row]))) }, []],
    ["blank lines", { file: csv(rows).replace(/(?:.*\n){40}/g, "$&\n") }, []],
    [
      "a mask taken off at the stop",
      { file: edited((row) => (at(row) > test.stopS ? { ...row, VO2: "0", VCO2: "0", VE: "0" } : row)) },
      [],
    ],
    [
      "a recovery that was not recorded",
      { file: csv(rows.filter((row) => at(row) <= test.stopS)) },
      ["heart_rate_recovery_1_min", "heart_rate_recovery_2_min"],
    ],
    [
      "a rest that was not recorded",
      {
        file: csv(rows.filter((row) => at(row) > 60)),
        phases: `warm_up_start_s: 60, incremental_start_s: ${test.startS}, recovery_start_s: ${test.stopS}`,
      },
      ["chronotropic_index"],
    ],
  ])("%s", async (_, how, but) => {
    expect(differing(await written(how), plain).filter((id) => !OF_THE_SERIES.includes(id))).toEqual(but);
  });
  it("no phase is made up for the part of a breath before the first stated one", async () => {
    const phases = `warm_up_start_s: 60, incremental_start_s: ${test.startS}, recovery_start_s: ${test.stopS}`;
    const answer = await written({ phases, file: csv(rows.filter((row) => at(row) > 60)) });
    expect(answer.rows("incremental_phases").map((row) => row.phase)).toEqual(["warm-up", "incremental", "recovery"]);
  });
});

describe("what changes with the body changes by as much", () => {
  it("a tenth more gas is a tenth more uptake, at the same times and loads", async () => {
    const more = await written({ file: edited((row) => times(row, 1.1, "VO2", "VCO2", "VE")) });
    for (const id of ["vo2_peak", "vco2_at_peak", "ventilation_peak", "vt1_vo2", "vt2_vo2", "oxygen_pulse_peak"])
      expect((more.value(id) as number) / (plain.value(id) as number), id).toBeCloseTo(1.1, 2);
    for (const id of [
      "rer_peak",
      "vt1_time",
      "vt2_time",
      "vt1_power",
      "vt2_power",
      "vt1_percent_of_peak",
      "ventilation_vco2_slope",
    ])
      expect(more.value(id), id).toBe(plain.value(id));
  });
  it("times of thresholds count from the start of the incremental phase", async () => {
    const moment = (id: string, vo2: number) => {
      const still = test.still.filter((b) => b.t >= test.startS && b.t <= test.stopS);
      return (still.find((b) => b.vo2 >= vo2) as Breath).t - test.startS - (plain.value(id) as number);
    };
    // The course is smoothed over a minute; the body's own uptake passes there within that.
    expect(Math.abs(moment("vt1_time", plain.value("vt1_vo2") as number))).toBeLessThan(20);
    expect(Math.abs(moment("vt2_time", plain.value("vt2_vo2") as number))).toBeLessThan(20);
  });
  it("a hole in the window of the peak is told", async () => {
    const hole = (row: Row) => at(row) > test.stopS - 40 && at(row) < test.stopS - 20;
    const answer = await written({ file: csv(rows.filter((row) => !hole(row))) });
    expect(answer.quantity("vo2_peak")?.note).toMatch(/^no uptake was recorded for 1\d s of the window/);
    expect(plain.quantity("vo2_peak")?.note).toBeUndefined();
  });
});
