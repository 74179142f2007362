/**
 * Figures to SVG text, without a browser, a canvas or a font of the machine.
 *
 * A structure is made into a view once and refilled with each client's values and data. Text is measured by the widths of
 * our own sans. Ids come from the figure's name, because Vega counts clip paths over the whole process, so that they would
 * depend on what was drawn before. Coordinates keep one decimal.
 */
import type { Figure, Spec } from "../kernel/figure.js";
import { type Cloud, cloudsOf } from "./clouds.js";
import { type KeptView, refill, type View } from "./kept-view.js";
import { type Compiled, type Config, openStructures, structureKey } from "./structures.js";
import { type Drawn, type Mark, svgText } from "./svg-text.js";

type Vega = typeof import("vega");

export interface Theme {
  readonly config: Config;
  /** templates/theme/fonts/widths.json: thousandths of an em by face and character. */
  readonly widths: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** dist/structures.json, where the program was built with it. */
  readonly compiled?: Compiled;
}

/** How axis numbers are written. */
export interface NumberMarks {
  readonly decimal: string;
  readonly thousands: string;
}

export interface SvgDrawer {
  draw(figure: Figure, marks: NumberMarks): Promise<string>;
}

/** Views kept at once: a report has about twenty-five structures. */
const KEPT = 80;

export function openSvgDrawer(theme: Theme): SvgDrawer {
  const views = new Map<string, KeptView>();
  /** Many structures are the very same object from figure to figure. */
  const keys = new WeakMap<Spec, string>();
  const dataflowOf = openStructures(theme.config, theme.compiled);
  let engine: Promise<Vega> | undefined;
  let queue: Promise<unknown> = Promise.resolve();

  const viewOf = async (vega: Vega, spec: Spec, { decimal, thousands }: NumberMarks): Promise<KeptView> => {
    const structure = keys.get(spec) ?? structureKey(spec);
    keys.set(spec, structure);
    const key = `${decimal} ${thousands} ${structure}`;
    const known = views.get(key);
    if (known) {
      views.delete(key);
      views.set(key, known);
      return known;
    }
    const view = new vega.View((await dataflowOf(structure, spec)) as never, {
      renderer: "none",
      logger: vega.logger(vega.None),
      // Its types ask for formatters; Vega makes them from this.
      locale: { number: { decimal, thousands, grouping: [3], currency: ["", ""] } } as never,
    });
    const kept = { view, held: new Map() };
    views.set(key, kept);
    const oldest = views.keys().next().value;
    if (views.size > KEPT && oldest !== undefined) {
      views.get(oldest)?.view.finalize();
      views.delete(oldest);
    }
    return kept;
  };
  const drawNow = async (figure: Figure, marks: NumberMarks): Promise<string> => {
    engine ??= load(theme);
    const vega = await engine;
    const kept = await viewOf(vega, figure.spec, marks);
    const { view } = kept;
    const clouds = cloudsOf(figure);
    const drawn = new Map<unknown, Cloud>();
    for (const [name, value] of Object.entries(figure.values)) view.signal(name, value);
    for (const [name, rows] of Object.entries(figure.data)) {
      const cloud = clouds.get(name);
      const [first] = refill(vega, kept, name, cloud?.outermost ?? rows);
      if (cloud) drawn.set(first, cloud);
    }
    await view.runAsync();
    return svgText(sceneOf(view), figure, drawn);
  };
  return {
    // One at a time: a kept view holds one client's data.
    draw: (figure, marks) => {
      const drawn = queue.then(() => drawNow(figure, marks));
      queue = drawn.catch(() => undefined);
      return drawn;
    },
  };
}

function sceneOf(view: View): Drawn {
  const { left, right, top, bottom } = view.padding() as Readonly<Record<"left" | "right" | "top" | "bottom", number>>;
  return {
    root: (view.scenegraph() as unknown as { root: Mark }).root,
    width: view.width() + left + right,
    height: view.height() + top + bottom,
    origin: [left, top],
  };
}

async function load(theme: Theme): Promise<Vega> {
  const vega = await import("vega");
  const metrics = (vega as unknown as { textMetrics: unknown }).textMetrics as Record<string, unknown>;
  metrics.width = (item: TextItem, text?: unknown) => textWidth(theme, item, text ?? item.text);
  return vega;
}

interface TextItem {
  readonly text?: unknown;
  readonly fontSize?: number;
  readonly fontWeight?: string | number;
}

function textWidth(theme: Theme, item: TextItem, text: unknown): number {
  const bold = item.fontWeight === "bold" || Number(item.fontWeight) >= 600;
  const face = theme.widths[bold ? "sans-bold" : "sans-regular"] ?? {};
  let thousandths = 0;
  for (const character of String(text ?? "")) thousandths += face[character] ?? 500;
  return (thousandths * (item.fontSize ?? 11)) / 1000;
}
