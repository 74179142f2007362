import { sinceBaseline } from "../kernel/entries.js";
import type { Chart, Datum, Figure } from "../kernel/figure.js";
import type { Change } from "../kernel/measure.js";
import { plainNameOf, unitTail } from "../kernel/names.js";
import type { Speech } from "../kernel/speech.js";
import { layer, structured, x } from "./parts.js";

/** The two values of a primary measure on its own scale: before hollow, now filled, each with the error of one test. */
export const beforeAndAfter: Chart = ({ results, speech }) =>
  sinceBaseline(results)
    .filter((change) => change.primary)
    .map((change) => pair(change, results.date, speech));

const row = { field: "y", type: "quantitative", axis: null, scale: { domain: [0, 2], reverse: true } };
const at = (field: string) =>
  x(field, null, { scale: { nice: false, padding: 14 }, axis: { title: null, tickCount: 4, labelFlush: false } });
const STRUCTURE = structured({ width: 150, height: 48, padding: { left: 8, right: 112, top: 2, bottom: 20 } }, [
  layer("beforeError", "rule", "earlier", { x: at("low"), x2: { field: "high" }, y: row }),
  layer("nowError", "rule", "error", { x: at("low"), x2: { field: "high" }, y: row }),
  layer("before", "point", "mark-earlier", { x: at("x"), y: row }),
  layer("now", "point", "mark", { x: at("x"), y: row }),
  layer("before", "text", "row-name", { x: { value: 160 }, y: row, text: { field: "name", type: "nominal" } }),
  layer("now", "text", "row-name", { x: { value: 160 }, y: row, text: { field: "name", type: "nominal" } }),
]);

function pair(change: Change, date: string, speech: Speech): Figure {
  const text = (value: number) => `${speech.number(value, change.decimals)}${unitTail(speech, change.unit)}`;
  const error = change.typicalError;
  const bar = (value: number, y: number): Datum[] =>
    error === undefined ? [] : [{ low: value - error, high: value + error, y }];
  const now: Datum = {
    x: change.now,
    y: 1.5,
    name: `${speech.shortDate(date)}: ${speech.number(change.now, change.decimals)}`,
  };
  const before: Datum = {
    x: change.before,
    y: 0.5,
    name: `${speech.shortDate(change.since)}: ${speech.number(change.before, change.decimals)}`,
  };
  return {
    name: `pair-${change.measure.replaceAll("_", "-")}`,
    section: "change",
    size: "strip",
    measure: change.measure,
    title: speech.say("charts.pair.title", {
      measure: plainNameOf(speech, change.measure),
      before: speech.number(change.before, change.decimals),
      now: text(change.now),
    }),
    alt: speech.say(error === undefined ? "charts.pair.alt_without_error" : "charts.pair.alt", {
      before: text(change.before),
      since: speech.date(change.since),
      now: text(change.now),
      date: speech.date(date),
      error: error === undefined ? "" : speech.number(error, change.decimals + 1),
    }),
    ...STRUCTURE,
    data: { before: [before], now: [now], beforeError: bar(change.before, 0.5), nowError: bar(change.now, 1.5) },
    table: {
      columns: [
        { key: "date", title: speech.say("columns.date") },
        { key: "value", title: speech.say("columns.value"), unit: change.unit, decimals: change.decimals },
      ],
      rows: [
        [speech.shortDate(change.since), change.before],
        [speech.shortDate(date), change.now],
      ],
    },
    ...(change.errorFrom === undefined ? {} : { source: change.errorFrom }),
  };
}
