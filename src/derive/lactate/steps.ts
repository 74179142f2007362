/** The steps of a lactate test, typed or from a CSV, as one list. */
import type { LactateStep } from "../../kernel/generated/session.js";
import type { Channel } from "../../kernel/series.js";
import type { Visit } from "../../kernel/visit.js";
import { peakLoad } from "../incremental/peak-load.js";

export interface Step {
  /** W or km/h, by the test's axis; pro rata when the last step was cut short. */
  readonly load: number;
  /** mmol/L; undefined when the sample failed. */
  readonly lactate: number | undefined;
  readonly heartRate: number | undefined;
  /** L/min */
  readonly vo2: number | undefined;
  readonly rpe: number | undefined;
}
export interface StepTest {
  readonly axis: "power" | "speed";
  readonly unit: "W" | "km/h";
  readonly steps: readonly Step[];
  readonly notes: readonly string[];
}

const CHANNELS = {
  power_w: "power_w",
  speed_km_h: "speed_km_h",
  lactate_mmol_l: "lactate_mmol_l",
  heart_rate_bpm: "heart_rate_bpm",
  vo2_l_min: "vo2_l_min",
  rpe: "rpe",
} as const satisfies Partial<Record<keyof LactateStep, Channel>>;

/** The test, or the sentence that says why there is none. */
export function stepTest(visit: Visit): StepTest | string {
  const block = visit.session.lactate;
  const rows = block?.steps ?? (block?.series === undefined ? undefined : fromSeries(visit, block.series));
  if (rows === undefined) return "neither steps nor a series were given";
  if (typeof rows === "string") return rows;
  if (rows.length === 0) return "the test holds no step";
  const axis = rows.every((r) => r.power_w !== undefined)
    ? ("power" as const)
    : rows.every((r) => r.speed_km_h !== undefined)
      ? ("speed" as const)
      : undefined;
  if (axis === undefined) return "each step needs its power, or each its speed";
  const loads = rows.map((r) => (axis === "power" ? r.power_w : r.speed_km_h) as number);
  const notes: string[] = [];
  const steps = rows.map((row, i): Step => {
    const [now, before] = [loads[i] as number, loads[i - 1]];
    const whole = block?.step_duration_s;
    const cut = i === rows.length - 1 && whole !== undefined && row.duration_s !== undefined && row.duration_s < whole;
    if (cut && before !== undefined)
      notes.push(`the last step lasted ${row.duration_s} of ${whole} s: its load is taken pro rata`);
    const load = cut && before !== undefined ? peakLoad(before, now, row.duration_s ?? 0, whole) : now;
    return { load, lactate: row.lactate_mmol_l, heartRate: row.heart_rate_bpm, vo2: row.vo2_l_min, rpe: row.rpe };
  });
  const failed = steps.filter((s) => s.lactate === undefined).length;
  if (failed > 0) notes.push(`${failed} of ${steps.length} steps have no lactate`);
  const floor = block?.analyser_floor_mmol_l;
  const low = floor === undefined ? 0 : steps.filter((s) => s.lactate !== undefined && s.lactate <= floor).length;
  if (low > 0)
    notes.push(
      `${low} steps stand at the analyser's floor of ${floor} mmol/L: the true baseline may be lower, and thresholds that rest on it with it`,
    );
  return { axis, unit: axis === "power" ? "W" : "km/h", steps, notes };
}

function fromSeries(visit: Visit, file: string): LactateStep[] | string {
  const series = visit.series[file];
  if (series === undefined) return `${file} could not be read`;
  return Array.from({ length: series.length }, (_, i) => {
    const row: Record<string, number> = {};
    for (const [key, channel] of Object.entries(CHANNELS)) {
      const value = series.channels[channel]?.[i];
      if (value !== undefined && Number.isFinite(value)) row[key] = value;
    }
    return row as LactateStep;
  });
}

/** A value read off between the two steps around a load; undefined where either is missing. Never beyond the steps. */
export function between(
  steps: readonly Step[],
  load: number,
  pick: (step: Step) => number | undefined,
): number | undefined {
  for (let i = 1; i < steps.length; i++) {
    const [low, high] = [steps[i - 1], steps[i]];
    if (low === undefined || high === undefined || load < low.load || load > high.load) continue;
    const [a, b] = [pick(low), pick(high)];
    if (load === low.load && a !== undefined) return a;
    if (load === high.load && b !== undefined) return b;
    return a === undefined || b === undefined ? undefined : a + ((b - a) * (load - low.load)) / (high.load - low.load);
  }
  return undefined;
}
