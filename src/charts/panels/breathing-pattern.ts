import type { Chart } from "../../kernel/figure.js";
import { has } from "../entries.js";
import { testData } from "../test-data.js";
import { xyPanel } from "./xy-panel.js";

/** How breathing grew: tidal volume on ventilation, or breathing frequency where volumes were not recorded. */
export const breathingPattern: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech } = input;
  const deep = has(data.bins, "tidal_volume_l");
  const figure = xyPanel(data, {
    name: "breathing-pattern",
    title: speech.say(deep ? "charts.breathing.title_volume" : "charts.breathing.title_frequency"),
    alt: speech.say(deep ? "charts.breathing.alt_volume" : "charts.breathing.alt_frequency"),
    xKey: "ventilation_l_min",
    yKey: deep ? "tidal_volume_l" : "breathing_frequency_per_min",
    xTitle: "V̇E (L/min)",
    yTitle: deep ? "VT (L)" : speech.say("axes.breathing_frequency"),
    cloud: ["ventilation_l_min", deep ? "tidal_volume_l" : "breathing_frequency_per_min"],
  });
  return figure ? [figure] : [];
};
