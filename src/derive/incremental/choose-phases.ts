/** Where the phases of a test come from: the session file first, the workload where that is silent. */
import { PHASES, type Phase } from "../../kernel/breaths.js";
import type { Incremental, IncrementalProtocol } from "../../kernel/generated/session.js";
import { type Clock, type FirstStage, foundPhases, type PhaseSpan, statedPhases } from "./phases.js";
import type { Samples } from "./samples.js";
import { costOfSpeed, prescribed, type Work } from "./workload.js";

export interface Course extends Clock {
  readonly cadence: Float64Array;
  readonly work: Work;
}

export interface Chosen {
  readonly spans: readonly PhaseSpan[];
  readonly phasesFrom: "session file" | "workload" | "none";
}

/** Adds to `notes` what the reader must confirm. `typed`: samples typed one by one are all of the incremental phase. */
export function choosePhases(block: Incremental, typed: boolean, course: Course, notes: string[]): Chosen {
  const { startS, endS, time, work } = course;
  const whole = [{ phase: "incremental" as const, fromS: startS, toS: endS }];
  const stated = block.phases;
  const found = () => foundPhases(time, work.load, course.cadence, startS, firstStage(block.protocol, work));
  if (stated !== undefined) {
    if (typed || stated.recovery_start_s !== undefined)
      return { spans: statedPhases(stated, course), phasesFrom: "session file" };
    // The start alone is stated: the end is where the workload falls, if it does.
    const stop = found()?.find((span) => span.phase === "incremental")?.toS;
    if (stop === undefined || stop <= stated.incremental_start_s || stop >= endS)
      return { spans: statedPhases(stated, course), phasesFrom: "session file" };
    notes.push("the end of the incremental phase was found from the workload: confirm it under incremental.phases");
    return { spans: statedPhases({ ...stated, recovery_start_s: stop }, course), phasesFrom: "session file" };
  }
  if (typed) return { spans: whole, phasesFrom: "session file" };
  const spans = found();
  notes.push(
    spans === undefined
      ? "phases are not known: the session gives no times and no workload rises"
      : "phases were found from the workload: confirm them under incremental.phases",
  );
  return spans === undefined ? { spans: whole, phasesFrom: "none" } : { spans, phasesFrom: "workload" };
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

/** Samples with the protocol's loads, where the series has none. */
export function withProtocol(
  samples: Samples,
  from: number,
  to: number | undefined,
  protocol: IncrementalProtocol,
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
export function phaseOf(time: Float64Array, spans: readonly PhaseSpan[]): Uint8Array {
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
