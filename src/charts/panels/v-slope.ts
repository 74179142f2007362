import { quantityOf } from "../../kernel/entries.js";
import type { Chart, Datum } from "../../kernel/figure.js";
import { withUnit } from "../../kernel/names.js";
import { numberOf, records, table } from "../entries.js";
import { bands, layer, x, y } from "../parts.js";
import { testData, thresholds } from "../test-data.js";
import { xyPanel } from "./xy-panel.js";

/** Carbon dioxide output on oxygen uptake with the two fitted lines and the first threshold's interval. */
export const vSlope: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech, results } = input;
  const vt1 = quantityOf(results, "vt1_vo2");
  const marks = thresholds(data);
  const lines = fittedLines(input);
  const figure = xyPanel(data, {
    name: "v-slope",
    title: vt1
      ? speech.say("charts.v_slope.title", { vt1: withUnit(speech, vt1) })
      : speech.say("charts.v_slope.title_without_vt1"),
    alt: speech.say("charts.v_slope.alt", { vt1: vt1 ? withUnit(speech, vt1) : speech.say("charts.not_given") }),
    xKey: "vo2_l_min",
    yKey: "vco2_l_min",
    xTitle: "V̇O₂ (L/min)",
    yTitle: "V̇CO₂ (L/min)",
    cloud: ["vo2_l_min", "vco2_l_min"],
    more: [
      bands("intervals", "low", "high"),
      layer("thresholds", "rule", "threshold", { x: x("x", null) }),
      layer("thresholds", "text", "threshold-name", {
        x: x("x", null),
        y: { value: -3 },
        text: { field: "name", type: "nominal" },
      }),
    ],
    over: [
      layer("lines", "line", "fit", { x: x("x", null), y: y("y", null), detail: { field: "line", type: "nominal" } }),
    ],
    data: {
      thresholds: marks.map(({ name, at }) => ({ x: at, name })),
      intervals: marks.flatMap(({ low, high }): Datum[] =>
        low === undefined || high === undefined ? [] : [{ low, high }],
      ),
      lines,
    },
  });
  return figure ? [figure] : [];
};

/** The ends of both lines, as the fit recorded them. */
function fittedLines({ results }: { results: Parameters<Chart>[0]["results"] }): Datum[] {
  const fit = table(results, "v_slope_lines");
  return (fit ? records(fit) : []).flatMap((row): Datum[] => {
    const [fx, fy] = [numberOf(row.vo2_l_min), numberOf(row.vco2_l_min)];
    return fx === undefined || fy === undefined ? [] : [{ x: fx, y: fy, line: String(row.line) }];
  });
}
