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
import { median } from "../../kernel/statistics.js";

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
  const out = new Uint8Array(n);
  const centre = new Float64Array(n).fill(Number.NaN);
  const away = new Float64Array(n).fill(Number.NaN);
  const usable = (i: number) => skip[i] === 0 && !Number.isNaN(xs[i] as number);

  const sorted = new Float64Array(n);
  let size = 0;
  const place = (x: number) => {
    let low = 0;
    let high = size;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((sorted[middle] as number) < x) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  let from = 0;
  let to = 0;
  for (let i = 0; i < n; i++) {
    if (i > 0 && group[i] !== group[i - 1]) {
      size = 0;
      from = i;
      to = i;
    }
    const t = time[i] as number;
    while (to < n && group[to] === group[i] && (skip[to] !== 0 || (time[to] as number) <= t + NEIGHBOURS_S)) {
      if (usable(to)) {
        const at = place(xs[to] as number);
        sorted.copyWithin(at + 1, at, size);
        sorted[at] = xs[to] as number;
        size++;
      }
      to++;
    }
    while (from < to && (skip[from] !== 0 || (time[from] as number) < t - NEIGHBOURS_S)) {
      if (usable(from)) {
        const at = place(xs[from] as number);
        sorted.copyWithin(at, at + 1, size);
        size--;
      }
      from++;
    }
    if (!usable(i) || size < FEWEST) continue;
    const half = size >> 1;
    centre[i] = size % 2 ? (sorted[half] as number) : ((sorted[half - 1] as number) + (sorted[half] as number)) / 2;
    away[i] = Math.abs((xs[i] as number) - (centre[i] as number));
  }

  // The spread moves slowly: it is found once for every quarter of its window.
  let spread = Number.NaN;
  let asked = Number.NEGATIVE_INFINITY;
  let left = 0;
  for (let i = 0; i < n; i++) {
    if (Number.isNaN(away[i] as number)) continue;
    const t = time[i] as number;
    const changed = i > 0 && group[i] !== group[i - 1];
    if (changed || t - asked > SPREAD_S / 4 || Number.isNaN(spread)) {
      asked = t;
      while (left < i && ((time[left] as number) < t - SPREAD_S || group[left] !== group[i])) left++;
      const near: number[] = [];
      for (let j = left; j < n && group[j] === group[i] && !((time[j] as number) > t + SPREAD_S); j++)
        if (!Number.isNaN(away[j] as number)) near.push(away[j] as number);
      spread = near.length >= FEWEST ? 1.4826 * median(near) : Number.NaN;
    }
    const distance = away[i] as number;
    if (distance > limitSd * spread && distance > LEAST_SHARE * (centre[i] as number)) out[i] = 1;
  }
  return out;
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
