import type { Chart } from "../../kernel/figure.js";
import { testData } from "../test-data.js";
import { timePanel } from "./time-panel.js";

/** Ventilatory equivalents over time: where they turn up, the thresholds stand. */
export const equivalents: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech } = input;
  const figure = timePanel(data, {
    name: "equivalents",
    title: speech.say("charts.equivalents.title"),
    alt: speech.say("charts.equivalents.alt"),
    unit: speech.say("axes.ratio"),
    curves: [
      { key: "ve_vo2", style: "bins", name: "V̇E/V̇O₂" },
      { key: "ve_vco2", style: "bins-second", name: "V̇E/V̇CO₂" },
    ],
  });
  return figure ? [figure] : [];
};
