import { quantityOf } from "../../kernel/entries.js";
import type { Chart } from "../../kernel/figure.js";
import { withUnit } from "../../kernel/names.js";
import { testData } from "../test-data.js";
import { xyPanel } from "./xy-panel.js";

/** Ventilation on carbon dioxide output: its slope, and where it turns up. */
export const ventilationOutput: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech, results } = input;
  const slope = quantityOf(results, "ve_vco2_slope");
  const figure = xyPanel(data, {
    name: "ventilation-output",
    title: slope
      ? speech.say("charts.ventilation_output.title", { slope: withUnit(speech, slope) })
      : speech.say("charts.ventilation_output.title_without_slope"),
    alt: speech.say("charts.ventilation_output.alt", {
      slope: slope ? withUnit(speech, slope) : speech.say("charts.not_given"),
    }),
    xKey: "vco2_l_min",
    yKey: "ventilation_l_min",
    xTitle: "V̇CO₂ (L/min)",
    yTitle: "V̇E (L/min)",
    cloud: ["vco2_l_min", "ventilation_l_min"],
  });
  return figure ? [figure] : [];
};
