/** One threshold into the notebook: the combined value with its interval, what was measured there, and the methods. */
import type { Breaths } from "../../kernel/breaths.js";
import type { Cell, Column, MeasurementError } from "../../kernel/measure.js";
import type { Extra, FormulaName, Notebook, Ref } from "../../kernel/notebook.js";
import * as share from "../arithmetic/share-percent.js";
import * as perMass from "../incremental/uptake-per-mass.js";
import { type Combined, info as combined } from "./combined-threshold.js";
import type { Thresholds, Verdict } from "./find.js";
import { type Load, loadsAt, rpeAt } from "./load-at.js";
import { isFound, type Reading } from "./points.js";
import { info as intoPhase, timeIntoPhase } from "./time-into-phase.js";
import { momentOf, smoothCourse, info as valueAt } from "./value-at-threshold.js";

const COLUMNS: readonly Column[] = [
  { key: "method", title: "Method" },
  { key: "vo2_l_min", title: "VO2", unit: "L/min", decimals: 2 },
  { key: "low_l_min", title: "95 % low", unit: "L/min", decimals: 2 },
  { key: "high_l_min", title: "95 % high", unit: "L/min", decimals: 2 },
  { key: "identified", title: "Identified" },
  { key: "because", title: "Why, or why not" },
];
/** Common practice: uptake follows a ramp with a delay of half a minute to a minute. */
const LAGS =
  "the load when uptake got there: uptake lags half a minute to a minute behind rising work, so steady work at this load takes up more";
const fromMeansOf = (seconds: number) => `95 % interval: profile of the fits on ${Math.round(seconds)}-s means`;

export interface Place {
  readonly name: "vt1" | "vt2";
  readonly breaths: Breaths;
  readonly found: Thresholds;
  readonly fromS: number;
  readonly toS: number;
  /** Seconds by which the load is read earlier (choice). */
  readonly lagS: number;
  /** Work rose without steady stages. */
  readonly rising: boolean;
  /** Length of the means that were fitted, s: 15, or the instrument's own where those are longer. */
  readonly meanS: number;
}

export function writeThreshold(book: Notebook, place: Place): void {
  const { name, found, fromS, toS } = place;
  const verdict = found[name];
  const readings = name === "vt1" ? found.vt1Readings : found.vt2Readings;
  const refs: Ref[] = [
    { name: "incremental_phase", value: `${Math.round(fromS)} to ${Math.round(toS)}`, unit: "s" },
    { name: `intervals_of_${Math.round(place.meanS)}_s`, value: found.points.bins.n, unit: "" },
  ];
  if ("because" in verdict) book.withhold(`${name}_vo2`, verdict.because);
  else {
    const methods: Ref = { name: "methods", value: verdict.used.join(", "), unit: "" };
    book.found(
      `${name}_vo2`,
      verdict.vo2,
      combined,
      [...refs, methods],
      errorOf(verdict, place.meanS, (v) => v),
    );
    writeShares(book, name, verdict, place.meanS);
  }
  writePlace(book, place, verdict);
  book.table(
    `${name}_methods`,
    COLUMNS,
    readings.map((reading) => rowOf(reading, verdict)),
    combined,
    refs,
    noteOf(verdict, readings),
  );
}

const errorOf = (t: Combined, meanS: number, at: (vo2: number) => number): Extra => ({
  error: { low: at(t.low), high: at(t.high), from: fromMeansOf(meanS) } satisfies MeasurementError,
});

function writeShares(book: Notebook, name: "vt1" | "vt2", t: Combined, meanS: number): void {
  const mass = book.value("body_mass");
  const peak = book.value("vo2_peak");
  book.compute(
    `${name}_vo2_per_mass`,
    perMass.info,
    [`${name}_vo2`, "body_mass"],
    mass === undefined ? {} : errorOf(t, meanS, (v) => (1000 * v) / mass),
  );
  book.compute(
    `${name}_percent_of_peak`,
    share.info,
    [`${name}_vo2`, "vo2_peak"],
    peak === undefined ? {} : errorOf(t, meanS, (v) => (100 * v) / peak),
  );
}

/** Time, heart rate, load and perceived exertion at the threshold. */
function writePlace(book: Notebook, place: Place, verdict: Verdict): void {
  const { name, breaths, found, lagS } = place;
  const { bins, x } = found.points;
  const missing = `the ${name === "vt1" ? "first" : "second"} ventilatory threshold is not given`;
  const loads: readonly Load[] = ["speed", "grade", "power"];
  if ("because" in verdict) {
    book.withhold(`${name}_heart_rate`, missing);
    for (const load of loads)
      if (loadsAt(breaths, load, place.fromS, place.toS)) book.withhold(`${name}_${load}`, missing);
    return;
  }
  const moments = { at: verdict.vo2, low: verdict.low, high: verdict.high };
  const at = momentOf(bins.time, x, moments.at);
  const low = momentOf(bins.time, x, moments.low);
  const high = momentOf(bins.time, x, moments.high);
  const refs: Ref[] = [`${name}_vo2`];
  const write = (
    id: Parameters<Notebook["found"]>[0],
    read: (moment: number) => number | undefined,
    why: string,
    more: Ref[] = [],
    beside: Extra = {},
    formula: FormulaName = valueAt,
  ) => {
    const value = at === undefined ? undefined : read(at);
    if (value === undefined) return book.withhold(id, why);
    const a = low === undefined ? undefined : read(low);
    const b = high === undefined ? undefined : read(high);
    const error: Extra =
      a === undefined || b === undefined
        ? { note: ["its interval reaches beyond what was measured", beside.note].filter(Boolean).join("; ") }
        : { ...beside, error: { low: Math.min(a, b), high: Math.max(a, b), from: fromMeansOf(place.meanS) } };
    book.found(id, value, formula, [...refs, ...more], error);
  };
  const start: Ref = { name: "incremental_start", value: Math.round(place.fromS), unit: "s" };
  const outside = "the threshold lies outside the fitted part of the test";
  write(`${name}_time`, (t) => timeIntoPhase(t, place.fromS), outside, [start], {}, intoPhase);
  write(`${name}_heart_rate`, smoothCourse(bins.time, bins.heartRate), "heart rate was not recorded there");
  const rising = lagS === 0 && place.rising ? { note: LAGS } : {};
  const lag: Ref[] = lagS === 0 ? [] : [{ name: "load_read_earlier_by", value: lagS, unit: "s" }];
  for (const load of loads) {
    const read = loadsAt(breaths, load, place.fromS, place.toS);
    if (read !== undefined)
      write(`${name}_${load}`, (t) => read(t - lagS), `${load} was not recorded there`, lag, rising);
  }
  if (at !== undefined && breaths.rpe.some(Number.isFinite))
    write(`${name}_rpe`, (t) => rpeAt(breaths, t), "perceived exertion was not asked on both sides of it");
}

function rowOf(reading: Reading, verdict: Verdict): Cell[] {
  if (!isFound(reading)) return [reading.method, null, null, null, "no", reading.because];
  const out = !("because" in verdict) && verdict.leftOut.includes(reading.method);
  return [
    reading.method,
    reading.vo2,
    reading.low,
    reading.high,
    "yes",
    out ? "left out: its interval does not hold the weighted median" : "",
  ];
}

function noteOf(verdict: Verdict, readings: readonly Reading[]): string {
  const found = readings.filter(isFound);
  if (found.length < 2) return `${found.length} of ${readings.length} methods identify it.`;
  const values = found.map((reading) => reading.vo2);
  const spread = Math.max(...values) - Math.min(...values);
  const used = "because" in verdict ? "none used" : `used: ${verdict.used.join(", ")}`;
  return `${found.length} of ${readings.length} methods identify it, ${spread.toFixed(2)} L/min apart; ${used}.`;
}
