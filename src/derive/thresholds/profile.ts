/**
 * Residual sum of squares of a curve with a bend, for each place of the bend: after the fixed terms are made orthogonal
 * once, a place costs one projection, and a second bend above it one more for each of its candidates.
 */
import { dot, removeBasis, unitBeside } from "./orthogonal.js";

export interface BentProblem {
  /** Position of each point on the axis of the bend. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Weight of each point (its count of breaths). */
  readonly weight: Float64Array;
  /** Terms without bend, a column each; the constant first. */
  readonly terms: readonly Float64Array[];
  /** The bent term: 0 below v. */
  readonly bent: (x: number, v: number) => number;
  readonly sign: 1 | -1;
  /** Points that must lie on each side of the bend. */
  readonly side: number;
  /** Limits of the candidates, where something else is known: VT1 lies below VT2. */
  readonly above?: number;
  readonly below?: number;
  /** Places of a second bend of the same form that may lie above the first. maybe: it may also be absent. */
  readonly second?: Second;
}
export interface Second {
  readonly at: readonly number[];
  readonly maybe: boolean;
  readonly gap: number;
}

export interface Reduced {
  /** Residual sum of squares of the fixed terms alone. */
  readonly none: number;
  /** Least with the second bend alone, or `none`. */
  readonly secondAlone: number;
  /** Least for a bend at v, with or without a second one. */
  rss(v: number, withSecond: boolean): number;
  /** What the best fit at v leaves, and how much the bent term takes part. */
  settle(
    v: number,
    withSecond: boolean,
  ): { readonly residual: Float64Array; readonly change: number; readonly second?: number };
}

interface Candidate {
  readonly at: number;
  readonly unit: Float64Array;
  readonly along: number;
}

export function reduce(problem: BentProblem): Reduced {
  const { x, y, weight, terms, bent, sign } = problem;
  const n = x.length;
  const root = weight.map(Math.sqrt);
  const scaled = (column: Float64Array) => column.map((value, i) => value * (root[i] as number));
  const basis: Float64Array[] = [];
  for (const term of terms) {
    const unit = unitBeside(scaled(term), basis);
    if (unit !== undefined) basis.push(unit);
  }
  const rest = scaled(y);
  removeBasis(rest, basis);
  const none = dot(rest, rest);
  const candidates: Candidate[] = [];
  for (const at of problem.second?.at ?? []) {
    const unit = unitBeside(scaled(x.map((value) => bent(value, at))), basis);
    if (unit !== undefined) candidates.push({ at, unit, along: dot(unit, rest) });
  }

  const h = new Float64Array(n);
  const bendAt = (v: number, withSecond: boolean): { rss: number; change: number; second?: Candidate } => {
    for (let i = 0; i < n; i++) h[i] = bent(x[i] as number, v) * (root[i] as number);
    removeBasis(h, basis);
    const size = dot(h, h);
    const along = dot(h, rest);
    const alone = size > 1e-12 && along * sign > 0 ? along / size : 0;
    let best: { rss: number; change: number; second?: Candidate } = { rss: none - alone * along, change: alone };
    if (!withSecond) return best;
    for (const second of candidates) {
      if (second.at < v + (problem.second?.gap ?? 0)) continue;
      const shared = dot(h, second.unit);
      const left = size - shared * shared;
      const raw = left > 1e-9 * size ? (along - shared * second.along) / left : 0;
      const change = raw * sign > 0 ? raw : 0;
      const share = second.along - change * shared;
      if (share * sign < 0) continue;
      const rss = none - second.along ** 2 - change * change * left;
      if (rss < best.rss) best = { rss, change, second };
    }
    return best;
  };

  return {
    none,
    secondAlone: candidates.reduce(
      (least, c) => (c.along * sign > 0 ? Math.min(least, none - c.along ** 2) : least),
      none,
    ),
    rss: (v, withSecond) => bendAt(v, withSecond).rss,
    settle(v, withSecond) {
      const { change, second } = bendAt(v, withSecond);
      const residual = rest.slice();
      if (second !== undefined) {
        removeBasis(h, [second.unit]);
        removeBasis(residual, [second.unit]);
      }
      for (let i = 0; i < n; i++) residual[i] = (residual[i] as number) - change * (h[i] as number);
      return { residual, change, ...(second === undefined ? {} : { second: second.at }) };
    },
  };
}
