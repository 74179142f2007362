/**
 * A curve with one bend: y = β0 + β1·φ1(x) + … + δ·h(x, v), δ of a stated sign, v the bend.
 *
 * For each candidate v the rest is linear least squares; after the fixed terms are made orthogonal once, a candidate
 * costs one projection. The residual sum of squares over v is the profile: its minimum is the estimate, and the 95 %
 * interval is where the profile stays below (1 + κ·t²/df) of the minimum. κ ≥ 1 widens it for residuals that resemble
 * their neighbours.
 */
import { studentQuantile } from "../../kernel/student.js";

export interface BentProblem {
  /** Position of each point on the axis of the bend. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Weight of each point (its count of breaths). */
  readonly weight: Float64Array;
  /** Terms without bend, a column each; the constant included. */
  readonly terms: readonly Float64Array[];
  /** The bent term: 0 below v. */
  readonly bent: (x: number, v: number) => number;
  readonly sign: 1 | -1;
  /** Points that must lie on each side of the bend. */
  readonly side: number;
  /** Limits of the candidates, where something else is known: VT1 lies below VT2. */
  readonly above?: number;
  readonly below?: number;
}
export interface BentFit {
  readonly at: number;
  readonly low: number;
  readonly high: number;
  /** Coefficient of the bent term. */
  readonly change: number;
  /** F of the bend against none, 2 and df degrees of freedom, after allowing for κ. */
  readonly f: number;
  readonly df: number;
  readonly probability: number;
  readonly kappa: number;
  /** Coefficients of the fixed terms, in their order. */
  readonly coefficients: readonly number[];
  /** The minimum lies too near an end of the data. */
  readonly edge: boolean;
  /** Another minimum outside the neighbourhood of the first that the data hardly tell from it. */
  readonly rival?: number;
}

const GRID = 96;

export type BentOutcome = { readonly fit: BentFit } | { readonly because: string };

/** Best bend with its interval, or why there is none to fit. `alpha`: largest probability of the F test. */
export function fitBend(problem: BentProblem, confidence = 0.95): BentOutcome {
  const { x, y, weight, terms, bent, sign, side } = problem;
  const n = x.length;
  const df = n - terms.length - 2;
  if (df < 3 || n < 2 * side + 1) return { because: `only ${n} intervals of 15 s hold what it needs` };

  const root = weight.map(Math.sqrt);
  const basis: Float64Array[] = [];
  for (const term of terms) {
    const q = term.map((value, i) => value * (root[i] as number));
    removeBasis(q, basis);
    const size = Math.sqrt(dot(q, q));
    if (size > 1e-9) basis.push(q.map((value) => value / size));
  }
  const rest = y.map((value, i) => value * (root[i] as number));
  removeBasis(rest, basis);
  const straight = dot(rest, rest);

  const sorted = x.slice().sort();
  const first = Math.max(sorted[1] as number, problem.above ?? 0);
  const last = Math.min(sorted[n - 2] as number, problem.below ?? Number.POSITIVE_INFINITY);
  const innerLow = Math.max(sorted[side - 1] as number, first);
  const innerHigh = Math.min(sorted[n - side] as number, last);
  if (!(innerHigh > innerLow)) return { because: "VO2 hardly rises in the incremental phase" };

  const h = new Float64Array(n);
  const rssAt = (v: number): number => {
    for (let i = 0; i < n; i++) h[i] = bent(x[i] as number, v) * (root[i] as number);
    removeBasis(h, basis);
    const size = dot(h, h);
    const along = dot(h, rest);
    return size > 1e-12 && along * sign > 0 ? straight - (along * along) / size : straight;
  };
  const at = new Float64Array(GRID);
  const profile = new Float64Array(GRID);
  let best = 0;
  for (let k = 0; k < GRID; k++) {
    at[k] = first + ((last - first) * k) / (GRID - 1);
    profile[k] = rssAt(at[k] as number);
    if ((profile[k] as number) < (profile[best] as number)) best = k;
  }
  let bend = at[best] as number;
  let least = profile[best] as number;
  if (best > 0 && best < GRID - 1) {
    const a = profile[best - 1] as number;
    const c = profile[best + 1] as number;
    const curve = a - 2 * least + c;
    const moved = curve > 0 ? bend + ((0.5 * (a - c)) / curve) * ((last - first) / (GRID - 1)) : bend;
    const there = rssAt(moved);
    if (there < least) {
      bend = moved;
      least = there;
    }
  }
  least = Math.max(least, 1e-12 * straight, Number.MIN_VALUE);

  for (let i = 0; i < n; i++) h[i] = bent(x[i] as number, bend) * (root[i] as number);
  removeBasis(h, basis);
  const size = dot(h, h);
  const change = size > 1e-12 ? dot(h, rest) / size : 0;
  const residual = rest.map((value, i) => value - change * (h[i] as number));
  const kappa = resemblance(residual);

  const f = (straight - least) / 2 / ((least / df) * kappa);
  const limit = least * (1 + (kappa * studentQuantile((1 + confidence) / 2, df) ** 2) / df);
  let from = best;
  let to = best;
  while (from > 0 && (profile[from - 1] as number) <= limit) from--;
  while (to < GRID - 1 && (profile[to + 1] as number) <= limit) to++;
  let rival: number | undefined;
  let rivalRss = limit;
  for (let k = 0; k < GRID; k++)
    if ((k < from || k > to) && (profile[k] as number) <= rivalRss) {
      rivalRss = profile[k] as number;
      rival = at[k] as number;
    }
  const crossing = (inside: number, outside: number) => {
    if (outside < 0 || outside >= GRID) return at[inside] as number;
    const p = profile[inside] as number;
    const q = profile[outside] as number;
    const part = q > p ? Math.min(1, Math.max(0, (limit - p) / (q - p))) : 0;
    return (at[inside] as number) + part * ((at[outside] as number) - (at[inside] as number));
  };
  return {
    fit: {
      at: bend,
      low: Math.min(bend, crossing(from, from - 1)),
      high: Math.max(bend, crossing(to, to + 1)),
      change,
      f,
      df,
      probability: (1 + (2 * f) / df) ** (-df / 2),
      kappa,
      coefficients: coefficientsOf(problem, bend, change),
      edge: bend < innerLow || bend > innerHigh,
      ...(rival === undefined ? {} : { rival }),
    },
  };
}

/** Variance inflation (1 + r)/(1 − r) from the correlation r of neighbouring residuals; at least 1. */
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

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function removeBasis(column: Float64Array, basis: readonly Float64Array[]): void {
  for (const q of basis) {
    const along = dot(q, column);
    for (let i = 0; i < column.length; i++) column[i] = (column[i] as number) - along * (q[i] as number);
  }
}

/** Weighted least squares of y − change·bent on the fixed terms, by elimination with pivots. */
function coefficientsOf(problem: BentProblem, bend: number, change: number): number[] {
  const { x, y, weight, terms } = problem;
  const size = terms.length;
  const rows = terms.map((a) => {
    const row = terms.map((b) => sumOf(a, b, weight));
    row.push(
      a.reduce((sum, value, i) => {
        const bent = change * problem.bent(x[i] as number, bend);
        return sum + (weight[i] as number) * value * ((y[i] as number) - bent);
      }, 0),
    );
    return row;
  });
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++) if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[pivot]?.[k] ?? 0)) pivot = i;
    const top = rows[pivot] as number[];
    rows[pivot] = rows[k] as number[];
    rows[k] = top;
    if (Math.abs(top[k] as number) < 1e-14) continue; // a column that the others already hold
    for (let i = 0; i < size; i++) {
      const row = rows[i] as number[];
      if (i === k) continue;
      const factor = (row[k] as number) / (top[k] as number);
      for (let j = k; j <= size; j++) row[j] = (row[j] as number) - factor * (top[j] as number);
    }
  }
  return rows.map((row, k) => (Math.abs(row[k] as number) < 1e-14 ? 0 : (row[size] as number) / (row[k] as number)));
}

function sumOf(a: Float64Array, b: Float64Array, weight: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number) * (weight[i] as number);
  return sum;
}
