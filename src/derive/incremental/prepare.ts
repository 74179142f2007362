/**
 * Prepares an incremental test for everything that reads it: samples in one set of units, phases named, doubtful
 * samples marked. Pure; the same visit gives the same Prepared.
 */
import { type Breaths, PHASES, type Phase } from "../../kernel/breaths.js";
import type { IncrementalProtocol } from "../../kernel/generated/session.js";
import type { Visit } from "../../kernel/visit.js";
import type { RawLevel } from "../gas/exchange.js";
import { blankDead, type Excluded, impossibleValues, oddBreaths, timeFaults } from "./clean.js";
import type { DeadRun } from "./dead-channel.js";
import { fromSeries } from "./from-series.js";
import { fromBags, fromStages } from "./from-typed.js";
import { type FirstStage, foundPhases, type PhaseSpan, statedPhases } from "./phases.js";
import { hasValues, type Samples } from "./samples.js";
import { costOfSpeed, prescribed, type Work, type WorkUnit, workOf } from "./workload.js";

export interface Gap {
  readonly fromS: number;
  readonly toS: number;
}
export interface Prepared {
  readonly breaths: Breaths;
  readonly level: RawLevel;
  /** Usual time between samples, s. */
  readonly intervalS: number;
  /** Samples are single breaths (usually less than 5 s apart); else they are means and are never edited. */
  readonly breathByBreath: boolean;
  /** False when no clock is known: time then only counts the samples. */
  readonly timed: boolean;
  readonly phases: readonly PhaseSpan[];
  readonly phasesFrom: "session file" | "workload" | "none";
  /** External work as one number a sample, for finding rises: W or the mL/kg/min the metabolic equations give. */
  readonly work: Float64Array;
  readonly workUnit: WorkUnit;
  /** A treadmill test that went on to running. */
  readonly running: boolean;
  readonly dead: readonly DeadRun[];
  readonly excluded: readonly Excluded[];
  readonly gaps: readonly Gap[];
  /** Why a channel has no value at all. */
  readonly refused: Samples["refused"];
  /** Facts for the reader, each a sentence without a full stop. */
  readonly notes: readonly string[];
}

/** The prepared test, a reason why there is none, or undefined where the session has no incremental block. */
export type Preparation = { readonly test: Prepared } | { readonly because: string } | undefined;

export function prepareTest(visit: Visit): Prepared | undefined {
  const made = prepareOrSay(visit);
  return made !== undefined && "test" in made ? made.test : undefined;
}

export function prepareOrSay(visit: Visit): Preparation {
  const block = visit.session.incremental;
  if (block === undefined) return undefined;
  const samples = samplesOf(visit);
  if (samples === undefined) return { because: "no series, stages or bags were recorded" };
  if ("because" in samples) return samples;
  if (samples.n === 0) return { because: `${block.series ?? "the test"} holds no samples` };

  const excluded = new Uint8Array(samples.n);
  const list: Excluded[] = [];
  timeFaults(samples.time, excluded, list);
  const { intervalS, startS } = rhythm(samples.time, excluded);
  const breathByBreath = samples.timed && intervalS < 5 && samples.n > 20;
  const notes = [...samples.notes];

  let columns = samples;
  const stated = block.phases;
  if (stated !== undefined && !hasValues(samples.power) && !hasValues(samples.speed) && block.protocol !== undefined) {
    columns = withProtocol(samples, stated.incremental_start_s, stated.recovery_start_s, block.protocol);
    if (hasValues(columns.power) || hasValues(columns.speed)) notes.push("workload is the protocol's, not recorded");
  }
  const work = workOf(columns.power, columns.speed, columns.grade);
  const end = lastTime(columns.time, excluded);
  const typed = samples.level === "stage means" || (block.series === undefined && stated === undefined);
  const found =
    stated === undefined && !typed
      ? foundPhases(columns.time, work.load, columns.cadence, startS, firstStage(block.protocol, work))
      : undefined;
  const spans =
    stated !== undefined
      ? statedPhases(stated, startS, end)
      : (found ?? [{ phase: "incremental" as const, fromS: startS, toS: end }]);
  const phasesFrom = stated !== undefined || typed ? "session file" : found !== undefined ? "workload" : "none";
  if (phasesFrom === "workload")
    notes.push("phases were found from the workload: confirm them under incremental.phases");
  if (phasesFrom === "none") notes.push("phases are not known: the session gives no times and no workload rises");

  const phase = phaseOf(columns.time, spans);
  if (samples.timed && !typed) impossibleValues(columns, excluded, list);
  const dead = samples.timed && !typed ? blankDead(columns) : [];
  oddBreaths(columns, phase, excluded, list, breathByBreath);
  list.sort((a, b) => a.index - b.index);

  const { level, timed, refused } = samples;
  const { n, line, time, vo2, vco2, ve, breathingFrequency, heartRate, petO2, petCO2 } = columns;
  const { spo2, speed, grade, power, cadence, rpe } = columns;
  const gases = { n, line, time, vo2, vco2, ve, breathingFrequency, heartRate, petO2, petCO2 };
  const breaths: Breaths = { ...gases, spo2, speed, grade, power, cadence, rpe, excluded, phase };
  return {
    test: {
      breaths,
      level,
      intervalS,
      breathByBreath,
      timed,
      phases: spans,
      phasesFrom,
      work: work.load,
      workUnit: work.unit,
      running: work.running,
      dead,
      excluded: list,
      gaps: timed && !typed ? gapsIn(time, excluded, intervalS) : [],
      refused,
      notes,
    },
  };
}

function samplesOf(visit: Visit): Samples | { because: string } | undefined {
  const block = visit.session.incremental;
  if (block?.series !== undefined) {
    const series = visit.series[block.series];
    return series === undefined ? { because: `${block.series} was not read` } : fromSeries(visit, series);
  }
  if (block?.bags !== undefined) return fromBags(block.bags, visit);
  if (block?.stages !== undefined) return fromStages(block.stages, block);
  return undefined;
}

/** Work of the protocol's first stage, where it says so. */
function firstStage(protocol: IncrementalProtocol | undefined, trace: Work): FirstStage | undefined {
  if (protocol === undefined) return undefined;
  const { speed, grade, power } = prescribed(protocol, 0);
  const work = trace.unit === "W" ? power : costOfSpeed(speed, grade, trace.running);
  if (!(work > 0)) return undefined;
  const lengthS = protocol.stages?.[0].duration_s ?? (protocol.kind === "ramp" ? undefined : protocol.stage_length_s);
  return lengthS === undefined ? { work } : { work, lengthS };
}

/** Usual step between samples and the moment the first one began. */
function rhythm(time: Float64Array, excluded: Uint8Array): { intervalS: number; startS: number } {
  const steps: number[] = [];
  let last = Number.NaN;
  let first = Number.NaN;
  for (let i = 0; i < time.length; i++) {
    if (excluded[i] !== 0) continue;
    const t = time[i] as number;
    if (Number.isNaN(first)) first = t;
    else steps.push(t - last);
    last = t;
  }
  const sorted = Float64Array.from(steps).sort();
  const intervalS = sorted[sorted.length >> 1] ?? first;
  return { intervalS, startS: first - intervalS };
}

function lastTime(time: Float64Array, excluded: Uint8Array): number {
  for (let i = time.length - 1; i >= 0; i--) if (excluded[i] === 0) return time[i] as number;
  return Number.NaN;
}

function withProtocol(
  samples: Samples,
  from: number,
  to: number | undefined,
  protocol: Parameters<typeof prescribed>[0],
): Samples {
  const speed = samples.speed.slice();
  const grade = samples.grade.slice();
  const power = samples.power.slice();
  for (let i = 0; i < samples.n; i++) {
    const t = samples.time[i] as number;
    if (!(t > from && t <= (to ?? Number.POSITIVE_INFINITY))) continue;
    const load = prescribed(protocol, t - from);
    speed[i] = load.speed;
    grade[i] = load.grade;
    power[i] = load.power;
  }
  return { ...samples, speed, grade, power };
}

/** Index into PHASES for every sample; before the first span and after the last the nearest one holds. */
function phaseOf(time: Float64Array, spans: readonly PhaseSpan[]): Uint8Array {
  const out = new Uint8Array(time.length);
  const names: readonly Phase[] = PHASES;
  for (let i = 0; i < time.length; i++) {
    const t = time[i] as number;
    let span = spans[0];
    for (const next of spans) if (t > next.fromS) span = next;
    out[i] = names.indexOf(span?.phase ?? "incremental");
  }
  return out;
}

/** Steps longer than 8 s and than three usual ones. */
function gapsIn(time: Float64Array, excluded: Uint8Array, intervalS: number): Gap[] {
  const out: Gap[] = [];
  let last = Number.NaN;
  for (let i = 0; i < time.length; i++) {
    if (excluded[i] === 1) continue; // no place in time
    const t = time[i] as number;
    if (t - last > Math.max(8, 3 * intervalS)) out.push({ fromS: last, toS: t });
    last = t;
  }
  return out;
}
