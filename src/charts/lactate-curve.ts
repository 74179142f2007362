import { quantityOf } from "../kernel/entries.js";
import type { Chart, Datum } from "../kernel/figure.js";
import { withUnit } from "../kernel/names.js";
import { has, numberOf, records, table, visitKey } from "./entries.js";
import { framed, layer, x, y } from "./parts.js";

/** Blood lactate against work, with the threshold that is followed for the client and the earlier curve dashed. */
export const lactateCurve: Chart = ({ results, earlier, speech }) => {
  const steps = table(results, "lactate_steps");
  const work = has(steps, "power_w") ? "power" : "speed";
  const key = work === "power" ? "power_w" : "speed_km_h";
  if (steps === undefined || !has(steps, key, "lactate_mmol_l")) return [];
  const pointsOf = (from: typeof steps): Datum[] =>
    records(from).flatMap((row): Datum[] => {
      const [lx, ly] = [numberOf(row[key]), numberOf(row.lactate_mmol_l)];
      return lx === undefined || ly === undefined ? [] : [{ x: lx, y: ly }];
    });
  const now = pointsOf(steps);
  if (now.length < 2) return [];
  const previous = earlier[earlier.length - 1];
  const before = previous ? table(previous, "lactate_steps") : undefined;
  const then = before && has(before, key, "lactate_mmol_l") ? pointsOf(before) : [];
  const threshold = quantityOf(results, `lactate_threshold_${work}`);
  const lines: Datum[] = threshold ? [{ x: threshold.value, name: withUnit(speech, threshold) }] : [];
  const unit = work === "power" ? "W" : "km/h";
  return [
    {
      name: "lactate-curve",
      section: "lactate",
      size: "wide",
      entry: "lactate_steps",
      title: threshold
        ? speech.say("charts.lactate.title", { threshold: withUnit(speech, threshold) })
        : speech.say("charts.lactate.title_without_threshold"),
      alt: speech.say("charts.lactate.alt", {
        lowest: speech.number(Math.min(...now.map((row) => Number(row.y))), 1),
        highest: speech.number(Math.max(...now.map((row) => Number(row.y))), 1),
        threshold: threshold ? withUnit(speech, threshold) : speech.say("charts.not_given"),
      }),
      ...framed("wide", [
        layer("lines", "rule", "threshold", { x: x("x", null) }),
        layer("lines", "text", "threshold-name", {
          x: x("x", null),
          y: { value: -3 },
          text: { field: "name", type: "nominal" },
        }),
        layer("then", "line", "earlier", { x: x("x", null), y: y("y", null) }),
        layer("then", "point", "earlier-bins", { x: x("x", null), y: y("y", null) }),
        layer("now", "line", "this-visit", { x: x("x", null), y: y("y", null) }),
        layer("now", "point", "mark", {
          x: x("x", speech.say(`axes.${work}`, { unit })),
          y: y("y", visitKey("mmol/L", results, then.length > 0 ? previous : undefined, speech), {
            scale: { zero: true },
            axis: { titleY: -18 },
          }),
        }),
      ]),
      data: { now, then, lines },
      table: { columns: steps.columns, rows: steps.rows },
    },
  ];
};
