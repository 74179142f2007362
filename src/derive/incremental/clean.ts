/**
 * Cleaning that tells: what is missing, dead, impossible or far from its neighbours is marked and listed, never
 * deleted. Marks a whole breath when its gases are in doubt; blanks one channel when only that is.
 */
import { CLEANING_RULES, type CleaningRule } from "../../kernel/breaths.js";
import { hasValues } from "../columns.js";
import { type DeadRun, deadRuns, watched } from "./dead-channel.js";
import { localOutliers } from "./local-outlier.js";
import type { BreathChannel, Columns } from "./samples.js";

export interface Excluded {
  readonly index: number;
  readonly rule: CleaningRule;
  /** "all" when the sample has no place in time. */
  readonly channel: BreathChannel | "all";
  readonly found: number;
}

/** Outside these a value is no measurement. Common practice of plausibility, wider than any athlete. */
const POSSIBLE: readonly (readonly [BreathChannel, number, number])[] = [
  ["vo2", 0.02, 10],
  ["vco2", 0.02, 12],
  ["ve", 0.5, 330],
  ["breathingFrequency", 1, 150],
  ["heartRate", 25, 250],
  ["petO2", 20, 160],
  ["petCO2", 5, 90],
  ["spo2", 40, 100],
];
/** Channels whose fault makes the whole breath doubtful. */
const WHOLE: readonly BreathChannel[] = ["vo2", "vco2", "ve"];

const code = (rule: CleaningRule) => 1 + CLEANING_RULES.indexOf(rule);

/** Samples whose time is missing or does not rise. */
export function timeFaults(time: Float64Array, excluded: Uint8Array, list: Excluded[]): void {
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < time.length; i++) {
    const t = time[i] as number;
    if (t > last) last = t;
    else {
      excluded[i] = code("time-not-rising");
      list.push({ index: i, rule: "time-not-rising", channel: "all", found: t });
    }
  }
}

/** Impossible values: the breath is excluded for a gas, the value blanked for another channel. Changes `columns`. */
export function impossibleValues(columns: Columns, excluded: Uint8Array, list: Excluded[]): void {
  for (const [channel, low, high] of POSSIBLE) {
    const xs = columns[channel];
    for (let i = 0; i < xs.length; i++) {
      const x = xs[i] as number;
      if (Number.isNaN(x) || (x >= low && x <= high) || excluded[i] !== 0) continue;
      list.push({ index: i, rule: "outside-possible", channel, found: x });
      if (WHOLE.includes(channel)) excluded[i] = code("outside-possible");
      else xs[i] = Number.NaN;
    }
  }
}

/** Blanks the stretches in which a channel was dead and says where they are. */
export function blankDead(columns: Columns): DeadRun[] {
  const out: DeadRun[] = [];
  for (const channel of watched) {
    const xs = columns[channel];
    for (const run of deadRuns(columns.time, channel, xs)) {
      if (run.kind === "constant" && !othersLive(columns, channel, run)) continue;
      out.push(run);
      for (let i = 0; i < xs.length; i++) {
        const t = columns.time[i] as number;
        if (t > run.fromS && t <= run.toS) xs[i] = Number.NaN;
      }
    }
  }
  return out;
}

/** Another gas channel moved while this one stood still: rounded means of a quiet rest may all stand still together. */
function othersLive(columns: Columns, channel: BreathChannel, run: DeadRun): boolean {
  return WHOLE.some((other) => {
    if (other === channel) return false;
    const seen = new Set<number>();
    const xs = columns[other];
    for (let i = 0; i < xs.length && seen.size < 4; i++) {
      const t = columns.time[i] as number;
      if (t > run.fromS && t <= run.toS && !Number.isNaN(xs[i] as number)) seen.add(xs[i] as number);
    }
    return seen.size >= 4;
  });
}

/** Coughs and swallows in the gases; slips of the heart-rate signal, which blank only heart rate. */
export function oddBreaths(
  columns: Columns,
  phase: Uint8Array,
  excluded: Uint8Array,
  list: Excluded[],
  breathByBreath: boolean,
): void {
  if (!breathByBreath) return;
  const before = excluded.slice();
  for (const channel of WHOLE) {
    const xs = columns[channel];
    if (!hasValues(xs)) continue;
    const odd = localOutliers(columns.time, xs, phase, before);
    for (let i = 0; i < odd.length; i++) {
      if (odd[i] === 0) continue;
      list.push({ index: i, rule: "local-outlier", channel, found: xs[i] as number });
      excluded[i] = code("local-outlier");
    }
  }
  const heart = columns.heartRate;
  if (!hasValues(heart)) return;
  const odd = localOutliers(columns.time, heart, phase, before, 6);
  for (let i = 0; i < odd.length; i++) {
    if (odd[i] === 0) continue;
    list.push({ index: i, rule: "local-outlier", channel: "heartRate", found: heart[i] as number });
    heart[i] = Number.NaN;
  }
}
