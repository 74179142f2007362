/**
 * Clouds of breaths, placed here rather than by Vega: a thousand faint points cost more than all else in a report. Vega is
 * given the outermost points only, which are what its scales need; where it puts them says where the others go.
 */
import type { Datum, Figure, Spec } from "../kernel/figure.js";
import { type Point, thousandth } from "./svg-paths.js";

export interface Cloud {
  readonly points: readonly (readonly [x: number, y: number])[];
  /** The outermost points, in the order of the data, each followed by its break. */
  readonly outermost: readonly Datum[];
  /** Places of the outermost among the points. */
  readonly places: readonly number[];
}

/** Fewer points than this are left to Vega. */
const FEWEST = 40;

/** Clouds by data name, in the order in which the figure draws them. */
export function cloudsOf(figure: Figure): ReadonlyMap<string, Cloud> {
  const clouds = new Map<string, Cloud>();
  for (const name of cloudNames(figure.spec)) {
    const cloud = cloudOf(figure.data[name] ?? []);
    if (cloud !== undefined) clouds.set(name, cloud);
  }
  return clouds;
}

function cloudNames(spec: Spec): string[] {
  const layers = (spec.layer ?? []) as readonly Spec[];
  return layers.flatMap((layer) => {
    if (layer.layer !== undefined) return cloudNames(layer);
    const name = (layer.data as { readonly name?: string } | undefined)?.name ?? "";
    return /^breaths\d*$/.test(name) ? [name] : [];
  });
}

function cloudOf(rows: readonly Datum[]): Cloud | undefined {
  const points: [number, number][] = [];
  for (let i = 0; i < rows.length; i += 2) {
    const [x, y] = [rows[i]?.x, rows[i]?.y];
    // Only a point followed by a break is one of a cloud.
    if (typeof x !== "number" || typeof y !== "number" || rows[i + 1]?.x !== null) return undefined;
    points.push([x, y]);
  }
  if (points.length < FEWEST) return undefined;
  const places = [...new Set([0, 1].flatMap((axis) => [extreme(points, axis, 1), extreme(points, axis, -1)]))].sort(
    (a, b) => a - b,
  );
  const outermost = places.flatMap((place) => [rows[2 * place] as Datum, rows[2 * place + 1] as Datum]);
  return { points, outermost, places };
}

function extreme(points: readonly (readonly [number, number])[], axis: number, sign: number): number {
  let best = 0;
  for (let i = 1; i < points.length; i++)
    if (sign * (points[i]?.[axis] as number) > sign * (points[best]?.[axis] as number)) best = i;
  return best;
}

/** Where each point of a cloud goes, from where its outermost were drawn. Throws when these were drawn otherwise. */
export function placed(cloud: Cloud, drawn: readonly Point[]): readonly Point[] {
  if (drawn.length !== cloud.places.length) throw new Error("a cloud was not drawn as expected");
  const across = line(
    cloud,
    drawn.map(({ x = 0 }) => thousandth(x)),
    0,
  );
  const down = line(
    cloud,
    drawn.map(({ y = 0 }) => thousandth(y)),
    1,
  );
  return cloud.points.map(([x, y]) => ({ x: across(x), y: down(y) }));
}

/** The scale of an axis, linear as all of ours, from the two outermost points along it. */
function line(cloud: Cloud, drawn: readonly number[], axis: 0 | 1): (value: number) => number {
  const values = cloud.places.map((place) => cloud.points[place]?.[axis] as number);
  const low = values.indexOf(Math.min(...values));
  const high = values.indexOf(Math.max(...values));
  const [from, to] = [values[low] as number, values[high] as number];
  const [start, end] = [drawn[low] as number, drawn[high] as number];
  const slope = to === from ? 0 : (end - start) / (to - from);
  return (value) => start + slope * (value - from);
}
