import { quantityOf } from "../kernel/entries.js";
import type { Chart, Datum } from "../kernel/figure.js";
import { withUnit } from "../kernel/names.js";
import { has, numberOf, records, table } from "./entries.js";
import { framed, layer, names, x, y } from "./parts.js";

/** Minute means of the resting measurement with the steady window that was chosen. */
export const restingTrace: Chart = ({ results, speech }) => {
  const trace = table(results, "rest_trace");
  if (trace === undefined || !has(trace, "minute")) return [];
  const curve = (key: string): Datum[] =>
    records(trace).flatMap((row): Datum[] => {
      const [tx, ty] = [numberOf(row.minute), numberOf(row[key])];
      return tx === undefined || ty === undefined ? [] : [{ x: tx, y: ty }];
    });
  const uptake = curve("vo2_ml_min");
  const output = curve("vco2_ml_min");
  const last = (rows: readonly Datum[], name: string): Datum[] => rows.slice(-1).map((row) => ({ ...row, name }));
  if (uptake.length < 2) return [];
  const window = table(results, "rest_window");
  const span = (window ? records(window) : []).slice(0, 1).flatMap((row): Datum[] => {
    const [low, high] = [numberOf(row.from_min), numberOf(row.to_min)];
    return low === undefined || high === undefined ? [] : [{ low, high, name: speech.say("charts.rest.window") }];
  });
  const vo2 = quantityOf(results, "resting_vo2");
  const sx = (title: string | null) => x("x", title);
  return [
    {
      name: "resting-trace",
      section: "rest",
      size: "wide",
      entry: "rest_trace",
      title: vo2
        ? speech.say("charts.rest.title", { vo2: withUnit(speech, vo2) })
        : speech.say("charts.rest.title_without_value"),
      alt: speech.say("charts.rest.alt", {
        vo2: vo2 ? withUnit(speech, vo2) : speech.say("charts.not_given"),
        minutes: uptake.length,
      }),
      ...framed(
        "wide",
        [
          layer("span", "rect", "interval", { x: x("low", null), x2: { field: "high" } }),
          layer("span", "text", "name-left-top", {
            x: x("low", null),
            y: { value: -4 },
            text: { field: "name", type: "nominal" },
          }),
          layer("uptake", "line", "this-visit", { x: sx(null), y: y("y", null) }),
          layer("uptake", "point", "bins", { x: sx(speech.say("axes.time_min")), y: y("y", "mL/min") }),
          layer("output", "line", "this-visit-second", { x: sx(null), y: y("y", null) }),
          layer("output", "point", "bins-second", { x: sx(null), y: y("y", null) }),
          names("labels", "x", "y"),
        ],
        { height: 130 },
      ),
      data: { span, uptake, output, labels: [...last(uptake, "V̇O₂"), ...last(output, "V̇CO₂")] },
      table: { columns: trace.columns, rows: trace.rows },
    },
  ];
};
