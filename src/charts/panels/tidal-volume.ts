import type { Chart } from "../../kernel/figure.js";
import { testData } from "../test-data.js";
import { xyPanel } from "./xy-panel.js";

/** Tidal volume on ventilation: how breathing deepened before it quickened. */
export const tidalVolume: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech } = input;
  const figure = xyPanel(data, {
    name: "tidal-volume",
    title: speech.say("charts.tidal_volume.title"),
    alt: speech.say("charts.tidal_volume.alt"),
    xKey: "ventilation_l_min",
    yKey: "tidal_volume_l",
    xTitle: "V̇E (L/min)",
    yTitle: "VT (L)",
    cloud: ["ventilation_l_min", "tidal_volume_l"],
  });
  return figure ? [figure] : [];
};
