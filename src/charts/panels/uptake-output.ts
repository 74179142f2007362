import { quantityOf } from "../../kernel/entries.js";
import type { Chart } from "../../kernel/figure.js";
import { withUnit } from "../../kernel/names.js";
import { has } from "../entries.js";
import { testData } from "../test-data.js";
import { timePanel } from "./time-panel.js";

/** Oxygen uptake and carbon dioxide output over time, with the work asked for. */
export const uptakeOutput: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech, results } = input;
  const peak = quantityOf(results, "vo2_peak");
  const work = has(data.bins, "power_w") ? "power_w" : "speed_km_h";
  const figure = timePanel(data, {
    name: "uptake-output",
    title: peak
      ? speech.say("charts.uptake.title", { peak: withUnit(speech, peak) })
      : speech.say("charts.uptake.title_without_peak"),
    alt: speech.say("charts.uptake.alt", { peak: peak ? withUnit(speech, peak) : speech.say("charts.not_given") }),
    unit: "L/min",
    rightUnit: work === "power_w" ? "W" : "km/h",
    curves: [
      { key: "vo2_l_min", style: "bins", name: "V̇O₂", cloud: "vo2_l_min" },
      { key: "vco2_l_min", style: "bins-second", name: "V̇CO₂", cloud: "vco2_l_min" },
    ],
    work,
  });
  return figure ? [figure] : [];
};
