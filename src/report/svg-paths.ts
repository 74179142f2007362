/** Paths of a drawing, with one decimal: what lies less than a tenth of a pixel apart looks the same. */

/** A coordinate as it is written: "12", "0.5", "-3.2". */
export const tenth = (value: number): string => tenths(Math.round(value * 10));

/** The same from whole tenths, through a table: most of a report's text is coordinates. */
function tenths(n: number): string {
  if (n < 0 || n > TABLED) return String(n / 10);
  const known = table[n];
  if (known !== undefined) return known;
  const text = String(n / 10);
  table[n] = text;
  return text;
}
const TABLED = 9999;
const table: string[] = [];

/** Vega's shapes keep three decimals; a tenth is taken of those. */
export const thousandth = (value: number): number => Math.round(value * 1000) / 1000;

export interface Point {
  readonly x?: number;
  readonly y?: number;
}
export const at = ({ x = 0, y = 0 }: Point): string => `${tenth(thousandth(x))},${tenth(thousandth(y))}`;

/** `step` turns halfway between two points. */
export function through(points: readonly Point[], step: boolean): string {
  const [first, ...rest] = points;
  if (first === undefined) return "";
  let path = `M${at(first)}`;
  let last = first;
  for (const point of rest) {
    if (step) {
      const x = ((last.x ?? 0) + (point.x ?? 0)) / 2;
      path += `L${at({ ...last, x })}L${at({ ...point, x })}`;
      last = point;
    } else path += `L${at(point)}`;
  }
  return step && rest.length > 0 ? `${path}L${at(last)}` : path;
}

/** A rectangle. A border of no width is none. */
export const rectangle = (x: number, y: number, width: number, height: number): string =>
  `M${tenth(x)},${tenth(y)}h${tenth(width)}v${tenth(height)}h${tenth(-width)}Z`;

/**
 * Points as strokes of a tenth of a pixel with round caps, for a dot of no length is drawn by browsers as a curve of its
 * own; each but the first is placed from the one before, which is a third shorter.
 */
export function dots(points: readonly Point[]): string {
  let path = "";
  let [px, py] = [0, 0];
  const seen = new Set<number>();
  for (const { x = 0, y = 0 } of points) {
    const [tx, ty] = [Math.round(x * 10), Math.round(y * 10)];
    // A dot on a dot, less than a pixel away, changes nothing that can be seen.
    const cell = Math.round(tx / SAME) * CELLS + Math.round(ty / SAME);
    if (seen.has(cell)) continue;
    seen.add(cell);
    if (path === "") path = `M${tenths(tx)},${tenths(ty)}h.1`;
    else {
      const dy = ty - py;
      path += `m${bare(tx - px - 1)}${dy < 0 ? "" : ","}${bare(dy)}h.1`;
    }
    [px, py] = [tx, ty];
  }
  return path;
}
/** Tenths of a pixel within which two dots are one. */
const SAME = 8;
/** More rows of such cells than a drawing has. */
const CELLS = 100_000;
/** A number without the nought before its point. */
const bare = (n: number): string => {
  if (n >= 10 || n <= -10 || n === 0) return tenths(n);
  return n < 0 ? `-.${-n}` : `.${n}`;
};
