/**
 * Figures to SVG text, without a browser, a canvas or a font of the machine.
 *
 * A structure is made into a view once and refilled with each client's values and data. Text is measured by the widths of
 * our own sans. Ids come from the figure's name, because Vega counts clip paths over the whole process, so that they would
 * depend on what was drawn before. Coordinates keep one decimal.
 */
import type { Figure, Spec } from "../kernel/figure.js";
import { cloudsOf, withClouds } from "./clouds.js";
import { type Compiled, type Config, openStructures, structureKey } from "./structures.js";

type Vega = typeof import("vega");
type View = InstanceType<Vega["View"]>;

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
  const views = new Map<string, View>();
  const dataflowOf = openStructures(theme.config, theme.compiled);
  let engine: Promise<Vega> | undefined;
  let queue: Promise<unknown> = Promise.resolve();

  const viewOf = async (spec: Spec, { decimal, thousands }: NumberMarks): Promise<View> => {
    const structure = structureKey(spec);
    const key = `${decimal} ${thousands} ${structure}`;
    const known = views.get(key);
    if (known) {
      views.delete(key);
      views.set(key, known);
      return known;
    }
    engine ??= load(theme);
    const vega = await engine;
    const view = new vega.View((await dataflowOf(structure, spec)) as never, {
      renderer: "none",
      logger: vega.logger(vega.None),
      // Its types ask for formatters; Vega makes them from this.
      locale: { number: { decimal, thousands, grouping: [3], currency: ["", ""] } } as never,
    });
    views.set(key, view);
    const oldest = views.keys().next().value;
    if (views.size > KEPT && oldest !== undefined) {
      views.get(oldest)?.finalize();
      views.delete(oldest);
    }
    return view;
  };
  const drawNow = async (figure: Figure, marks: NumberMarks): Promise<string> => {
    const view = await viewOf(figure.spec, marks);
    const clouds = cloudsOf(figure);
    for (const [name, value] of Object.entries(figure.values)) view.signal(name, value);
    for (const [name, rows] of Object.entries(figure.data))
      view.data(
        name,
        (clouds.get(name)?.outermost ?? rows).map((row) => ({ ...row })),
      );
    await view.runAsync();
    inAxisOrder((view.scenegraph() as unknown as { root: Scene }).root);
    const { svg, paths } = withClouds(await view.toSVG(), clouds);
    return tidy(svg, figure).replace(/@cloud(\d+)/g, (_, place: string) => closer(paths[Number(place)] ?? ""));
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

interface Scene {
  readonly role?: string;
  readonly items?: Scene[];
  readonly datum?: { readonly index?: number };
}

/** A kept view leaves the ticks it had before in front of new ones; here they go back to the order of the axis. */
function inAxisOrder(scene: Scene): void {
  if (/^axis-(?:tick|label|grid)$/.test(scene.role ?? ""))
    scene.items?.sort((a, b) => (a.datum?.index ?? 0) - (b.datum?.index ?? 0));
  else for (const item of scene.items ?? []) inAxisOrder(item);
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

function tidy(svg: string, figure: Figure): string {
  const ids = new Map<string, string>();
  const idOf = (old: string): string => {
    const known = ids.get(old) ?? `${figure.name}-${ids.size + 1}`;
    ids.set(old, known);
    return known;
  };
  return (
    svg
      .replace(/^<\?xml[^>]*>\s*|<!DOCTYPE[^>]*>\s*/g, "")
      .replace(/\bid="(clip\d+)"/g, (_, id: string) => `id="${idOf(id)}"`)
      .replace(/url\(#(clip\d+)\)/g, (_, id: string) => `url(#${idOf(id)})`)
      .replace(/ (?:d|transform|[xy][12]?|width|height)="[^"]*"/g, (attribute) =>
        attribute.replace(/-?\d+\.\d{2,}(?:e-?\d+)?/g, (n) => oneDecimal(n)),
      )
      // A dot of no length is drawn by browsers as a curve of its own; a tenth of a pixel stays a stroke with a round cap.
      .replace(/M([\d.-]+,[\d.-]+)Z/g, "M$1h.1")
      .replace(/ aria-(?:roledescription|label|hidden)="[^"]*"| role="graphics-[^"]*"/g, "")
      .replace(/ class="[^"]*"/g, "")
      .replace(/ (?:font-weight="normal"|text-anchor="start")/g, "")
      .replace(/<g transform="translate\(0,0\)">/g, "<g>")
      .replace(/ version="1\.1"| xmlns:xlink="[^"]*"| xmlns="[^"]*"/g, "")
      .replace(/ font-family="[^"]*"| opacity="1"| pointer-events="none"| stroke-miterlimit="4"/g, "")
      .replace(/<path d=""[^>]*\/>|<path d="M0,0h[\d.]+v[\d.]+h-?[\d.]+Z"\/>/g, "")
      .replace(/<g(?: transform="translate\(0,0\)")?>(?:<g\/>|<g><\/g>)*<\/g>|<g\/>/g, "")
      .replace(/(?:<path transform="[^"]*" d="M[\d.]+,0A[^"]*"[^>]*\/>)+/g, circles)
      .replace(/(?<= d=")(?:M-?[\d.]+,-?[\d.]+h\.1){2,}(?=")/g, closer)
      .replace(/ style="[^"]*"/, "")
      .replace("<svg", () => `<svg role="img" aria-label="${attribute(figure.alt)}"`)
  );
}

/**
 * Round points, as small as they can be written. A circle becomes sixteen curves in a PDF, a short stroke with a round
 * cap one line: points become one path of such strokes, rings two, the inner in the colour of the paper. Rings that are
 * seen through stay circles.
 */
function circles(run: string): string {
  const out: string[] = [];
  let open = "";
  let group: string[] = [];
  const flush = (): void => {
    if (group.length > 0) out.push(drawn(open, group));
    group = [];
  };
  for (const [, cx, cy, radius, look = ""] of run.matchAll(
    /<path transform="translate\(([^,]+),([^)]+)\)" d="M([\d.]+),0A[^"]*"([^>]*)\/>/g,
  )) {
    const style = `${radius}${look}`;
    if (style !== open) flush();
    open = style;
    group.push(`${cx},${cy}`);
  }
  flush();
  return out.join("");
}

function drawn(style: string, places: readonly string[]): string {
  const [, r = "", look = ""] = /^([\d.]+)(.*)$/s.exec(style) ?? [];
  const radius = Number(r);
  const fill = / fill="([^"]*)"/.exec(look)?.[1];
  const stroke = / stroke="([^"]*)"/.exec(look)?.[1];
  const edge = Number(/ stroke-width="([^"]*)"/.exec(look)?.[1] ?? "1");
  const dots = (colour: string, across: number): string =>
    `<path stroke-linecap="round" stroke="${colour}" stroke-width="${oneDecimal(String(across))}" d="${places.map((at) => `M${at}h.1`).join("")}"/>`;
  if (/-opacity=|stroke-dash/.test(look) || (fill === undefined && stroke === undefined)) {
    const each = places.map((at) => `<circle cx="${at.replace(",", '" cy="')}" r="${r}"/>`).join("");
    return `<g fill="${fill ?? "none"}"${look.replace(/ fill="[^"]*"/, "")}>${each}</g>`;
  }
  if (stroke === undefined) return dots(fill ?? PAPER, 2 * radius);
  return `${dots(stroke, 2 * radius + edge)}${dots(fill === undefined || fill === "none" ? PAPER : fill, 2 * radius - edge)}`;
}
const PAPER = "#ffffff";

/** A path of dots with each but the first placed from the one before: a third shorter. */
function closer(path: string): string {
  let [px, py] = [0, 0];
  const seen = new Set<string>();
  return path.replace(/M(-?[\d.]+),(-?[\d.]+)h\.1/g, (_, x: string, y: string, at: number) => {
    const [tx, ty] = [Math.round(Number(x) * 10), Math.round(Number(y) * 10)];
    // A dot on a dot, less than a pixel away, changes nothing that can be seen.
    const cell = `${Math.round(tx / SAME)} ${Math.round(ty / SAME)}`;
    if (seen.has(cell)) return "";
    seen.add(cell);
    const [dx, dy] = [tx - px - 1, ty - py];
    [px, py] = [tx, ty];
    return at === 0 ? `M${x},${y}h.1` : `m${tenths(dx)}${dy < 0 ? "" : ","}${tenths(dy)}h.1`;
  });
}
/** Tenths of a pixel within which two dots are one. */
const SAME = 8;
const tenths = (n: number): string => String(n / 10).replace(/^(-?)0\./, "$1.");

const attribute = (text: string): string =>
  text.replace(/[<>&"]/g, (sign) => ({ "<": "&lt;", ">": "&gt;", "&": "&amp;", '"': "&quot;" })[sign] as string);

const oneDecimal = (text: string): string => String(Math.round(Number(text) * 10) / 10).replace(/^-0$/, "0");
