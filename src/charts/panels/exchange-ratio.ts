import { quantityOf } from "../../kernel/entries.js";
import type { Chart } from "../../kernel/figure.js";
import { withUnit } from "../../kernel/names.js";
import { testData } from "../test-data.js";
import { timePanel } from "./time-panel.js";

/** Respiratory exchange ratio over time. */
export const exchangeRatio: Chart = (input) => {
  const data = testData(input);
  if (data === undefined) return [];
  const { speech, results } = input;
  const peak = quantityOf(results, "rer_peak");
  const text = peak ? withUnit(speech, peak) : speech.say("charts.not_given");
  const figure = timePanel(data, {
    name: "exchange-ratio",
    title: peak
      ? speech.say("charts.exchange_ratio.title", { peak: text })
      : speech.say("charts.exchange_ratio.title_without_peak"),
    alt: speech.say("charts.exchange_ratio.alt", { peak: text }),
    unit: "V̇CO₂/V̇O₂",
    curves: [{ key: "rer", style: "bins", name: "RER" }],
  });
  return figure ? [figure] : [];
};
