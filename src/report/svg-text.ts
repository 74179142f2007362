/**
 * A drawn scene as SVG text, small: no class, no font, no group for nothing, points as strokes. It writes the marks
 * our structures draw and throws for any other.
 */
import type { Figure } from "../kernel/figure.js";
import { type Cloud, placed } from "./clouds.js";
import { at, dots, type Point, rectangle, tenth, thousandth, through } from "./svg-paths.js";

export interface Item extends Point {
  readonly width?: number;
  readonly height?: number;
  readonly x2?: number;
  readonly y2?: number;
  readonly defined?: boolean;
  readonly interpolate?: string;
  readonly size?: number;
  readonly shape?: string;
  readonly angle?: number;
  readonly text?: unknown;
  readonly align?: string;
  readonly baseline?: string;
  readonly dx?: number;
  readonly dy?: number;
  readonly fontSize?: number;
  readonly fontWeight?: string | number;
  readonly fill?: string | null;
  readonly stroke?: string | null;
  readonly strokeWidth?: number;
  readonly opacity?: number;
  readonly datum?: { readonly index?: number };
  readonly items?: readonly Mark[];
}
export interface Mark {
  readonly marktype: string;
  readonly role?: string;
  readonly items: readonly Item[];
}

/** A scene, its width and height, and the place of its plot area. */
export interface Drawn {
  readonly root: Mark;
  readonly width: number;
  readonly height: number;
  readonly origin: readonly [number, number];
}

/** `clouds` by the first row that was drawn of each. */
export function svgText(
  { root, width, height, origin }: Drawn,
  { alt }: Figure,
  clouds: ReadonlyMap<unknown, Cloud>,
): string {
  const waiting = new Map(clouds);
  const body = group(root, waiting);
  if (waiting.size > 0) throw new Error(`${waiting.size} clouds were not drawn`);
  return `<svg role="img" aria-label="${escaped(alt)}" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"><g fill="none" transform="translate(${origin})">${body}</g></svg>`;
}

type Waiting = Map<unknown, Cloud>;

function group(mark: Mark, clouds: Waiting): string {
  const written = MARKS[mark.marktype];
  if (written === undefined) throw new Error(`no way to write the mark ${mark.marktype}`);
  return mark.items.length === 0 ? "" : written(inAxisOrder(mark), clouds);
}

/** A kept view leaves the ticks it had before in front of new ones; here they go back to the order of the axis. */
const inAxisOrder = ({ role = "", items }: Mark): readonly Item[] =>
  /^axis-(?:tick|label|grid)$/.test(role)
    ? [...items].sort((a, b) => (a.datum?.index ?? 0) - (b.datum?.index ?? 0))
    : items;

const MARKS: Readonly<Record<string, (items: readonly Item[], clouds: Waiting) => string>> = {
  group: (items, clouds) =>
    items
      .map((item) => {
        const inner = (item.items ?? []).map((mark) => group(mark, clouds)).join("");
        const place = translate(item.x, item.y);
        return inner === "" || place === ORIGIN ? inner : `<g${place}>${inner}</g>`;
      })
      .join(""),
  rule: (items, clouds) => {
    const cloud = taken(clouds, items);
    if (cloud === undefined) return alike(items.map(rule));
    const first = items[0] as Item;
    const tall = tenth((first.y2 ?? 0) - (first.y ?? 0));
    return `<path d="${placed(cloud, items)
      .map((point) => `M${at(point)}v${tall}`)
      .join("")}"${look(first)}/>`;
  },
  rect: (items) => {
    const seen = look(items[0] as Item);
    const paths = items.map(({ x = 0, y = 0, width = 0, height = 0 }) => rectangle(x, y, width, height));
    // What is seen through shows where two overlap.
    const drawn = seen.includes("-opacity=") ? paths : [paths.join("")];
    return drawn.map((path) => `<path d="${path}"${seen}/>`).join("");
  },
  text: (items) => alike(items.flatMap(text)),
  symbol: symbols,
  line: (items, clouds) => {
    const [first] = items;
    const cloud = taken(clouds, items);
    const path = cloud ? dots(placed(cloud, items)) : line(items);
    return first === undefined || path === "" ? "" : `<path d="${path}"${look(first)}/>`;
  },
  area: (items) => {
    const back = [...items].reverse().map((item) => ({ ...item, y: (item.y ?? 0) + (item.height ?? 0) }));
    return `<path d="${through(items, false)}${through(back, false).replace("M", "L")}Z"${look(items[0] as Item)}/>`;
  },
};

/** The cloud that a mark is drawn for, which then waits no more. */
function taken(clouds: Waiting, [first]: readonly Item[]): Cloud | undefined {
  const cloud = clouds.get(first?.datum);
  clouds.delete(first?.datum);
  return cloud;
}

/** An element in three pieces: what it is, how it looks, what it holds. */
type Written = readonly [open: string, look: string, close: string];

/** Elements one after another; how they look is said once where they look alike. */
function alike(elements: readonly Written[]): string {
  const [, own = ""] = elements[0] ?? [];
  if (elements.length > 1 && elements.every(([, look]) => look === own))
    return `<g${own}>${elements.map(([open, , close]) => open + close).join("")}</g>`;
  return elements.map((pieces) => pieces.join("")).join("");
}

function rule(item: Item): Written {
  const { x = 0, y = 0, x2 = x, y2 = y } = item;
  const [across, down] = [tenth(x2 - x), tenth(y2 - y)];
  const ends = `${across === "0" ? "" : ` x2="${across}"`}${down === "0" ? "" : ` y2="${down}"`}`;
  return [`<line${translate(x, y)}${ends}`, look(item), "/>"];
}

const isDefined = (item: Item): boolean => item.defined !== false;
const translate = (x = 0, y = 0): string => ` transform="translate(${tenth(x)},${tenth(y)})"`;
const ORIGIN = translate();

/** Runs of defined points; single points are dots. */
function line(items: readonly Item[]): string {
  const runs: Item[][] = [[]];
  for (const item of items)
    if (isDefined(item)) runs.at(-1)?.push(item);
    else runs.push([]);
  const drawn = runs.filter((run) => run.length > 0);
  if (drawn.every((run) => run.length === 1)) return dots(drawn.flat());
  const step = items[0]?.interpolate === "step";
  return drawn.map((run) => (run.length === 1 ? `M${at(run[0] as Item)}h.1` : through(run, step))).join("");
}

const ANCHORS: Readonly<Record<string, string>> = { center: "middle", right: "end" };
/** How far below the place of a text its foot stands, in parts of its size. */
const FEET: Readonly<Record<string, number>> = { top: 0.79, middle: 0.3, bottom: -0.21 };

/** Names on an axis that would overlap others are there unseen. */
function text(item: Item): Written[] {
  const words = escaped(String(item.text ?? "").trim());
  return words === "" || item.opacity === 0 ? [] : [[`<text${placeOf(item)}`, textLook(item), `>${words}</text>`]];
}

function placeOf({ x = 0, y = 0, dx = 0, dy = 0, baseline = "", fontSize = 11, angle }: Item): string {
  if (angle) throw new Error("no way to write a text that is turned");
  return translate(x + dx, y + (dy + Math.round((FEET[baseline] ?? 0) * fontSize)));
}

function textLook(item: Item): string {
  const { align = "", fontSize = 11, fontWeight = "normal" } = item;
  const anchor = ANCHORS[align] ? ` text-anchor="${ANCHORS[align]}"` : "";
  const weight = fontWeight === "normal" ? "" : ` font-weight="${fontWeight}"`;
  return `${anchor} font-size="${fontSize}px"${weight}${look(item)}`;
}

const LOOK = [
  ["fill", "fill"],
  ["fillOpacity", "fill-opacity"],
  ["stroke", "stroke"],
  ["strokeOpacity", "stroke-opacity"],
  ["strokeWidth", "stroke-width"],
  ["strokeCap", "stroke-linecap"],
  ["strokeJoin", "stroke-linejoin"],
  ["strokeDash", "stroke-dasharray"],
] as const;

/** The look of an item as attributes; what is not said is not drawn. */
function look(item: Item): string {
  let attributes = "";
  for (const [key, name] of LOOK) {
    const value = (item as Readonly<Record<string, unknown>>)[key];
    if (value !== undefined && value !== null && value !== "transparent")
      attributes += ` ${name}="${escaped(String(value))}"`;
  }
  const { opacity = 1 } = item;
  return opacity === 1 ? attributes : `${attributes} opacity="${opacity}"`;
}

/**
 * Round points, as small as they can be written. A circle becomes sixteen curves in a PDF, a short stroke with a round
 * cap one line: points become one path of such strokes, rings two, the inner in the colour of the paper. The points of a mark look alike.
 */
function symbols(items: readonly Item[]): string {
  const { size = 64, shape = "circle" } = items[0] as Item;
  if (shape === "square") {
    const half = thousandth(Math.sqrt(size) / 2);
    const path = rectangle(-half, -half, 2 * half, 2 * half);
    return items.map((item) => `<path${translate(item.x, item.y)} d="${path}"${look(item)}/>`).join("");
  }
  if (/-opacity=|-dash/.test(look(items[0] as Item))) throw new Error("no way to write a point that is seen through");
  if (shape !== "circle") throw new Error(`no way to write a ${shape}`);
  const { fill, stroke, strokeWidth = 1 } = items[0] as Item;
  if (!fill && !stroke) return "";
  const diameter = 2 * (Math.round(thousandth(Math.sqrt(size) / 2) * 10) / 10);
  const path = dots(items);
  const all = (colour: string, width: number): string =>
    `<path stroke-linecap="round" stroke="${colour}" stroke-width="${tenth(width)}" d="${path}"/>`;
  if (!stroke) return all(fill ?? PAPER, diameter);
  return `${all(stroke, diameter + strokeWidth)}${all(fill ?? PAPER, diameter - strokeWidth)}`;
}
const PAPER = "#ffffff";

const escaped = (text: string): string =>
  /[<>&"]/.test(text)
    ? text.replace(/[<>&"]/g, (sign) => ({ "<": "&lt;", ">": "&gt;", "&": "&amp;", '"': "&quot;" })[sign] as string)
    : text;
