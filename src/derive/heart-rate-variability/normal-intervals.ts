/**
 * Marks RR intervals that are not normal-to-normal: missed or doubled beats, premature beats, dropouts.
 *
 *     an interval is left out when it is missing, outside 300 to 2000 ms,
 *     or more than 25 % away from the median of the eleven intervals around it
 *
 * A local median keeps slow changes and strong breathing swings, which a test against the interval before does not: there
 * one bad beat condemns its neighbour. Nothing is put in its place, and a difference is never taken across it.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { enter, leave, middle, movingWindow } from "../../kernel/moving-median.js";

const HALF = 5;
const LOWEST_MS = 300;
const HIGHEST_MS = 2000;
const FARTHEST = 0.25;

/** Intervals in ms (NaN = missing) in, the same with null for what is left out. Refuses fewer than 11 intervals. */
export function normalIntervals(rr: ArrayLike<number>): (number | null)[] {
  requireRange(info.id, "the number of intervals", rr.length, 2 * HALF + 1, Number.MAX_SAFE_INTEGER, "");
  const around = movingWindow(2 * HALF + 1);
  const normal: (number | null)[] = [];
  let to = 0;
  for (let i = 0; i < rr.length; i++) {
    if (i > HALF && possible(rr[i - HALF - 1] as number)) leave(around, rr[i - HALF - 1] as number);
    for (; to <= i + HALF && to < rr.length; to++) if (possible(rr[to] as number)) enter(around, rr[to] as number);
    const x = rr[i] as number;
    normal.push(possible(x) && Math.abs(x / middle(around) - 1) <= FARTHEST ? x : null);
  }
  return normal;
}

const possible = (ms: number): boolean => ms >= LOWEST_MS && ms <= HIGHEST_MS;

export const info: FormulaInfo<[ArrayLike<number>], (number | null)[]> = {
  id: "normal-intervals",
  revision: 1,
  title: "Normal RR intervals",
  equation: "left out: missing, outside 300 to 2000 ms, or over 25 % from the median of eleven",
  inputs: { RR: { unit: "ms", range: "eleven intervals or more" } },
  output: { unit: "ms", decimals: 0 },
  source: {
    authors: "this project",
    year: null,
    title: "Local median filter; filters of 20 to 30 % are common practice",
    where: "rule stated above",
    verified: "own",
  },
  compute: normalIntervals,
  checks: [
    {
      given: [[800, 810, 790, 805, 795, 400, 1200, 800, 810, 790, 805, 1600, 800]],
      pick: (xs) => xs.filter((x) => x === null).length,
      expect: 3,
      tolerance: 0,
      from: "by hand: a premature beat (400 then 1200) and a missed one (1600) among intervals near 800",
    },
    {
      given: [[900, 1000, 1100, 1000, 900, 1000, 1100, 1000, 900, 1000, 1100]],
      pick: (xs) => xs.filter((x) => x === null).length,
      expect: 0,
      tolerance: 0,
      from: "by hand: a breathing swing of 10 % stays",
    },
    { given: [[800, 810]], expect: "refused", from: "two intervals have no surroundings" },
  ],
};
