import type { Chart } from "../../kernel/figure.js";
import { testData } from "../test-data.js";
import { timePanel } from "./time-panel.js";

/** End-tidal pressures over time, with oxygen saturation where it was measured. */
export const endTidal: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech } = input;
  const figure = timePanel(data, {
    name: "end-tidal",
    title: speech.say("charts.end_tidal.title"),
    alt: speech.say("charts.end_tidal.alt"),
    unit: "mmHg",
    rightUnit: "%",
    curves: [
      { key: "peto2_mmhg", style: "bins", name: "PETO₂", cloud: "peto2_mmhg" },
      { key: "petco2_mmhg", style: "bins-second", name: "PETCO₂", cloud: "petco2_mmhg" },
      { key: "spo2_pct", style: "bins-third", name: "SpO₂", right: true },
    ],
  });
  return figure ? [figure] : [];
};
