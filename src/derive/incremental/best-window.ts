/**
 * The highest mean of a channel over a window of a given length.
 *
 *     mean of the kept samples that end in (t − w, t], for every sample time t; the highest counts
 *
 * A window slides by samples, not by blocks, and is judged only when kept samples fill at least two thirds of it, so that a
 * gap, a cough or a single breath never makes a peak. Every breath counts once, whatever its length.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

export interface Window {
  readonly mean: number;
  readonly fromS: number;
  readonly toS: number;
  /** Samples in the mean. */
  readonly n: number;
}
export interface Channel {
  readonly time: Float64Array;
  readonly xs: Float64Array;
  /** 0 = kept. */
  readonly excluded: Uint8Array;
  /** Usual time between samples, s: after a longer step a sample stands for no more than two and a half of these. */
  readonly intervalS: number;
}

/** Share of a window that kept samples must fill. */
const COVERAGE = 2 / 3;
/** What one sample may stand for after a gap, in usual intervals. */
const LONGEST = 2.5;
/** A window of 10 s or longer needs this many breaths, however slow the breathing. */
const FEWEST_BREATHS = 3;

/** The best window inside (fromS, toS], or undefined where no window is filled. */
export function bestWindow(c: Channel, fromS: number, toS: number, widthS: number): Window | undefined {
  const { time, xs, excluded } = c;
  // A window may lie a twentieth of a sample outside the phase: clocks are printed rounded.
  const slack = 0.05 * c.intervalS;
  let highest = Number.NEGATIVE_INFINITY;
  let endS = Number.NaN;
  let samples = 0;
  let sum = 0;
  let count = 0;
  let from = 0;
  const n = time.length;
  const kept = (i: number) => excluded[i] === 0 && !Number.isNaN(xs[i] as number);
  while (from < n && !((time[from] as number) > fromS)) from++;
  for (let i = from; i < n && (excluded[i] === 1 || (time[i] as number) <= toS + slack); i++) {
    if (excluded[i] === 1) continue; // has no place in time
    const t = time[i] as number;
    if (kept(i)) {
      sum += xs[i] as number;
      count++;
    }
    while (from <= i && (excluded[from] === 1 || !((time[from] as number) > t - widthS + 1e-9))) {
      if (kept(from)) {
        sum -= xs[from] as number;
        count--;
      }
      from++;
    }
    if (count === 0 || t - widthS < fromS - slack || !kept(i)) continue;
    if (count < FEWEST_BREATHS && widthS >= 10 && c.intervalS < 5) continue;
    const mean = sum / count;
    if (mean <= highest) continue;
    if (covered(time, excluded, xs, from, i, t - widthS, c.intervalS) < COVERAGE * widthS) continue;
    highest = mean;
    endS = t;
    samples = count;
  }
  return samples === 0 ? undefined : { mean: highest, fromS: endS - widthS, toS: endS, n: samples };
}

/** Seconds of the window (startS, time[last]] that kept samples stand for. */
function covered(
  time: Float64Array,
  excluded: Uint8Array,
  xs: Float64Array,
  first: number,
  last: number,
  startS: number,
  intervalS: number,
): number {
  let seconds = 0;
  let before = first - 1;
  while (before >= 0 && excluded[before] === 1) before--;
  let previous = before >= 0 ? (time[before] as number) : (time[first] as number) - intervalS;
  for (let i = first; i <= last; i++) {
    if (excluded[i] === 1) continue;
    const t = time[i] as number;
    if (excluded[i] === 0 && !Number.isNaN(xs[i] as number))
      seconds += Math.min(LONGEST * intervalS, t - Math.max(startS, previous));
    previous = t;
  }
  return seconds;
}

/** Longest stretch of a window, s, in which nothing was kept. */
export function longestHole({ time, xs, excluded }: Channel, { fromS, toS }: Window): number {
  let longest = 0;
  let last = fromS;
  for (let i = 0; i < time.length; i++) {
    const t = time[i] as number;
    if (excluded[i] !== 0 || Number.isNaN(xs[i] as number) || !(t > fromS && t <= toS)) continue;
    longest = Math.max(longest, t - last);
    last = t;
  }
  return Math.max(longest, toS - last);
}

/** Mean of a channel over a window found before, or undefined where kept samples do not fill it. */
export function meanIn(
  c: Channel,
  fromS: number,
  toS: number,
  share = COVERAGE,
): { mean: number; n: number } | undefined {
  const { time, xs, excluded } = c;
  let sum = 0;
  let n = 0;
  let first = -1;
  let last = -1;
  for (let i = 0; i < time.length; i++) {
    const t = time[i] as number;
    if (excluded[i] === 1 || !(t > fromS + 1e-9 && t <= toS + 1e-9)) continue;
    if (first < 0) first = i;
    last = i;
    if (excluded[i] !== 0 || Number.isNaN(xs[i] as number)) continue;
    sum += xs[i] as number;
    n++;
  }
  if (n === 0) return undefined;
  const seconds = covered(time, excluded, xs, first, last, fromS, c.intervalS);
  return seconds < share * (toS - fromS) ? undefined : { mean: sum / n, n };
}

function compute(stepS: number, widthS: number, ...values: number[]): number {
  const time = Float64Array.from(values, (_, i) => stepS * (i + 1));
  const xs = Float64Array.from(values);
  const channel = { time, xs, excluded: new Uint8Array(values.length), intervalS: stepS };
  const best = bestWindow(channel, 0, stepS * values.length, widthS);
  if (best === undefined) throw new OutOfRange(info.id, "window", widthS, "windows that samples fill to two thirds");
  return best.mean;
}

export const info: FormulaInfo<number[], number> = {
  id: "best-window",
  revision: 1,
  title: "Highest mean over a window",
  equation: "highest mean of the samples in (t − w, t], windows filled to two thirds or more",
  inputs: {
    step: { unit: "s", range: "time between samples" },
    window: { unit: "s", range: "at least one step" },
    values: { unit: "as the measure", range: "one a sample" },
  },
  output: { unit: "as the measure", decimals: 2 },
  caveat: "The window alone moves a peak by 4 to 10 %: compare only values of one window.",
  source: {
    authors: "Martin-Rincon M, Calbet JAL",
    year: 2020,
    title: "Progress update and challenges on VO2max testing and interpretation",
    journal: "Front Physiol 11:1070",
    where: "averaging interval must be stated; effect 4 to 10 %. The rule of two thirds is this project's",
    verified: "seen",
  },
  compute,
  checks: [
    { given: [10, 30, 1, 2, 3, 4, 3, 2], expect: 10 / 3, tolerance: 1e-9, from: "by hand: (3 + 4 + 3) / 3" },
    { given: [10, 20, 1, 9, 1, 1], expect: 5, tolerance: 1e-9, from: "by hand: (1 + 9) / 2, or (9 + 1) / 2" },
    { given: [10, 60, 1, 2, 3], expect: "refused", from: "a test shorter than the window" },
  ],
};
