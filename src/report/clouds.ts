/**
 * Clouds of breaths, placed here rather than by Vega: a thousand faint points cost more than all else in a report. Vega is
 * given the outermost points only, which are what its scales need; where it puts them says where the others go.
 */
import type { Datum, Figure, Spec } from "../kernel/figure.js";

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

const POINTS = / d="((?:M-?[\d.e-]+,-?[\d.e-]+Z)+)"/g;

/**
 * The drawing with a sign "@cloud0" in place of each cloud's path, and the paths: they are put in when the rest is tidy.
 * Throws when a cloud was not drawn as expected.
 */
export function withClouds(svg: string, clouds: ReadonlyMap<string, Cloud>) {
  const waiting = [...clouds.values()];
  const paths: string[] = [];
  const filled = svg.replace(POINTS, (whole, path: string) => {
    const drawn = [...path.matchAll(/M([^,]+),([^Z]+)Z/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    const cloud = waiting[0];
    if (cloud === undefined || drawn.length !== cloud.places.length) return whole;
    waiting.shift();
    const across = line(cloud, drawn, 0);
    const down = line(cloud, drawn, 1);
    paths.push(cloud.points.map(([x, y]) => `M${tenth(across(x))},${tenth(down(y))}h.1`).join(""));
    return ` d="@cloud${paths.length - 1}"`;
  });
  if (waiting.length > 0) throw new Error(`${waiting.length} clouds were not drawn`);
  return { svg: filled, paths };
}

/** The scale of an axis, linear as all of ours, from the two outermost points along it. */
function line(cloud: Cloud, drawn: readonly (readonly [number, number])[], axis: 0 | 1): (value: number) => number {
  const values = cloud.places.map((place) => cloud.points[place]?.[axis] as number);
  const low = values.indexOf(Math.min(...values));
  const high = values.indexOf(Math.max(...values));
  const [from, to] = [values[low] as number, values[high] as number];
  const [start, end] = [drawn[low]?.[axis] as number, drawn[high]?.[axis] as number];
  const slope = to === from ? 0 : (end - start) / (to - from);
  return (value) => start + slope * (value - from);
}

const tenth = (value: number): string => String(Math.round(value * 10) / 10).replace(/^-0$/, "0");
