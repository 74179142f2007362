/**
 * The parts charts are put together from. They name styles of the theme ("this-visit", "earlier", "faint"), never a
 * colour, a font or a line width, and leave sizes to the three frames below.
 */
import type { Figure, Values } from "../kernel/figure.js";

type Part = Readonly<Record<string, unknown>>;

/** Plot area and room around it, in pixels: fixed, so that figures side by side align whatever their labels say. */
const FRAMES = {
  panel: { width: 176, height: 112, padding: { left: 30, right: 26, top: 32, bottom: 32 } },
  wide: { width: 310, height: 180, padding: { left: 36, right: 46, top: 34, bottom: 38 } },
  full: { width: 560, height: 200, padding: { left: 40, right: 60, top: 34, bottom: 38 } },
} as const;
export type Frame = keyof typeof FRAMES;

type Structured = Pick<Figure, "spec" | "values">;

export const framed = (frame: Frame, layers: readonly Part[], more: Part = {}, values: Values = {}): Structured =>
  structured({ ...FRAMES[frame], ...more }, layers, values);

/**
 * A structure that is the same for every client, and the values that are not: titles of axes become signals beside the
 * given ones. `frame` gives width, height and padding.
 */
export function structured(frame: Part, layers: readonly Part[], values: Values = {}): Structured {
  const { layer, titles } = titled(layers);
  const all = { ...values, ...titles };
  const spec = {
    autosize: { type: "none", contains: "content" },
    // Vega-Lite wants data at the top; each layer names its own.
    data: { name: "none" },
    params: Object.keys(all)
      .filter((name) => name !== "height")
      .map((name) => ({ name, value: null })),
    layer,
    ...frame,
  };
  return { spec, values: all };
}

/**
 * One title for each axis: layers that share an axis must agree on its title, so the first one given stands for all.
 * Layers with a scale of their own (a nested group) keep their own title for y.
 */
function titled(layers: readonly Part[]): { readonly layer: readonly Part[]; readonly titles: Values } {
  const titles: Record<string, string> = {};
  const write = (some: readonly Part[], axis: "x" | "y", name: string): readonly Part[] => {
    const [text] = titlesOf(some, axis);
    if (text !== undefined) titles[name] = text;
    return withTitle(some, axis, text === undefined ? null : { signal: name });
  };
  const across = write(layers, "x", "xTitle");
  const layer = across.some((one) => one.layer !== undefined)
    ? across.map((one, i) => (one.layer ? { ...one, layer: write(one.layer as Part[], "y", `yTitle${i}`) } : one))
    : write(across, "y", "yTitle");
  return { layer, titles };
}
const withTitle = (layers: readonly Part[], axis: "x" | "y", title: Part | null): readonly Part[] =>
  layers.map((one) => {
    if (one.layer !== undefined) return { ...one, layer: withTitle(one.layer as Part[], axis, title) };
    const encoding = one.encoding as Part;
    const channel = encoding[axis] as Part | undefined;
    if (channel?.field === undefined || channel.axis === null) return one;
    return { ...one, encoding: { ...encoding, [axis]: { ...channel, title } } };
  });
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

/** Many faint points, drawn as one path: 500 marks would cost 120 kB; this costs 6. */
export const cloud = (data: string, xs: Part, ys: Part, style = "breaths"): Part =>
  layer(data, "line", style, { x: xs, y: ys, order: { field: "order", type: "quantitative" } });

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
