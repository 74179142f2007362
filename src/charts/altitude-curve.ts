import { quantityOf } from "../kernel/entries.js";
import type { Chart, Datum } from "../kernel/figure.js";
import { withUnit } from "../kernel/names.js";
import { has, numberOf, records, table } from "./entries.js";
import { framed, layer, x, y } from "./parts.js";

/** The peak uptake to expect with altitude as a curve in its band, with the goal's altitude and what the task asks for. */
export const altitudeCurve: Chart = ({ results, speech }) => {
  const curve = table(results, "altitude_curve");
  if (curve === undefined || !has(curve, "altitude", "uptake")) return [];
  const rows = records(curve).flatMap((row): Datum[] => {
    const [ax, ay] = [numberOf(row.altitude), numberOf(row.uptake)];
    const [low, high] = [numberOf(row.low), numberOf(row.high)];
    return ax === undefined || ay === undefined ? [] : [{ x: ax, y: ay, low: low ?? ay, high: high ?? ay }];
  });
  if (rows.length < 2) return [];
  const goal = quantityOf(results, "goal_altitude");
  const expected = quantityOf(results, "goal_uptake_per_mass");
  const demand = quantityOf(results, "task_demand");
  const fill = {
    altitude: goal ? withUnit(speech, goal) : speech.say("charts.not_given"),
    expected: expected ? withUnit(speech, expected) : speech.say("charts.not_given"),
  };
  return [
    {
      name: "altitude-curve",
      section: "altitude",
      size: "wide",
      entry: "altitude_curve",
      title: speech.say(goal && expected ? "charts.altitude.title" : "charts.altitude.title_without_goal", fill),
      alt: speech.say("charts.altitude.alt", {
        ...fill,
        demand: demand ? withUnit(speech, demand) : speech.say("charts.not_given"),
      }),
      ...framed("wide", [
        layer("curve", "area", "others-band", { x: x("x", null), y: y("low", null), y2: { field: "high" } }),
        layer("curve", "line", "this-visit", { x: x("x", speech.say("axes.altitude")), y: y("y", "mL/kg/min") }),
        layer("goal", "rule", "threshold", { x: x("x", null) }),
        layer("goal", "text", "threshold-name", {
          x: x("x", null),
          y: { value: -3 },
          text: { field: "name", type: "nominal" },
        }),
        layer("demand", "rule", "guide", { y: y("y", null) }),
        layer("demand", "text", "name-left-top", {
          x: { value: 2 },
          y: y("y", null),
          text: { field: "name", type: "nominal" },
        }),
      ]),
      data: {
        curve: rows,
        goal: goal ? [{ x: goal.value, name: withUnit(speech, goal) }] : [],
        demand: demand
          ? [{ y: demand.value, name: speech.say("charts.altitude.demand", { demand: withUnit(speech, demand) }) }]
          : [],
      },
      table: { columns: curve.columns, rows: curve.rows },
    },
  ];
};
