import { quantityOf } from "../../kernel/entries.js";
import type { Chart } from "../../kernel/figure.js";
import { withUnit } from "../../kernel/names.js";
import { testData } from "../test-data.js";
import { timePanel } from "./time-panel.js";

/** Ventilation over time. */
export const ventilation: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech, results } = input;
  const peak = quantityOf(results, "ventilation_peak");
  const text = peak ? withUnit(speech, peak) : speech.say("charts.not_given");
  const figure = timePanel(data, {
    name: "ventilation",
    title: peak
      ? speech.say("charts.ventilation.title", { peak: text })
      : speech.say("charts.ventilation.title_without_peak"),
    alt: speech.say("charts.ventilation.alt", { peak: text }),
    unit: "L/min",
    curves: [{ key: "ventilation_l_min", style: "bins", name: "V̇E", cloud: "ventilation_l_min" }],
  });
  return figure ? [figure] : [];
};
