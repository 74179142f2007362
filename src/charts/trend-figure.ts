import { dayOf } from "../kernel/days.js";
import type { Datum, Figure } from "../kernel/figure.js";
import { nameOf, unitOf, unitTail } from "../kernel/names.js";
import type { Speech } from "../kernel/speech.js";
import { framed, layer, x, y } from "./parts.js";

export interface TrendPoint {
  readonly date: string;
  readonly value: number;
  /** What differs from the visit before; "" where nothing does. */
  readonly differs: string;
}
export interface TrendFigureInput {
  readonly measure: string;
  readonly unit: string;
  readonly decimals: number;
  /** Oldest first, two or more. */
  readonly points: readonly TrendPoint[];
  /** One standard deviation of error of one test, where known. */
  readonly error?: number;
  readonly speech: Speech;
}

const weeks = (iso: string): number => dayOf(iso) / 7;

/**
 * A measure over a client's visits, each point with the error of one test. A hollow mark with a dotted rule stands where
 * conditions differ from the visit before: across it the two values are not compared.
 */
export function trendFigure(input: TrendFigureInput): Figure {
  const { measure, unit, decimals, points, error, speech } = input;
  const first = weeks(points[0]?.date ?? "");
  const rows = points.map(
    (point): Datum => ({ x: weeks(point.date) - first, y: point.value, date: speech.shortDate(point.date) }),
  );
  const changed = points.map((point) => point.differs !== "");
  const bars = (error === undefined ? [] : rows).map(
    (row): Datum => ({ x: row.x as number, low: Number(row.y) - Number(error), high: Number(row.y) + Number(error) }),
  );
  // Values that are all alike span no axis: two of the last digit on each side give it one.
  const room = [-2, 2].map(
    (digits): Datum => ({ x: rows[0]?.x ?? 0, y: Number(rows[0]?.y) + digits * 10 ** -decimals }),
  );
  const text = (value: number) => `${speech.number(value, decimals)}${unitTail(speech, unit)}`;
  const said = points.map((point) =>
    speech.say(point.differs === "" ? "charts.trend.value" : "charts.trend.value_changed", {
      date: speech.shortDate(point.date),
      value: text(point.value),
      differs: speech.told(point.differs),
    }),
  );
  const dates = { scale: { padding: 8 } };
  return {
    name: `trend-${measure.replaceAll("_", "-")}`,
    section: "change",
    size: "panel",
    title: speech.say("charts.trend.title", { measure: nameOf(speech, measure), visits: points.length }),
    alt: speech.say("charts.trend.alt", { values: speech.list(said) }),
    ...framed("panel", [
      layer("changed", "rule", "guide", { x: x("x", null, dates) }),
      layer("bars", "rule", "error-thin", { x: x("x", null, dates), y: y("low", null), y2: { field: "high" } }),
      layer("values", "line", "this-visit", { x: x("x", null, dates), y: y("y", null) }),
      layer("same", "point", "mark", {
        x: x("x", speech.say("axes.weeks"), dates),
        y: y("y", unitOf(speech, unit)),
      }),
      layer("changed", "point", "mark-earlier", { x: x("x", null, dates), y: y("y", null) }),
      layer("room", "point", "unseen", { x: x("x", null, dates), y: y("y", null) }),
    ]),
    data: {
      values: rows,
      bars,
      room: rows.every((row) => row.y === rows[0]?.y) && bars.length === 0 ? room : [],
      same: rows.filter((_, i) => !changed[i]),
      changed: rows.filter((_, i) => changed[i]),
    },
    table: {
      columns: [
        { key: "date", title: speech.say("columns.date") },
        { key: "value", title: speech.say("columns.value"), unit, decimals },
        { key: "differs", title: speech.say("columns.differs") },
      ],
      rows: points.map((point) => [speech.shortDate(point.date), point.value, point.differs]),
    },
  };
}
