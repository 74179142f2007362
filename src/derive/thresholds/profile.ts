/**
 * Residual sum of squares of a curve with a bend, for each place of the bend: after the fixed terms are made orthogonal
 * once, a place costs one projection, and a second bend above it one more for each of its candidates.
 */
import { dot, removeBasis, unitBeside } from "./orthogonal.js";

/** Fills a column with the bent term at each x: 0 up to v. */
export type BentTerm = (x: Float64Array, v: number, into: Float64Array) => void;

export interface BentProblem {
  /** Position of each point on the axis of the bend. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Weight of each point (its count of breaths). */
  readonly weight: Float64Array;
  /** Terms without bend, a column each; the constant first. */
  readonly terms: readonly Float64Array[];
  readonly bent: BentTerm;
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
  /** Least for a bend at v: by itself, and with a second one above it where that is better. */
  bendAt(v: number): Bend;
  /** What the best fit at v leaves, and how much the bent term takes part. */
  settle(
    v: number,
    withSecond: boolean,
  ): { readonly residual: Float64Array; readonly change: number; readonly second?: number };
}

interface Bend {
  /** Residual sum of squares and coefficient of the bent term. */
  readonly alone: number;
  readonly change: number;
  readonly both: number;
  readonly changeOfBoth: number;
  readonly second: Candidate | undefined;
}
interface Candidate {
  readonly at: number;
  readonly unit: Float64Array;
  readonly along: number;
}

export function reduce(problem: BentProblem): Reduced {
  const { x, y, weight, terms, bent, sign } = problem;
  const gap = problem.second?.gap ?? 0;
  const root = weight.map(Math.sqrt);
  const basis: Float64Array[] = [];
  for (const term of terms) {
    const unit = unitBeside(times(term.slice(), root), basis);
    if (unit !== undefined) basis.push(unit);
  }
  const rest = times(y.slice(), root);
  removeBasis(rest, basis);
  const none = dot(rest, rest);

  const h = new Float64Array(x.length);
  const candidates: Candidate[] = [];
  for (const at of problem.second?.at ?? []) {
    bent(x, at, h);
    const unit = unitBeside(times(h, root), basis);
    if (unit !== undefined) candidates.push({ at, unit, along: dot(unit, rest) });
  }

  const bendAt = (v: number): Bend => {
    bent(x, v, h);
    removeBasis(times(h, root), basis);
    const size = dot(h, h);
    const along = dot(h, rest);
    const change = size > 1e-12 && along * sign > 0 ? along / size : 0;
    const alone = none - change * along;
    let both = alone;
    let changeOfBoth = change;
    let second: Candidate | undefined;
    for (let k = 0; k < candidates.length; k++) {
      const candidate = candidates[k] as Candidate;
      if (candidate.at < v + gap) continue;
      const shared = dot(h, candidate.unit);
      const left = size - shared * shared;
      const raw = left > 1e-9 * size ? (along - shared * candidate.along) / left : 0;
      const beside = raw * sign > 0 ? raw : 0;
      const share = candidate.along - beside * shared;
      if (share * sign < 0) continue;
      const rss = none - candidate.along ** 2 - beside * beside * left;
      if (!(rss < both)) continue;
      both = rss;
      changeOfBoth = beside;
      second = candidate;
    }
    return { alone, change, both, changeOfBoth, second };
  };

  return {
    none,
    secondAlone: candidates.reduce(
      (least, c) => (c.along * sign > 0 ? Math.min(least, none - c.along ** 2) : least),
      none,
    ),
    bendAt,
    settle(v, withSecond) {
      const bend = bendAt(v);
      const change = withSecond ? bend.changeOfBoth : bend.change;
      const second = withSecond ? bend.second : undefined;
      const residual = rest.slice();
      if (second !== undefined) {
        removeBasis(h, [second.unit]);
        removeBasis(residual, [second.unit]);
      }
      for (let i = 0; i < h.length; i++) residual[i] = (residual[i] as number) - change * (h[i] as number);
      return { residual, change, ...(second === undefined ? {} : { second: second.at }) };
    },
  };
}

/** column · factor, point by point, in place. */
function times(column: Float64Array, factor: Float64Array): Float64Array {
  for (let i = 0; i < column.length; i++) column[i] = (column[i] as number) * (factor[i] as number);
  return column;
}
