/**
 * Prepares an incremental test for everything that reads it: samples in one set of units, phases named, doubtful
 * samples marked. Pure; the same visit gives the same Prepared.
 */
import type { Breaths } from "../../kernel/breaths.js";
import type { Visit } from "../../kernel/visit.js";
import { hasValues } from "../columns.js";
import type { RawLevel } from "../gas/exchange.js";
import { choosePhases, phaseOf, withProtocol } from "./choose-phases.js";
import { blankDead, type Excluded, impossibleValues, oddBreaths, timeFaults } from "./clean.js";
import type { DeadRun } from "./dead-channel.js";
import { fromSeries } from "./from-series.js";
import { fromBags, fromStages } from "./from-typed.js";
import { loadsAfterStop, withoutLoadAt } from "./load-at-stop.js";
import type { PhaseSpan } from "./phases.js";
import { type Gap, gapsIn, lastTime, rhythm } from "./rhythm.js";
import type { Samples } from "./samples.js";
import { type WorkUnit, workOf } from "./workload.js";

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

export function prepareTest(visit: Visit): Preparation {
  const block = visit.session.incremental;
  if (block === undefined) return undefined;
  const samples = samplesOf(visit);
  if (samples === undefined) return { because: "no series, stages or bags were recorded" };
  if ("because" in samples) return samples;
  if (samples.n === 0) return { because: `${block.series ?? "the test"} holds no samples` };

  const excluded = new Uint8Array(samples.n);
  const list: Excluded[] = [];
  timeFaults(samples.time, excluded, list);
  if (excluded.every((rule) => rule !== 0)) return { because: "no row of the series has a time" };
  const { intervalS, startS } = rhythm(samples.time, excluded);
  const breathByBreath = samples.timed && intervalS < 5 && samples.n > 20;
  const notes = [...samples.notes];

  let columns = samples;
  const stated = block.phases;
  if (stated !== undefined && !hasValues(samples.power) && !hasValues(samples.speed) && block.protocol !== undefined) {
    columns = withProtocol(samples, stated.incremental_start_s, stated.recovery_start_s, block.protocol);
    if (hasValues(columns.power) || hasValues(columns.speed)) notes.push("workload is the protocol's, not recorded");
  }
  let work = workOf(columns.power, columns.speed, columns.grade);
  const end = lastTime(columns.time, excluded);
  const typed = samples.level === "stage means" || (block.series === undefined && stated === undefined);
  const { spans, phasesFrom } = choosePhases(block, typed, { ...columns, work, startS, endS: end }, notes);
  const late = samples.timed && !typed ? loadsAfterStop(columns.time, work.load, excluded, spans) : [];
  if (late.length > 0) {
    columns = withoutLoadAt(columns, late);
    work = workOf(columns.power, columns.speed, columns.grade);
  }

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
