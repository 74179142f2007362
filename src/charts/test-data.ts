/**
 * What the panels of an incremental test are drawn from: the 15-s bins, the phases, the thresholds with their
 * intervals, and the raw breaths. Panels pick and order; they compute nothing but the unit of the time axis.
 */

import { quantityOf } from "../kernel/entries.js";
import type { ChartInput, Datum } from "../kernel/figure.js";
import type { Cell, Column, Table } from "../kernel/measure.js";
import type { Results } from "../kernel/results.js";
import type { Channel, Series } from "../kernel/series.js";
import type { Speech } from "../kernel/speech.js";
import { has, numberOf, records, table } from "./entries.js";

export interface Threshold {
  readonly name: string;
  readonly at: number;
  readonly low?: number;
  readonly high?: number;
}

export interface TestData {
  readonly bins: Table;
  readonly rows: readonly Readonly<Record<string, Cell>>[];
  readonly speech: Speech;
  readonly results: Results;
  readonly breaths: Series | undefined;
}

/** Gas condition a recorded volume must have to stand on the same axis as the results. */
const DRAWN_AS: Readonly<Partial<Record<Channel, string>>> = {
  vo2_l_min: "STPD",
  vco2_l_min: "STPD",
  ventilation_l_min: "BTPS",
  tidal_volume_l: "BTPS",
};

const prepared = new WeakMap<ChartInput, TestData | undefined>();

/** What the panels share, made once for all of them. */
export function testData(input: ChartInput): TestData | undefined {
  if (!prepared.has(input)) prepared.set(input, prepare(input));
  return prepared.get(input);
}

function prepare({ results, series, speech }: ChartInput): TestData | undefined {
  const bins = table(results, "incremental_bins");
  if (bins === undefined || !has(bins, "time_s")) return undefined;
  return { bins, rows: records(bins), speech, results, breaths: rawSeries(results, series) };
}

/** The raw series of the test: the file its tables name, else the longest that holds gas exchange. */
function rawSeries(results: Results, series: ChartInput["series"]): Series | undefined {
  const origin = table(results, "incremental_bins")?.origin;
  const texts = origin?.kind === "formula" ? origin.inputs.map((input) => input.text) : [];
  const named = Object.values(series).find((one) => texts.some((text) => text.includes(one.file)));
  const gas = Object.values(series).filter((one) => one.channels.time_s && one.channels.vo2_l_min);
  return named ?? gas.sort((a, b) => b.length - a.length)[0];
}

export const minutes = (seconds: number): number => seconds / 60;

/** Bins as points of two columns, rows with a missing value left out. */
export function points(data: TestData, xKey: string, yKey: string): Datum[] {
  return data.rows.flatMap((row) => {
    const [x, y] = [numberOf(row[xKey]), numberOf(row[yKey])];
    return x === undefined || y === undefined ? [] : [{ x: xKey === "time_s" ? minutes(x) : x, y }];
  });
}

/** Recorded breaths of two channels as a cloud. Excluded breaths stand apart. */
export function breathCloud(
  data: TestData,
  xChannel: Channel,
  yChannel: Channel,
  phase = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY },
): { readonly cloud: readonly Datum[]; readonly excluded: readonly Datum[] } {
  const none = { cloud: [], excluded: [] };
  const { breaths } = data;
  const [xs, ys] = [breaths?.channels[xChannel], breaths?.channels[yChannel]];
  const times = breaths?.channels.time_s;
  if (breaths === undefined || xs === undefined || ys === undefined || times === undefined) return none;
  for (const channel of [xChannel, yChannel]) {
    const condition = breaths.conditions[channel];
    if (DRAWN_AS[channel] !== undefined && condition !== undefined && condition !== DRAWN_AS[channel]) return none;
  }
  const left = excludedLines(data, [xChannel, yChannel]);
  const cloud: Datum[] = [];
  const excluded: Datum[] = [];
  for (let i = 0; i < breaths.length; i++) {
    const [x, y] = [xs[i] as number, ys[i] as number];
    if (Number.isNaN(x) || Number.isNaN(y) || !((times[i] as number) >= phase.from && (times[i] as number) <= phase.to))
      continue;
    const point = { x: xChannel === "time_s" ? minutes(x) : x, y, order: cloud.length };
    if (left.has(breaths.lines[i] as number)) excluded.push(point);
    else cloud.push(point);
  }
  return { cloud, excluded };
}

function excludedLines(data: TestData, channels: readonly string[]): ReadonlySet<number> {
  const excluded = table(data.results, "incremental_excluded");
  const lines = (excluded ? records(excluded) : [])
    .filter((row) => typeof row.channel !== "string" || row.channel === "" || channels.includes(row.channel))
    .flatMap((row) => numberOf(row.line) ?? []);
  return new Set(lines);
}

/** Thresholds as uptakes, with their intervals. */
export function thresholds({ results, speech }: TestData): Threshold[] {
  return (["vt1", "vt2"] as const).flatMap((id) => {
    const at = quantityOf(results, `${id}_vo2`);
    if (at === undefined) return [];
    const { low, high } = at.error ?? {};
    return [
      {
        name: speech.say(`thresholds.${id}`),
        at: at.value,
        ...(low === undefined ? {} : { low }),
        ...(high === undefined ? {} : { high }),
      },
    ];
  });
}

/** The time at which the bins of the exercise phase first reach a threshold's uptake: where its line stands. */
export function thresholdTimes(data: TestData): Datum[] {
  const phase = exercisePhase(data.results);
  return thresholds(data).flatMap(({ name, at }) => {
    const row = data.rows.find((bin) => {
      const time = numberOf(bin.time_s);
      const uptake = numberOf(bin.vo2_l_min);
      return time !== undefined && uptake !== undefined && time >= phase.from && time <= phase.to && uptake >= at;
    });
    const time = numberOf(row?.time_s);
    return time === undefined ? [] : [{ x: minutes(time), name }];
  });
}

export function exercisePhase(results: Results): { readonly from: number; readonly to: number } {
  const row = phaseRows(results).find((phase) => /incremental|exercise|ramp/.test(phase.name));
  return row ?? { from: 0, to: Number.POSITIVE_INFINITY };
}

function phaseRows(results: Results): { readonly name: string; readonly from: number; readonly to: number }[] {
  const phases = table(results, "incremental_phases");
  return (phases ? records(phases) : []).flatMap((row) => {
    const [from, to] = [numberOf(row.from_s), numberOf(row.to_s)];
    return typeof row.phase === "string" && from !== undefined && to !== undefined
      ? [{ name: row.phase, from, to }]
      : [];
  });
}

/** Pixels a letter of a phase's name takes, and pixels a panel has for its whole time: names that do not fit stay away. */
const LETTER = 4;
const PANEL = 176;

/** Phases as names above the plot and hair lines where they begin. */
export function phases({ results, speech }: TestData): Datum[] {
  const rows = phaseRows(results);
  const whole = Math.max(0, ...rows.map((row) => row.to));
  return rows.map(({ name, from, to }) => {
    const word = speech.find(`phases.${name.replaceAll(/[- ]/g, "_")}`) ?? name;
    const fits = (PANEL * (to - from)) / whole >= LETTER * word.length;
    return { x: minutes(from), name: fits ? word : "" };
  });
}

/** A reader's table of some columns of the bins. */
export function readerTable(
  data: TestData,
  keys: readonly string[],
): { readonly columns: readonly Column[]; readonly rows: readonly (readonly Cell[])[] } {
  const columns = keys.flatMap((key) => data.bins.columns.filter((column) => column.key === key));
  return { columns, rows: data.rows.map((row) => columns.map((column) => row[column.key] ?? null)) };
}
