/**
 * The parts charts are put together from. They name styles of the theme ("this-visit", "earlier", "faint"), never a
 * colour, a font or a line width, and leave sizes to the three frames below.
 */
import type { Spec } from "../kernel/figure.js";

type Part = Readonly<Record<string, unknown>>;

/** Plot area and room around it, in pixels: fixed, so that figures side by side align whatever their labels say. */
const FRAMES = {
  panel: { width: 176, height: 112, padding: { left: 30, right: 26, top: 32, bottom: 32 } },
  wide: { width: 310, height: 180, padding: { left: 36, right: 46, top: 34, bottom: 38 } },
  full: { width: 560, height: 200, padding: { left: 40, right: 60, top: 34, bottom: 38 } },
} as const;
export type Frame = keyof typeof FRAMES;

export function framed(frame: Frame, layer: readonly Part[], more: Part & { height?: number } = {}): Spec {
  const { width, height, padding } = FRAMES[frame];
  return {
    width,
    height,
    padding,
    autosize: { type: "none", contains: "content" },
    // Vega-Lite wants data at the top; each layer names its own.
    data: { name: "none" },
    layer: titled(layer),
    ...more,
  };
}

/**
 * One title for each axis: layers that share an axis must agree on its title, so the first one given is written into
 * all. Layers with a scale of their own (a nested group) keep their own title for y.
 */
export function titled(layers: readonly Part[]): readonly Part[] {
  return withTitles(withTitles(layers, "x"), "y");
}
function withTitles(layers: readonly Part[], axis: "x" | "y"): readonly Part[] {
  const nested = layers.some((one) => one.layer !== undefined);
  if (nested && axis === "y")
    return layers.map((one) => (one.layer ? { ...one, layer: withTitles(one.layer as Part[], "y") } : one));
  const title = titlesOf(layers, axis)[0] ?? null;
  const write = (one: Part): Part => {
    if (one.layer !== undefined) return { ...one, layer: (one.layer as Part[]).map(write) };
    const encoding = one.encoding as Part;
    const channel = encoding[axis] as Part | undefined;
    if (channel?.field === undefined || channel.axis === null) return one;
    return { ...one, encoding: { ...encoding, [axis]: { ...channel, title } } };
  };
  return layers.map(write);
}
const titlesOf = (layers: readonly Part[], axis: "x" | "y"): string[] =>
  layers.flatMap((one) => {
    if (one.layer !== undefined) return titlesOf(one.layer as Part[], axis);
    const title = ((one.encoding as Part)[axis] as Part | undefined)?.title;
    return typeof title === "string" ? [title] : [];
  });

export const x = (field: string, title: string | null, more: Part = {}): Part => ({
  field,
  type: "quantitative",
  title,
  scale: { zero: false, nice: false, ...((more.scale as object) ?? {}) },
  ...without(more, "scale"),
});
export const y = (field: string, title: string | null, more: Part = {}): Part => ({
  field,
  type: "quantitative",
  title,
  scale: { zero: false, nice: true, ...((more.scale as object) ?? {}) },
  ...without(more, "scale"),
});
const without = (part: Part, key: string): Part =>
  Object.fromEntries(Object.entries(part).filter(([name]) => name !== key));

/** Marks of one data set. `style` is a style of the theme. */
export const layer = (data: string, type: string, style: string, encoding: Part, mark: Part = {}): Part => ({
  data: { name: data },
  mark: { type, style, ...mark },
  encoding,
});

/**
 * A cloud of many faint points as one path: every row is followed by a row of nulls, and a line of a single point is
 * drawn by its round cap alone. 500 marks would cost 120 kB; this costs 6.
 */
export const cloud = (data: string, xs: Part, ys: Part, style = "breaths"): Part =>
  layer(
    data,
    "line",
    style,
    { x: xs, y: ys, order: { field: "order", type: "quantitative" } },
    {
      invalid: "break-paths-show-domains",
    },
  );

/** A band from low to high over the whole height: an interval of a threshold. */
export const bands = (data: string, low: string, high: string): Part =>
  layer(data, "rect", "interval", { x: x(low, null), x2: { field: high } });

/** Names at the ends of lines instead of a legend. */
export const names = (data: string, xField: string, yField: string, style = "name"): Part =>
  layer(data, "text", style, {
    x: x(xField, null),
    y: y(yField, null),
    text: { field: "name", type: "nominal" },
  });
