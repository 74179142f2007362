import { quantityOf } from "../../kernel/entries.js";
import type { Chart } from "../../kernel/figure.js";
import { unitOf, withUnit } from "../../kernel/names.js";
import { testData } from "../test-data.js";
import { timePanel } from "./time-panel.js";

/** Heart rate and oxygen pulse over time. */
export const heart: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech, results } = input;
  const peak = quantityOf(results, "heart_rate_peak");
  const text = peak ? withUnit(speech, peak) : speech.say("charts.not_given");
  const figure = timePanel(data, {
    name: "heart",
    title: peak ? speech.say("charts.heart.title", { peak: text }) : speech.say("charts.heart.title_without_peak"),
    alt: speech.say("charts.heart.alt", { peak: text }),
    unit: unitOf(speech, "1/min"),
    rightUnit: unitOf(speech, "mL/beat"),
    curves: [
      { key: "heart_rate_bpm", style: "bins", name: speech.say("charts.heart.rate") },
      { key: "oxygen_pulse_ml", style: "bins-second", name: speech.say("charts.heart.pulse"), right: true },
    ],
  });
  return figure ? [figure] : [];
};
