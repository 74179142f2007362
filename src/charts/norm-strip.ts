import type { Chart, Datum, Figure } from "../kernel/figure.js";
import type { Quantity } from "../kernel/measure.js";
import { nameOf, unitOf, withUnit } from "../kernel/names.js";
import { type CurvePoint, type NormPlace, normPlace } from "../kernel/norm-place.js";
import type { Speech } from "../kernel/speech.js";
import { layer, structured, x } from "./parts.js";

/**
 * Where a value stands in its reference group, on the measure's own scale: a thin tick for each reference percentile,
 * the client's value as a mark with its error as a bar, the middle person's value named. Nothing is coloured good or
 * bad, and no percentile is drawn that the source does not give.
 */
export const normStrip: Chart = ({ results, speech }) =>
  results.entries.flatMap((entry) => {
    const place = entry.kind === "quantity" ? normPlace(results.entries, entry) : undefined;
    if (entry.kind !== "quantity" || place === undefined || place.curve.length < 3) return [];
    return [strip(entry, place, speech)];
  });

/** A hundred people in order, between the outermost percentiles of the source: each tick stands at its own value. */
function people(curve: readonly CurvePoint[]): Datum[] {
  const ticks: number[] = [];
  for (let i = 1; i < curve.length; i++) {
    const [a, b] = [curve[i - 1] as CurvePoint, curve[i] as CurvePoint];
    for (let p = Math.ceil(a.percentile); p < b.percentile; p++)
      ticks.push(a.value + ((b.value - a.value) * (p - a.percentile)) / (b.percentile - a.percentile));
  }
  ticks.push((curve[curve.length - 1] as CurvePoint).value);
  return ticks.map((value) => ({ x: value }));
}

const at = (field: string) =>
  x(field, null, { scale: { nice: false, padding: 12 }, axis: { title: null, tickCount: 5, offset: -2 } });
const STRUCTURE = structured({ width: 270, height: 46, padding: { left: 6, right: 6, top: 2, bottom: 18 } }, [
  layer("people", "rule", "others", { x: at("x"), y: { value: 15 }, y2: { value: 27 } }),
  layer("middle", "rule", "others-median", { x: at("x"), y: { value: 12 }, y2: { value: 30 } }),
  layer("middle", "text", "name-quiet", {
    x: at("x"),
    y: { value: 29 },
    text: { field: "name", type: "nominal" },
  }),
  layer("error", "rule", "error", { x: at("low"), x2: { field: "high" }, y: { value: 21 } }),
  layer("client", "point", "mark", { x: at("x"), y: { value: 21 } }),
  layer("client", "text", "name-above", {
    x: at("x"),
    y: { value: 15 },
    text: { field: "name", type: "nominal" },
  }),
]);

function strip(entry: Quantity, { kind, lower, norm, curve }: NormPlace, speech: Speech): Figure {
  const group = speech.told(norm.group ?? norm.table);
  const middle = curve.find((point) => point.percentile === 50);
  const median = middle === undefined ? undefined : withUnit(speech, { ...entry, value: middle.value });
  const { low, high, typical } = entry.error ?? {};
  const error: Datum[] =
    low !== undefined && high !== undefined
      ? [{ low, high }]
      : typical !== undefined
        ? [{ low: entry.value - typical, high: entry.value + typical }]
        : [];
  return {
    name: `norm-${entry.id.replaceAll("_", "-")}`,
    section: "visit",
    size: "strip",
    measure: entry.id,
    title: speech.say(kind === "about" ? "charts.norm.title" : `charts.norm.title_${kind}`, {
      measure: nameOf(speech, entry.id),
      lower,
      group,
    }),
    alt: speech.say(kind === "about" ? "charts.norm.alt" : `charts.norm.alt_${kind}`, {
      value: withUnit(speech, entry),
      lower,
      group,
      median: median ?? speech.say("charts.not_given"),
    }),
    ...STRUCTURE,
    data: {
      people: people(curve),
      middle: middle === undefined ? [] : [{ x: middle.value, name: speech.say("charts.norm.median") }],
      error,
      client: [{ x: entry.value, name: withUnit(speech, entry) }],
    },
    table: {
      columns: [
        { key: "percentile", title: speech.say("columns.percentile"), decimals: 0 },
        {
          key: "value",
          title: speech.say("columns.value"),
          unit: unitOf(speech, entry.unit),
          decimals: entry.decimals,
        },
      ],
      rows: curve.map((point) => [point.percentile, point.value]),
    },
    source: norm.table,
  };
}
