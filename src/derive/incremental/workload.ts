/**
 * One number for the external work of a moment, whatever the ergometer: power where there is one, else the oxygen
 * cost that the metabolic equations give to speed and grade. It serves to find phases and to see whether work rose;
 * it is never shown as a measured value.
 */
import type { IncrementalProtocol } from "../../kernel/generated/session.js";
import { hasValues } from "../columns.js";

export type WorkUnit = "W" | "mL/kg/min" | "none";

/** A test that goes faster than this is one of running; its walked part is read on the running line too. */
const RUNS_ABOVE_KM_H = 8.5;

/**
 * mL/kg/min above rest (ACSM metabolic equations: walking 0.1·S + 1.8·S·G, running 0.2·S + 0.9·S·G, S in m/min, G a
 * fraction). One equation for the whole test, so that the change of gait makes no step in the work.
 */
export function costOfSpeed(speedKmH: number, gradePct: number, running: boolean): number {
  const s = speedKmH / 0.06;
  const g = (Number.isNaN(gradePct) ? 0 : gradePct) / 100;
  return running ? 0.2 * s + 0.9 * s * g : 0.1 * s + 1.8 * s * g;
}

export interface Work {
  readonly unit: WorkUnit;
  readonly load: Float64Array;
  readonly running: boolean;
}

/** Missing moments keep the load before them: an ergometer holds its load until it is told another. */
export function workOf(power: Float64Array, speed: Float64Array, grade: Float64Array): Work {
  const n = power.length;
  const load = new Float64Array(n).fill(Number.NaN);
  const unit: WorkUnit = power.some((x) => x > 0) ? "W" : hasValues(speed) ? "mL/kg/min" : "none";
  let running = false;
  if (unit === "mL/kg/min") for (let i = 0; i < n; i++) running ||= (speed[i] as number) > RUNS_ABOVE_KM_H;
  if (unit === "none") return { unit, load, running };
  let last = Number.NaN;
  for (let i = 0; i < n; i++) {
    const here = unit === "W" ? (power[i] as number) : costOfSpeed(speed[i] as number, grade[i] as number, running);
    if (!Number.isNaN(here)) last = here;
    load[i] = last;
  }
  return { unit, load, running };
}

export interface Load {
  readonly speed: number;
  readonly grade: number;
  readonly power: number;
}

/** The load a protocol prescribes, t seconds into the incremental phase; NaN where it says nothing. */
export function prescribed(protocol: IncrementalProtocol, t: number): Load {
  if (protocol.stages !== undefined) {
    let end = 0;
    let stage = protocol.stages[0];
    for (const next of protocol.stages) {
      stage = next;
      end += next.duration_s;
      if (t <= end) break;
    }
    return {
      speed: stage?.speed_km_h ?? Number.NaN,
      grade: stage?.grade_pct ?? Number.NaN,
      power: stage?.power_w ?? Number.NaN,
    };
  }
  const whole = protocol.stage_length_s === undefined ? Number.NaN : Math.floor((t - 1e-9) / protocol.stage_length_s);
  const rise = (start: number | undefined, rate: number | undefined, step: number | undefined) => {
    if (start === undefined) return Number.NaN;
    if (rate !== undefined) return start + (rate * t) / 60;
    return step === undefined ? start : start + step * Math.max(0, whole);
  };
  return {
    speed: rise(protocol.start_speed_km_h, protocol.speed_rate_km_h_min, protocol.speed_step_km_h),
    grade: rise(protocol.start_grade_pct, protocol.grade_rate_pct_min, protocol.grade_step_pct),
    power: rise(protocol.start_power_w, protocol.power_rate_w_min, protocol.power_step_w),
  };
}

/**
 * Load as the body feels it: uptake follows a change of load with a time constant of about 40 s, so a stage just begun
 * counts only for the part that had time to act. Exponential smoothing over uneven steps of time.
 */
export function feltLoad(time: Float64Array, load: Float64Array, tauS = 40): Float64Array {
  const out = new Float64Array(load.length).fill(Number.NaN);
  let felt = Number.NaN;
  for (let i = 0; i < load.length; i++) {
    const here = load[i] as number;
    if (Number.isNaN(here)) continue;
    const step = i === 0 ? 0 : Math.max(0, (time[i] as number) - (time[i - 1] as number));
    felt = Number.isNaN(felt) ? here : felt + (here - felt) * (1 - Math.exp(-step / tauS));
    out[i] = felt;
  }
  return out;
}
