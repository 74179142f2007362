import type { Chart, Datum } from "../kernel/figure.js";
import { nameOf, quantity, sinceBaseline, unitTail } from "./entries.js";
import { framed, layer, x, y } from "./parts.js";

const DAY = 86_400_000;
const years = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / DAY;

/** A primary measure over three visits or more, each point with the error of one test. */
export const trends: Chart = ({ results, earlier, speech }) => {
  if (earlier.length < 2) return [];
  const measures = sinceBaseline(results).filter((change) => change.primary);
  const first = earlier[0]?.date ?? results.date;
  return measures.flatMap((change) => {
    const error = change.typicalError;
    const values = [...earlier, results].flatMap((visit): Datum[] => {
      const at = quantity(visit, change.measure);
      return at === undefined
        ? []
        : [{ x: (years(visit.date) - years(first)) / 7, y: at.value, date: speech.shortDate(visit.date) }];
    });
    const last = values[values.length - 1];
    if (values.length < 3 || last === undefined) return [];
    const bars =
      error === undefined
        ? []
        : values.map((v) => ({ x: v.x as number, low: Number(v.y) - error, high: Number(v.y) + error }));
    const text = (v: Datum) => `${speech.number(Number(v.y), change.decimals)}${unitTail(speech, change.unit)}`;
    return [
      {
        name: `trend-${change.measure.replaceAll("_", "-")}`,
        section: "change" as const,
        size: "panel" as const,
        title: speech.say("charts.trend.title", { measure: nameOf(speech, change.measure), visits: values.length }),
        alt: speech.say("charts.trend.alt", { values: speech.list(values.map((v) => `${v.date}: ${text(v)}`)) }),
        spec: framed("panel", [
          layer("bars", "rule", "error-thin", { x: x("x", null), y: y("low", null), y2: { field: "high" } }),
          layer("values", "line", "this-visit", { x: x("x", null), y: y("y", null) }),
          layer("values", "point", "mark", { x: x("x", speech.say("axes.weeks")), y: y("y", change.unit) }),
        ]),
        data: { values, bars },
        table: {
          columns: [
            { key: "date", title: speech.say("columns.date") },
            { key: "value", title: speech.say("columns.value"), unit: change.unit, decimals: change.decimals },
          ],
          rows: values.map((v) => [v.date as string, v.y as number]),
        },
      },
    ];
  });
};
