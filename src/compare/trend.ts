/**
 * A measure over all visits of a client: value with its own 95 % interval, change from baseline and from the visit before,
 * what differs from the visit before, and which value is best. One row an occasion; tests within days are averaged.
 */
import { daysBetween } from "../kernel/days.js";
import type { Cell, Column, Table } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import { roundTo } from "../kernel/rounding.js";
import { attempt } from "./attempt.js";
import { comparability } from "./comparable.js";
import { singleScoreInterval } from "./error/single-score-interval.js";
import { type ErrorModel, errorModelFor } from "./error-model.js";
import type { Known } from "./known.js";
import { type Occasion, type Pooled, pooled } from "./occasions.js";

const LEAST_OCCASIONS = 3;

export function trendOf(
  measure: string,
  occasions: readonly Occasion[],
  baseline: Occasion,
  known: Known,
): Table | undefined {
  const points = occasions.map((o) => pooled(o, measure)).filter((p) => p !== undefined);
  const first = pooled(baseline, measure) ?? points[0];
  const last = points.at(-1);
  if (points.length < LEAST_OCCASIONS || !first || !last) return undefined;
  const { unit, decimals } = last;
  const model = errorModelFor(last, last.visit, known);
  const best = bestOf(points, measureInfo(measure)?.better, last);
  const columns: Column[] = [
    { key: "date", title: "Visit" },
    { key: "days", title: "Days since the visit before", unit: "d", decimals: 0 },
    { key: "value", title: measureInfo(measure)?.title ?? measure, unit, decimals },
    { key: "tests", title: "Tests averaged", decimals: 0 },
    { key: "low", title: "95 % interval, from", unit, decimals },
    { key: "high", title: "to", unit, decimals },
    { key: "from_baseline", title: "Change from baseline", unit, decimals },
    { key: "from_previous", title: "Change from the visit before", unit, decimals },
    { key: "differs", title: "Differs from the visit before" },
    { key: "differs_baseline", title: "Differs from baseline" },
    { key: "mark", title: "Mark" },
  ];
  const rows = points.map((point, i): Cell[] => {
    const previous = points[i - 1];
    const interval = model && intervalOf(point, model);
    const isFirst = point.visit.date === first.visit.date;
    const marks: string[] = [];
    if (point === best) marks.push("best");
    if (point === last) marks.push("latest");
    if (isFirst) marks.push("baseline");
    const from = (other: Pooled | undefined) => (other ? roundTo(point.value - other.value, decimals) : null);
    const differs = (other: Pooled | undefined) =>
      other ? comparability(measure, other.visit, point.visit).differs.join("; ") : "";
    return [
      point.visit.date,
      previous ? daysBetween(previous.visit.date, point.visit.date) : null,
      point.value,
      point.tests,
      interval?.low ?? null,
      interval?.high ?? null,
      from(isFirst ? undefined : first),
      from(previous),
      differs(previous),
      differs(first),
      marks.join(", "),
    ];
  });
  return {
    kind: "table",
    id: `trend_${measure}`,
    columns,
    rows,
    origin: { kind: "formula", formula: "single-score-interval r1", inputs: [] },
    note:
      model === undefined
        ? "How much this measure varies between tests is not known here."
        : `Error: ${model.from.replace(/\.$/, "")}.`,
  };
}

/** The best value among those comparable with the latest, the first of equals; none where neither direction is better. */
function bestOf(points: readonly Pooled[], better: "higher" | "lower" | undefined, last: Pooled): Pooled | undefined {
  if (better === undefined) return undefined;
  let best = last;
  for (const point of points.slice(0, -1).reverse()) {
    const asGood = better === "higher" ? point.value >= best.value : point.value <= best.value;
    if (asGood && comparability(point.measure, point.visit, last.visit).differs.length === 0) best = point;
  }
  return best;
}

function intervalOf(point: Pooled, model: ErrorModel): { low: number; high: number } | undefined {
  const log = model.scale === "log";
  if (log && point.value <= 0) return undefined;
  const interval = attempt(() =>
    singleScoreInterval(log ? Math.log(point.value) : point.value, model.errorAt(point.value), model.df, point.tests),
  );
  if (interval === undefined) return undefined;
  return log ? { low: Math.exp(interval.low), high: Math.exp(interval.high) } : interval;
}
