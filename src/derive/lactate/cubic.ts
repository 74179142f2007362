/** Least-squares polynomial of third order, in a variable scaled to −1…1 so that large loads cost no digits. */
import type { Point } from "./curve.js";
import { at } from "./curve.js";

export interface Cubic {
  /** Value at a load. */
  value(x: number): number;
  /** Loads, inside the data, at which the slope equals `slope`. */
  whereSlope(slope: number): readonly number[];
}

/** Four points or more with loads that rise. */
export function fitCubic(points: readonly Point[]): Cubic {
  const first = at(points, 0)[0];
  const last = at(points, points.length - 1)[0];
  const middle = (first + last) / 2;
  const half = (last - first) / 2;
  const scaled = (x: number) => (x - middle) / half;
  // Normal equations of 1, t, t², t³ with the right side as fifth column.
  const rows = Array.from({ length: 4 }, (_, r) =>
    Array.from({ length: 5 }, (_, c) =>
      points.reduce((sum, [x, y]) => sum + scaled(x) ** r * (c < 4 ? scaled(x) ** c : y), 0),
    ),
  );
  const [a, b, c, d] = solve(rows) as [number, number, number, number];
  return {
    value(x) {
      const t = scaled(x);
      return a + t * (b + t * (c + t * d));
    },
    whereSlope(slope) {
      // b + 2ct + 3dt² = slope·half
      const rest = b - slope * half;
      const inside = (t: number) => t > -1 && t < 1;
      if (Math.abs(d) < 1e-12 * (Math.abs(c) + Math.abs(rest)))
        return c === 0 ? [] : [-rest / (2 * c)].filter(inside).map(loadOf);
      const root = c * c - 3 * d * rest;
      if (root < 0) return [];
      const q = -(c + (c < 0 ? -1 : 1) * Math.sqrt(root));
      const roots = q === 0 ? [0] : [q / (3 * d), rest / q];
      return roots.filter(inside).map(loadOf);
    },
  };

  function loadOf(t: number): number {
    return middle + t * half;
  }
}

/** Gauss elimination with row exchange; the matrix is 4 by 5 and of full rank for rising loads. */
function solve(rows: readonly (readonly number[])[]): number[] {
  const m = rows.map((row) => [...row]);
  const cell = (r: number, c: number) => (m[r] as number[])[c] as number;
  for (let k = 0; k < 4; k++) {
    let pivot = k;
    for (let r = k + 1; r < 4; r++) if (Math.abs(cell(r, k)) > Math.abs(cell(pivot, k))) pivot = r;
    [m[k], m[pivot]] = [m[pivot] as number[], m[k] as number[]];
    for (let r = 0; r < 4; r++) {
      if (r === k) continue;
      const share = cell(r, k) / cell(k, k);
      m[r] = (m[r] as number[]).map((x, c) => x - share * cell(k, c));
    }
  }
  return Array.from({ length: 4 }, (_, k) => cell(k, 4) / cell(k, k));
}
