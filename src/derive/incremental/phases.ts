/**
 * Phases of a test: from the session file where it gives times, else found from the workload and marked so, to be
 * confirmed. A sample belongs to the phase its time ends in: from < time ≤ to.
 */
import type { Phase } from "../../kernel/breaths.js";
import type { IncrementalPhases } from "../../kernel/generated/session.js";

export interface PhaseSpan {
  readonly phase: Phase;
  readonly fromS: number;
  readonly toS: number;
}

/** The clock of a series: when its samples ended, when the first began and the last ended. */
export interface Clock {
  readonly time: Float64Array;
  readonly startS: number;
  readonly endS: number;
}

/** Spans from the times in the session file, cut at the start and end of the series. */
export function statedPhases(stated: IncrementalPhases, { time, startS, endS }: Clock): PhaseSpan[] {
  const marks: { phase: Phase; at: number }[] = [];
  const mark = (phase: Phase, at: number | undefined) => {
    if (at !== undefined) marks.push({ phase, at });
  };
  mark("rest", stated.rest_start_s);
  mark("warm-up", stated.warm_up_start_s);
  mark("incremental", stated.incremental_start_s);
  mark("recovery", stated.recovery_start_s);
  mark("verification", stated.verification_start_s);
  mark("recovery", stated.verification_start_s === undefined ? undefined : stated.verification_end_s);
  marks.sort((a, b) => a.at - b.at);
  const first = marks[0];
  if (first !== undefined && first.phase !== "rest" && time.some((t) => t <= first.at))
    marks.unshift({ phase: first.phase === "incremental" ? "warm-up" : "rest", at: startS });
  return marks
    .map((m, i) => ({ phase: m.phase, fromS: Math.max(startS, m.at), toS: Math.min(endS, marks[i + 1]?.at ?? endS) }))
    .filter((span) => span.toS > span.fromS);
}

interface Run {
  from: number;
  to: number; // last index
  load: number;
}

/** Stretches in which the load stays within 2 % of the highest load. */
function runs(load: Float64Array, first: number, last: number, tolerance: number): Run[] {
  const out: Run[] = [];
  let current: Run | undefined;
  for (let i = first; i <= last; i++) {
    const here = load[i] as number;
    if (current !== undefined && Math.abs(here - current.load) <= tolerance) current.to = i;
    else {
      current = { from: i, to: i, load: here };
      out.push(current);
    }
  }
  return out;
}

/** What the protocol says of the first stage: its work, and its length where there are stages. */
export interface FirstStage {
  readonly work: number;
  readonly lengthS?: number;
}

/** Phases from the workload, or undefined where it shows no rise. `start` is the time the first sample began. */
export function foundPhases(
  time: Float64Array,
  load: Float64Array,
  cadence: Float64Array,
  start: number,
  first?: FirstStage,
): PhaseSpan[] | undefined {
  const n = load.length;
  let highest = 0;
  for (let i = 0; i < n; i++) if ((load[i] as number) > highest) highest = load[i] as number;
  if (highest <= 0) return undefined;
  const at = (i: number) => (i <= 0 ? start : (time[i - 1] as number)); // where sample i began
  const bouts = hardBouts(time, load, 0.5 * highest, 60);
  const main = bouts.find((bout) => bout.highest >= 0.8 * highest);
  if (main === undefined) return undefined;

  const begin = startOfWork(time, load, main.from, 60);
  const before = runs(load, begin, main.to, 0.02 * highest);
  const incremental = Math.min(startOfRise(before, load, time, at, first), main.to);
  if (!before.some((run) => run.from >= incremental && run.load > (load[incremental] as number) + 0.02 * highest))
    return undefined; // constant work, no increments

  const spans: PhaseSpan[] = [];
  const add = (phase: Phase, fromS: number, toS: number) => {
    if (toS > fromS) spans.push({ phase, fromS, toS });
  };
  let pedalling = begin;
  while (pedalling > 0 && (cadence[pedalling - 1] as number) > 20) pedalling--;
  add("rest", start, at(pedalling));
  add("warm-up", at(pedalling), at(incremental));
  add("incremental", at(incremental), time[main.to] as number);
  let end = time[main.to] as number;
  const later = bouts.find((bout) => bout.from > main.to && bout.highest >= 0.8 * highest);
  if (later !== undefined) {
    add("recovery", end, at(later.from));
    add("verification", at(later.from), time[later.to] as number);
    end = time[later.to] as number;
  }
  add("recovery", end, time[n - 1] as number);
  return spans;
}

/** Back from a hard moment to the standstill before the work; a pause shorter than pauseS is not one. */
function startOfWork(time: Float64Array, load: Float64Array, from: number, pauseS: number): number {
  let first = from;
  for (;;) {
    while (first > 0 && (load[first - 1] as number) > 0) first--;
    let before = first;
    while (before > 0 && !((load[before - 1] as number) > 0)) before--;
    if (before === 0 || (time[first] as number) - (time[before - 1] as number) >= pauseS) return first;
    first = before;
  }
}

interface Bout {
  from: number;
  to: number;
  highest: number;
}

/** Stretches above a load; pauses shorter than pauseS belong to the bout (blood sampling between stages). */
function hardBouts(time: Float64Array, load: Float64Array, above: number, pauseS: number): Bout[] {
  const out: Bout[] = [];
  for (let i = 0; i < load.length; i++) {
    const here = load[i] as number;
    if (!(here >= above)) continue;
    const last = out.at(-1);
    if (last !== undefined && (time[i] as number) - (time[last.to] as number) < pauseS) {
      last.to = i;
      last.highest = Math.max(last.highest, here);
    } else out.push({ from: i, to: i, highest: here });
  }
  return out;
}

/** The sample the increments begin at: by the protocol's first stage, else after a first stretch longer than the usual. */
function startOfRise(
  all: readonly Run[],
  load: Float64Array,
  time: Float64Array,
  at: (i: number) => number,
  first: FirstStage | undefined,
): number {
  const [head, ...rest] = all;
  if (head === undefined) return 0;
  const length = (run: Run) => (time[run.to] as number) - at(run.from);
  // In a smooth rise the first stretch runs on until 2 % are gained: step back to where it left its level.
  const leaves = (run: Run) => {
    let i = run.to + 1;
    const level = load[run.from] as number;
    while (i > run.from + 1 && (load[i - 1] as number) > level + 1e-9 && (load[i - 1] as number) <= (load[i] as number))
      i--;
    return i;
  };
  const falls = rest.findIndex(
    (run, i) => run.load > 0 && run.load < 0.9 * (rest[i - 1] ?? head).load && i < rest.length / 2,
  );
  if (falls >= 0) return (rest[falls] as Run).from; // a warm-up harder than the first stage
  if (first !== undefined) {
    const stage = all.find((run) => run.load >= first.work * 0.98);
    if (stage !== undefined) {
      if (first.lengthS === undefined) return length(stage) >= 45 ? leaves(stage) : stage.from;
      if (length(stage) < 1.3 * first.lengthS) return stage.from;
      const from = (time[stage.to] as number) - first.lengthS; // the warm-up was at the first stage's load
      let i = stage.from;
      while (i < stage.to && at(i) < from - 1) i++;
      return i;
    }
  }
  const middle = rest
    .slice(0, -1)
    .map(length)
    .sort((a, b) => a - b);
  const usual = middle[middle.length >> 1];
  if (usual === undefined || length(head) < 1.6 * usual || length(head) < 45) return head.from;
  return leaves(head);
}
