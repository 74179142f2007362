/**
 * Steady stages for economy, fuel use and speed at VO2max: the last two minutes of each complete stage of three
 * minutes or more with RER below 1.00 and below the second threshold. From the incremental test; where that has none,
 * from the steps of a lactate test that hold uptake.
 */
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook } from "../../kernel/notebook.js";
import { mean } from "../../kernel/statistics.js";
import type { Visit } from "../../kernel/visit.js";
import { numbersOf, type Row, readTable } from "./read-table.js";
import { whyNotSteady } from "./steady-stage.js";

export interface SteadyStage {
  readonly name: string;
  readonly lengthS: number;
  readonly power: number | undefined;
  readonly speed: number | undefined;
  readonly grade: number | undefined;
  /** L/min STPD */
  readonly vo2: number;
  readonly vco2: number;
  readonly heartRate: number | undefined;
  /** Why it is not used, or undefined when it is steady. */
  readonly because: string | undefined;
}
const MEAN_S = 120;

export function steadyStages(book: Notebook, visit: Visit): readonly SteadyStage[] {
  const incremental = fromIncremental(book, visit);
  return incremental.some((s) => s.because === undefined) ? incremental : [...incremental, ...fromLactate(book, visit)];
}

function fromIncremental(book: Notebook, visit: Visit): SteadyStage[] {
  const bins = readTable(book, "incremental_bins");
  const stated = visit.session.incremental?.protocol?.stage_length_s;
  return readTable(book, "incremental_stages").flatMap((row): SteadyStage[] => {
    const name = row.text("stage") ?? "";
    if (!/^\d+$/.test(name)) return [];
    const [from, to] = [row.number("from_s"), row.number("to_s")];
    const lengthS = from !== undefined && to !== undefined ? to - from : (stated ?? 0);
    const late = bins.filter((b) => {
      const t = b.number("time_s");
      return t !== undefined && to !== undefined && t > to - MEAN_S && t < to;
    });
    const read = (key: string) => {
      const [values = []] = numbersOf(late, key);
      return values.length >= MEAN_S / 15 - 1 ? mean(values) : row.number(key);
    };
    const [vo2, vco2] = [read("vo2_l_min"), read("vco2_l_min")];
    if (vo2 === undefined || vco2 === undefined) return [];
    const loads = { power: row.number("power_w"), speed: row.number("speed_km_h"), grade: row.number("grade_pct") };
    const heartRate = read("heart_rate_bpm");
    const complete = row.text("complete") !== "no";
    const because = unsteady(book, lengthS, vo2, vco2, complete) ?? moving(late);
    return [{ name, lengthS, ...loads, vo2, vco2, heartRate, because }];
  });
}

/** A load that changes by more than 1 % in the part that is averaged: the stage is not where it was thought to be. */
function moving(late: readonly Row[]): string | undefined {
  for (const key of ["power_w", "speed_km_h", "grade_pct"]) {
    const [values = []] = numbersOf(late, key);
    if (values.length < 2) continue;
    const [low, high] = [Math.min(...values), Math.max(...values)];
    if (high - low > Math.max(0.01 * high, 0.1)) return "the load changed in its last two minutes";
  }
  return undefined;
}

function fromLactate(book: Notebook, visit: Visit): SteadyStage[] {
  const block = visit.session.lactate;
  return (block?.steps ?? []).flatMap((step, i): SteadyStage[] => {
    const { vo2_l_min: vo2, vco2_l_min: vco2 } = step;
    if (vo2 === undefined || vco2 === undefined) return [];
    const lengthS = step.duration_s ?? block?.step_duration_s ?? 0;
    const loads = { power: step.power_w, speed: step.speed_km_h, grade: block?.grade_pct };
    const because = unsteady(book, lengthS, vo2, vco2, true);
    return [{ name: `step ${i + 1}`, lengthS, ...loads, vo2, vco2, heartRate: step.heart_rate_bpm, because }];
  });
}

function unsteady(book: Notebook, lengthS: number, vo2: number, vco2: number, complete: boolean): string | undefined {
  return whyNotSteady({ lengthS, vo2, vco2, complete, secondThreshold: book.value("vt2_vo2" as MeasureId) });
}
