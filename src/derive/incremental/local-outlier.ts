/**
 * Coughs, swallows and sighs: breaths far from their neighbours.
 *
 *     excluded when |x − median| > 4 · robust SD and > 10 % of the median
 *     median: of the breaths within 15 s, same phase; robust SD = 1.4826 · median |x − median| within 60 s
 *
 * Breath noise is nearly Gaussian, so 4 SD takes about one true breath in 16 000; medians keep the rule from being
 * bent by the very breaths it looks for. Each of uptake, output and ventilation is tried; one failure excludes the
 * breath from every mean, and it stays in the file, counted and listed. Means over 5 s or longer are never edited.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { enter, leave, middle, movingWindow } from "../../kernel/moving-median.js";
import { medianInPlace } from "../../kernel/statistics.js";

const NEIGHBOURS_S = 15;
const SPREAD_S = 60;
const LIMIT_SD = 4;
const LEAST_SHARE = 0.1;
const FEWEST = 5;

/** Marks outliers of xs (1 = outlier). `group` holds the phase; samples with skip ≠ 0 or NaN take no part. */
export function localOutliers(
  time: Float64Array,
  xs: Float64Array,
  group: Uint8Array,
  skip: Uint8Array,
  limitSd = LIMIT_SD,
): Uint8Array {
  const n = xs.length;
  const centre = localMedians(time, xs, group, skip);
  const away = new Float64Array(n);
  for (let i = 0; i < n; i++) away[i] = Math.abs((xs[i] as number) - (centre[i] as number));

  // The spread moves slowly: its window is laid anew for every quarter of it, and looked at when a breath is far off.
  const out = new Uint8Array(n);
  const near = new Float64Array(n);
  let size = 0;
  let spread = Number.NaN;
  let asked = Number.NEGATIVE_INFINITY;
  let from = 0;
  for (let i = 0; i < n; i++) {
    const distance = away[i] as number;
    if (Number.isNaN(distance)) continue;
    const t = time[i] as number;
    const changed = i > 0 && group[i] !== group[i - 1];
    if (changed || t - asked > SPREAD_S / 4 || size < FEWEST) {
      asked = t;
      spread = Number.NaN;
      while (from < i && ((time[from] as number) < t - SPREAD_S || group[from] !== group[i])) from++;
      size = 0;
      for (let j = from; j < n && group[j] === group[i] && !((time[j] as number) > t + SPREAD_S); j++)
        if (!Number.isNaN(away[j] as number)) near[size++] = away[j] as number;
    }
    if (size < FEWEST || !(distance > LEAST_SHARE * (centre[i] as number))) continue;
    if (mostReach(near, size, (1 + 1e-9) * (distance / (1.4826 * limitSd)))) continue;
    if (Number.isNaN(spread)) spread = 1.4826 * medianInPlace(near.subarray(0, size));
    if (distance > limitSd * spread) out[i] = 1;
  }
  return out;
}

/** More than half of the first `size` values are at least x, and so is their median; told without looking for it. */
function mostReach(xs: Float64Array, size: number, x: number): boolean {
  let below = 0;
  for (let i = 0; i < size; i++) if ((xs[i] as number) < x) below++;
  return 2 * below < size;
}

/** Median of the usable values within 15 s of each, same group; NaN where there are too few or the value is not usable. */
function localMedians(time: Float64Array, xs: Float64Array, group: Uint8Array, skip: Uint8Array): Float64Array {
  const n = xs.length;
  const centre = new Float64Array(n).fill(Number.NaN);
  const near = movingWindow(n);
  let from = 0;
  let to = 0;
  for (let i = 0; i < n; i++) {
    if (i > 0 && group[i] !== group[i - 1]) {
      near.size = 0;
      from = i;
      to = i;
    }
    const t = time[i] as number;
    for (; to < n && group[to] === group[i] && (skip[to] !== 0 || (time[to] as number) <= t + NEIGHBOURS_S); to++)
      if (skip[to] === 0 && !Number.isNaN(xs[to] as number)) enter(near, xs[to] as number);
    for (; from < to && (skip[from] !== 0 || (time[from] as number) < t - NEIGHBOURS_S); from++)
      if (skip[from] === 0 && !Number.isNaN(xs[from] as number)) leave(near, xs[from] as number);
    if (skip[i] === 0 && !Number.isNaN(xs[i] as number) && near.size >= FEWEST) centre[i] = middle(near);
  }
  return centre;
}

const count = (...xs: number[]): number => {
  const time = Float64Array.from(xs, (_, i) => 1.5 * i);
  const n = xs.length;
  return localOutliers(time, Float64Array.from(xs), new Uint8Array(n), new Uint8Array(n)).reduce((a, b) => a + b, 0);
};
const quiet = [2.95, 3.05, 2.9, 3.02, 3, 2.96, 3.04, 2.98, 3.01, 2.97];
export const info: FormulaInfo<number[], number> = {
  id: "local-outlier",
  revision: 1,
  title: "Breaths far from their neighbours",
  equation: "|x − median(±15 s)| > 4 · 1.4826 · median|x − median|(±60 s), and > 10 % of the median",
  inputs: { breaths: { unit: "L/min", range: "one phase, 1.5 s apart in the checks" } },
  output: { unit: "breaths excluded", decimals: 0 },
  caveat: "It sees single odd breaths, not a fault that lasts longer than about ten seconds.",
  source: {
    authors: "Lamarra N, Whipp BJ, Ward SA, Wasserman K",
    year: 1987,
    title: "Effect of interbreath fluctuations on characterizing exercise gas exchange kinetics",
    journal: "J Appl Physiol 62(5):2003–2012",
    where:
      "breath noise is uncorrelated and Gaussian, so a local 4 SD limit is apt; medians, ±15 s, ±60 s and 10 % are this project's",
    verified: "seen",
  },
  compute: count,
  checks: [
    { given: quiet, expect: 0, tolerance: 0, from: "by hand: all within 0.1 of 3.0" },
    {
      given: [...quiet, 1.2, ...quiet],
      expect: 1,
      tolerance: 0,
      from: "by hand: 1.2 is 1.78 below the median 2.98; robust SD about 0.04",
    },
  ],
};
