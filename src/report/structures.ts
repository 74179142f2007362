/**
 * Structures of figures, compiled: from Vega-Lite to the dataflow that Vega runs, which is plain data. The program's own
 * are compiled when it is built (`tests/tools/compile-structures.ts` writes dist/structures.json), so that a report need
 * not wait for that; any other is compiled when it is first drawn, to the same dataflow.
 */
import type { Spec } from "../kernel/figure.js";
import { lean } from "./lean-dataflow.js";

/** What Vega runs, as its parser gives it. */
export type Dataflow = Readonly<Record<string, unknown>>;
/** templates/theme/vega-config.json */
export type Config = Readonly<Record<string, unknown>>;

export interface Compiled {
  /** What they were compiled with: with another they are of no use. */
  readonly config: Config;
  /** By structure, written as JSON. */
  readonly dataflows: Readonly<Record<string, Dataflow>>;
}

export const structureKey = (spec: Spec): string => JSON.stringify(spec);

/** A finder of dataflows: among those compiled before, else by compiling. */
export function openStructures(config: Config, compiled?: Compiled): (key: string, spec: Spec) => Promise<Dataflow> {
  const known =
    compiled !== undefined && JSON.stringify(compiled.config) === JSON.stringify(config) ? compiled.dataflows : {};
  return async (key, spec) => (Object.hasOwn(known, key) ? (known[key] as Dataflow) : compile(spec, config));
}

/** Compiles anew, as plain data. */
export async function compile(spec: Spec, config: Config): Promise<Dataflow> {
  const [vega, vegaLite] = await Promise.all([import("vega"), import("vega-lite")]);
  const { spec: full } = vegaLite.compile(spec as never, {
    config: config as never,
    // Vega's own logger writes to the console; a chart's faults are found by the tests over all charts instead.
    logger: vega.logger(vega.None),
  });
  return lean(
    JSON.parse(JSON.stringify(vega.parse(themed(withGrids(full as unknown as VegaSpec), config) as never))) as Dataflow,
  );
}

type Axis = Readonly<Record<string, unknown>>;
interface VegaSpec {
  readonly axes?: readonly Axis[];
}

/**
 * Vega-Lite draws the grid of an axis as a second axis, whose ticks are worked out again: here it goes with its own axis,
 * which then stands before the others, so that the grid stays below their lines.
 */
function withGrids(spec: VegaSpec): VegaSpec {
  const { axes = [] } = spec;
  const isGrid = ({ grid, labels }: Axis): boolean => grid === true && labels === false;
  const gridOf = (axis: Axis): Axis | undefined =>
    axes.find((one) => isGrid(one) && one.scale === axis.scale && one.tickCount === axis.tickCount);
  const own = axes.filter((axis) => !isGrid(axis));
  const crossed = own.flatMap((axis) => {
    const { gridScale, gridColor, gridWidth } = gridOf(axis) ?? {};
    return gridScale === undefined ? [] : [{ ...axis, grid: true, gridScale, gridColor, gridWidth }];
  });
  if (crossed.length !== axes.length - own.length) throw new Error("an axis has a grid that is not its own");
  return { ...spec, axes: [...crossed, ...own.filter((axis) => gridOf(axis) === undefined)] };
}

/**
 * A mark's look belongs to the theme: Vega-Lite writes default colours and sizes into each mark, which would win over
 * the styles, so whatever a style of the theme sets is taken out of the mark.
 */
function themed(spec: unknown, config: Config): unknown {
  const styles = (config.style ?? {}) as Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  const walk = (node: unknown): unknown => {
    if (Array.isArray(node)) return node.map(walk);
    if (typeof node !== "object" || node === null) return node;
    const mark = Object.fromEntries(Object.entries(node).map(([key, value]) => [key, walk(value)]));
    const update = (mark.encode as { update?: Record<string, unknown> } | undefined)?.update;
    if (update && Array.isArray(mark.style)) {
      const set = new Set((mark.style as string[]).flatMap((name) => Object.keys(styles[name] ?? {})));
      const kept = Object.entries(update).filter(([key]) => !set.has(key));
      mark.encode = { ...(mark.encode as object), update: Object.fromEntries(kept) };
    }
    return mark;
  };
  return walk(spec);
}
