/**
 * Clouds of breaths and rows of people, placed here rather than by Vega: a thousand faint points cost more than all else
 * in a report. Vega is given the outermost only, which are what its scales need; where it puts them says where the others
 * go. People are ticks: they have a place across, and all the same height.
 */
import type { Datum, Figure, Spec } from "../kernel/figure.js";
import { type Point, thousandth } from "./svg-paths.js";

export interface Cloud {
  readonly points: readonly Datum[];
  /** The outermost points, in the order of the data. */
  readonly outermost: readonly Datum[];
  /** Places of the outermost among the points. */
  readonly places: readonly number[];
}

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
    return /^(?:breaths\d*|people)$/.test(name) ? [name] : [];
  });
}

function cloudOf(points: readonly Datum[]): Cloud | undefined {
  if (points.length === 0) return undefined;
  const axes = (["x", "y"] as const).filter((axis) => axis in (points[0] as Datum));
  const places = [...new Set(axes.flatMap((axis) => extremes(points, axis)))].sort((a, b) => a - b);
  return { points, outermost: places.map((place) => points[place] as Datum), places };
}

/** Places of the least and the greatest. */
function extremes(points: readonly Datum[], axis: Axis): [number, number] {
  let [least, greatest] = [0, 0];
  for (let i = 1; i < points.length; i++) {
    const value = along(points[i], axis);
    if (value < along(points[least], axis)) least = i;
    if (value > along(points[greatest], axis)) greatest = i;
  }
  return [least, greatest];
}
type Axis = "x" | "y";
const along = (point: Datum | undefined, axis: Axis): number => point?.[axis] as number;

/** Where each point of a cloud goes, from where its outermost were drawn. Throws when these were drawn otherwise. */
export function placed(cloud: Cloud, drawn: readonly Point[]): readonly Point[] {
  if (drawn.length !== cloud.places.length) throw new Error("a cloud was not drawn as expected");
  const across = scaleOf(cloud, drawn, "x");
  const down = "y" in (cloud.points[0] as Datum) ? scaleOf(cloud, drawn, "y") : () => drawn[0]?.y ?? 0;
  return cloud.points.map((point) => ({ x: across(along(point, "x")), y: down(along(point, "y")) }));
}

/** The scale of an axis, linear as all of ours, from the two outermost points along it. */
function scaleOf(cloud: Cloud, drawn: readonly Point[], axis: Axis): (value: number) => number {
  const values = cloud.places.map((place) => along(cloud.points[place], axis));
  const low = values.indexOf(Math.min(...values));
  const high = values.indexOf(Math.max(...values));
  const [from, to] = [values[low] as number, values[high] as number];
  const [start, end] = [low, high].map((i) => thousandth(drawn[i]?.[axis] ?? 0)) as [number, number];
  const slope = to === from ? 0 : (end - start) / (to - from);
  return (value) => start + slope * (value - from);
}
