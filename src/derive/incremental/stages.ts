/** Stages of the incremental phase: by the protocol's clock, by steps of the workload, or minute by minute in a ramp. */
import type { IncrementalProtocol } from "../../kernel/generated/session.js";
import type { PhaseSpan } from "./phases.js";
import type { Prepared } from "./prepare.js";

export interface Stage {
  readonly fromS: number;
  readonly toS: number;
  readonly complete: boolean;
}
export interface Stages {
  readonly kind: "step" | "ramp" | "typed";
  readonly all: readonly Stage[];
  /** Usual length of a stage, s. */
  readonly lengthS: number;
}

/** A step shorter than this is a ramp in all but name. */
const SHORTEST_STEP_S = 60;
/** What is shorter than this at the start is a sample that straddles the change of load. */
const FRAGMENT_S = 10;

/** `lastCompleted` is false when the session file says that the last typed stage was not. */
export function stagesOf(
  test: Prepared,
  span: PhaseSpan,
  protocol: IncrementalProtocol | undefined,
  lastCompleted = true,
): Stages {
  const { time, excluded } = test.breaths;
  if (test.level === "stage means" || !test.timed || test.intervalS > 45) return typed(test, span, lastCompleted);
  if (protocol?.kind !== "ramp") {
    const clock = protocol?.stage_length_s;
    if (clock !== undefined && clock >= SHORTEST_STEP_S && protocol?.stages === undefined)
      return { kind: "step", lengthS: clock, all: byClock(span, clock) };
    const steps = bySteps(time, excluded, test.work, span);
    const lengths = steps.slice(0, -1).map((s) => s.toS - s.fromS);
    const usual = lengths.sort((a, b) => a - b)[lengths.length >> 1];
    if (usual !== undefined && lengths.length >= 2 && usual >= SHORTEST_STEP_S - test.intervalS)
      return {
        kind: "step",
        lengthS: usual,
        all: steps.map((s) => ({ ...s, complete: s.toS - s.fromS >= 0.95 * usual })),
      };
  }
  return { kind: "ramp", lengthS: 60, all: byClock(span, 60) };
}

function byClock(span: PhaseSpan, length: number): Stage[] {
  const out: Stage[] = [];
  for (let from = span.fromS; from < span.toS - 1; from += length)
    out.push({ fromS: from, toS: Math.min(span.toS, from + length), complete: from + length <= span.toS + 2 });
  return out;
}

/** Stretches of one load (within 2 % of the highest); a pause at rest between two stages belongs to none. */
function bySteps(time: Float64Array, excluded: Uint8Array, work: Float64Array, span: PhaseSpan): Stage[] {
  let highest = 0;
  for (let i = 0; i < work.length; i++) if ((work[i] as number) > highest) highest = work[i] as number;
  const out: { fromS: number; toS: number; complete: boolean; load: number }[] = [];
  let before = span.fromS;
  for (let i = 0; i < time.length; i++) {
    const t = time[i] as number;
    if (excluded[i] === 1 || !(t > span.fromS && t <= span.toS + 1e-9)) continue;
    const load = work[i] as number;
    const last = out.at(-1);
    if (last !== undefined && Math.abs(load - last.load) <= 0.02 * highest) last.toS = t;
    else if (load > 0) out.push({ fromS: before, toS: t, complete: true, load });
    before = t;
  }
  // A breath that began under the load before stands for no stage of its own.
  const [head, next] = out;
  if (head !== undefined && next !== undefined && head.toS - head.fromS < FRAGMENT_S) {
    next.fromS = head.fromS;
    out.shift();
  }
  return out;
}

function typed(test: Prepared, span: PhaseSpan, lastCompleted: boolean): Stages {
  const { time, excluded } = test.breaths;
  const all: Stage[] = [];
  let before = span.fromS;
  for (let i = 0; i < time.length; i++) {
    const t = time[i] as number;
    if (excluded[i] === 1 || !(t > span.fromS && t <= span.toS + 1e-9)) continue;
    all.push({ fromS: before, toS: t, complete: true });
    before = t;
  }
  const last = all.at(-1);
  if (last !== undefined && !lastCompleted) all[all.length - 1] = { ...last, complete: false };
  return { kind: "typed", lengthS: test.intervalS, all };
}
