/**
 * A curve with one bend: y = β0 + β1·φ1(x) + … + δ·h(x, v), δ of a stated sign, v the bend.
 *
 * For each candidate v the rest is linear least squares. The residual sum of squares over v is the profile: its minimum
 * is the estimate, and the 95 % interval is where the profile stays below (1 + κ·t²/df) of the minimum. κ ≥ 1 widens it
 * for residuals that resemble their neighbours. A second bend higher up (VT2, or the last minute of an all-out test) is
 * a nuisance: at each v the best place for it is taken, so that its uncertainty is in the interval.
 */
import { fisherCdf, studentQuantile } from "../../kernel/student.js";
import { coefficients } from "./orthogonal.js";
import { type BentProblem, type Reduced, reduce } from "./profile.js";

export interface BentFit {
  readonly at: number;
  readonly low: number;
  readonly high: number;
  /** Coefficient of the bent term. */
  readonly change: number;
  /** Of the F test of the bend against none, κ allowed for. */
  readonly probability: number;
  readonly df: number;
  readonly kappa: number;
  /** Coefficients of the fixed terms, in their order. */
  readonly coefficients: readonly number[];
  /** The minimum lies too near an end of the data. */
  readonly edge: boolean;
  /** Another minimum outside the interval that the data hardly tell from the first. */
  readonly rival?: number;
}
export type BentOutcome = { readonly fit: BentFit } | { readonly because: string };

const GRID = 72;
const NEED_SECOND = 0.01;

interface Scan {
  readonly rss: Float64Array;
  readonly best: number;
  readonly bend: number;
  readonly least: number;
}

/** Student's t of a two-sided 95 % interval, kept once computed: a test asks for the same few again and again. */
const known = new Map<number, number>();
function twoSided(df: number): number {
  const before = known.get(df);
  if (before !== undefined) return before;
  const t = studentQuantile(0.975, df);
  known.set(df, t);
  return t;
}

/** Best bend with its interval, or why there is none to fit. */
export function fitBend(problem: BentProblem): BentOutcome {
  const { x, y, weight, terms, side, second } = problem;
  const n = x.length;
  if (n < 2 * side + 2 || n < terms.length + 6) return { because: `only ${n} intervals of 15 s hold what it needs` };
  const sorted = x.slice().sort();
  const first = Math.max(sorted[1] as number, problem.above ?? 0);
  const last = Math.min(sorted[n - 2] as number, problem.below ?? Number.POSITIVE_INFINITY);
  const innerLow = Math.max(sorted[side - 1] as number, first);
  const innerHigh = Math.min(sorted[n - side] as number, last);
  if (!(innerHigh > innerLow)) return { because: "too little of the test lies where it is sought" };

  const reduced = reduce(problem);
  const profile = profileOf(reduced, first, last);
  let withSecond = second !== undefined && !second.maybe;
  let scan = lowest(reduced, profile, withSecond);
  if (second?.maybe === true) {
    const both = lowest(reduced, profile, true);
    const df = n - terms.length - 4;
    const kappa = resemblance(reduced.settle(both.bend, true).residual);
    const f = (scan.least - both.least) / 2 / ((both.least / df) * kappa);
    if (f > 0 && 1 - fisherCdf(f, 2, df) < NEED_SECOND) {
      withSecond = true;
      scan = both;
    }
  }
  const df = n - terms.length - (withSecond ? 4 : 2);
  const { residual, change, second: secondAt } = reduced.settle(scan.bend, withSecond);
  const least = Math.max(scan.least, 1e-12 * reduced.none, Number.MIN_VALUE);
  const kappa = resemblance(residual);
  const straight = withSecond ? reduced.secondAlone : reduced.none;
  const f = Math.max(0, (straight - least) / 2 / ((least / df) * kappa));
  const limit = least * (1 + (kappa * twoSided(df) ** 2) / df);
  const { low, high, rival } = below(scan, profile.at, limit);
  const fixed = secondAt === undefined ? terms : [...terms, bentColumn(problem, secondAt)];
  const unbent = bentColumn(problem, scan.bend);
  for (let i = 0; i < n; i++) unbent[i] = (y[i] as number) - change * (unbent[i] as number);
  return {
    fit: {
      at: scan.bend,
      low,
      high,
      change,
      probability: 1 - fisherCdf(f, 2, df),
      df,
      kappa,
      coefficients: coefficients(fixed, unbent, weight),
      edge: scan.best === 0 || scan.best === GRID - 1 || scan.bend < innerLow || scan.bend > innerHigh,
      ...(rival === undefined ? {} : { rival }),
    },
  };
}

const bentColumn = ({ x, bent }: BentProblem, v: number): Float64Array => {
  const column = new Float64Array(x.length);
  bent(x, v, column);
  return column;
};

interface Profile {
  readonly at: Float64Array;
  /** Residual sum of squares at each place: with one bend, and with a second one where that is better. */
  readonly alone: Float64Array;
  readonly both: Float64Array;
}

function profileOf(reduced: Reduced, first: number, last: number): Profile {
  const at = new Float64Array(GRID);
  const alone = new Float64Array(GRID);
  const both = new Float64Array(GRID);
  for (let k = 0; k < GRID; k++) {
    const v = first + ((last - first) * k) / (GRID - 1);
    const bend = reduced.bendAt(v);
    at[k] = v;
    alone[k] = bend.alone;
    both[k] = bend.both;
  }
  return { at, alone, both };
}

/** The minimum of a profile, refined by a parabola through the three lowest neighbours. */
function lowest(reduced: Reduced, { at, alone, both }: Profile, withSecond: boolean): Scan {
  const rss = withSecond ? both : alone;
  let best = 0;
  for (let k = 1; k < GRID; k++) if ((rss[k] as number) < (rss[best] as number)) best = k;
  let bend = at[best] as number;
  let least = rss[best] as number;
  if (best > 0 && best < GRID - 1) {
    const a = rss[best - 1] as number;
    const c = rss[best + 1] as number;
    const curve = a - 2 * least + c;
    if (curve > 0 && Number.isFinite(curve)) {
      const moved = bend + ((0.5 * (a - c)) / curve) * ((at[1] as number) - (at[0] as number));
      const bent = reduced.bendAt(moved);
      const there = withSecond ? bent.both : bent.alone;
      if (there < least) {
        bend = moved;
        least = there;
      }
    }
  }
  return { rss, best, bend, least };
}

/** Where the profile stays below the limit around its minimum, and the lowest place outside that also does. */
function below(scan: Scan, at: Float64Array, limit: number): { low: number; high: number; rival?: number } {
  const { rss, best, bend } = scan;
  let from = best;
  let to = best;
  while (from > 0 && (rss[from - 1] as number) <= limit) from--;
  while (to < GRID - 1 && (rss[to + 1] as number) <= limit) to++;
  const crossing = (inside: number, outside: number) => {
    if (outside < 0 || outside >= GRID) return at[inside] as number;
    const p = rss[inside] as number;
    const q = rss[outside] as number;
    const part = q > p && Number.isFinite(q) ? Math.min(1, Math.max(0, (limit - p) / (q - p))) : 0;
    return (at[inside] as number) + part * ((at[outside] as number) - (at[inside] as number));
  };
  let rival: number | undefined;
  let least = limit;
  for (let k = 0; k < GRID; k++)
    if ((k < from || k > to) && (rss[k] as number) <= least) {
      least = rss[k] as number;
      rival = at[k] as number;
    }
  return {
    low: Math.min(bend, crossing(from, from - 1)),
    high: Math.max(bend, crossing(to, to + 1)),
    ...(rival === undefined ? {} : { rival }),
  };
}

/** Variance inflation (1 + r)/(1 − r) from the correlation r of neighbouring residuals; at least 1, r at most 0.6. */
function resemblance(residual: Float64Array): number {
  let top = 0;
  let bottom = 0;
  for (let i = 0; i < residual.length; i++) {
    bottom += (residual[i] as number) ** 2;
    if (i > 0) top += (residual[i] as number) * (residual[i - 1] as number);
  }
  if (bottom === 0) return 1;
  const r = Math.min(0.6, Math.max(0, top / bottom));
  return (1 + r) / (1 - r);
}
