import type { Chart, Datum, Figure } from "../kernel/figure.js";
import type { NormPosition, Quantity } from "../kernel/measure.js";
import type { Speech } from "../kernel/speech.js";
import { nameOf, withUnit } from "./entries.js";
import { cloud, layer, x } from "./parts.js";

/**
 * Where a value stands among 100 people of the reference group: 100 thin ticks in order, the client's place marked,
 * the middle person's value named. Nothing is coloured good or bad.
 */
export const normStrip: Chart = ({ results, speech }) =>
  results.entries.flatMap((entry) => {
    if (entry.kind !== "quantity") return [];
    const norm = entry.norms?.find((one) => one.percentile !== undefined);
    return norm?.percentile === undefined ? [] : [strip(entry, norm, norm.percentile, speech)];
  });

/** Ends of the client's measurement error as percentiles, where norms/ gives them. */
type Position = NormPosition & { readonly percentileLow?: number; readonly percentileHigh?: number };

/** A hundred ticks as one path: two ends and a break for each. */
const people = Array.from({ length: 100 }, (_, i): Datum[] => [
  { x: i + 0.5, y: 14, order: 3 * i },
  { x: i + 0.5, y: 28, order: 3 * i + 1 },
  { x: null, y: null, order: 3 * i + 2 },
]).flat();

function strip(entry: Quantity, norm: Position, percentile: number, speech: Speech): Figure {
  const lower = Math.min(99, Math.max(1, Math.round(percentile)));
  const median = norm.median === undefined ? undefined : withUnit(speech, { ...entry, value: norm.median });
  const spread: Datum[] =
    norm.percentileLow === undefined || norm.percentileHigh === undefined
      ? []
      : [{ low: norm.percentileLow, high: norm.percentileHigh }];
  const scale = { scale: { domain: [0, 100] }, axis: null };
  const at = (field: string) => x(field, null, scale);
  const row = { y: { value: 21 } };
  return {
    name: `norm-${entry.id.replaceAll("_", "-")}`,
    section: "visit",
    size: "strip",
    measure: entry.id,
    title: speech.say("charts.norm.title", {
      measure: nameOf(speech, entry.id),
      lower,
      group: norm.group ?? norm.table,
    }),
    alt: speech.say("charts.norm.alt", {
      value: withUnit(speech, entry),
      lower,
      group: norm.group ?? norm.table,
      median: median ?? speech.say("charts.not_given"),
    }),
    spec: {
      width: 330,
      height: 42,
      padding: { left: 10, right: 10, top: 2, bottom: 2 },
      autosize: { type: "none", contains: "content" },
      data: { name: "none" },
      layer: [
        cloud(
          "people",
          at("x"),
          { field: "y", type: "quantitative", axis: null, scale: { domain: [42, 0] } },
          "others",
        ),
        layer("middle", "rule", "others-median", { x: at("x"), y: { value: 10 }, y2: { value: 32 } }),
        layer("middle", "text", "name-quiet", {
          x: at("x"),
          y: { value: 31 },
          text: { field: "name", type: "nominal" },
        }),
        layer("spread", "rule", "error", { x: at("low"), x2: { field: "high" }, ...row }),
        layer("client", "point", "mark", { x: at("x"), ...row }),
        layer("client", "text", "name-above", {
          x: at("x"),
          y: { value: 14 },
          text: { field: "name", type: "nominal" },
        }),
      ],
    },
    data: {
      people,
      middle: median === undefined ? [] : [{ x: 50, name: speech.say("charts.norm.median", { median }) }],
      spread,
      client: [{ x: percentile, name: withUnit(speech, entry) }],
    },
    table: {
      columns: [
        { key: "measure", title: speech.say("columns.measure") },
        { key: "value", title: speech.say("columns.value"), unit: entry.unit, decimals: entry.decimals },
        { key: "percentile", title: speech.say("columns.percentile"), decimals: 0 },
        { key: "median", title: speech.say("columns.median"), unit: entry.unit, decimals: entry.decimals },
      ],
      rows: [[nameOf(speech, entry.id), entry.value, percentile, norm.median ?? null]],
    },
    source: norm.table,
  };
}
