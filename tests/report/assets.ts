/** The templates folder as the program reads it, and a report of the fixture in one call. */
import { readdirSync, readFileSync } from "node:fs";
import { drawCharts } from "../../src/charts/charts.js";
import { wordsIn } from "../../src/cli/press.js";
import { formulas } from "../../src/formulas.generated.js";
import type { Figure } from "../../src/kernel/figure.js";
import type { Results } from "../../src/kernel/results.js";
import { speechOf, type WordTree } from "../../src/kernel/speech.js";
import type { Edition, ReportAssets, ReportInput } from "../../src/report/render.js";
import { rules } from "../../src/rules.generated.js";
import { baseline, client, laboratory, retest, series } from "./fixture.js";

const folder = (path: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(path)
      .filter((file) => file.endsWith(".hbs"))
      .map((file) => [file.replace(/\.hbs$/, ""), readFileSync(`${path}/${file}`, "utf8")]),
  );

export const assets: ReportAssets = {
  templates: { pages: folder("templates"), partials: folder("templates/partials") },
  theme: {
    config: JSON.parse(readFileSync("templates/theme/vega-config.json", "utf8")),
    widths: JSON.parse(readFileSync("templates/theme/fonts/widths.json", "utf8")),
  },
  css: readFileSync("templates/theme/print.css", "utf8"),
  pagesCss: readFileSync("templates/theme/pages.css", "utf8"),
  fonts: Object.fromEntries(
    readdirSync("templates/theme/fonts")
      .filter((file) => file.endsWith(".woff2"))
      .map((file) => [file.replace(/\.woff2$/, ""), readFileSync(`templates/theme/fonts/${file}`)]),
  ),
};

export const wordsOf = (language: string): WordTree => wordsIn("templates/words", language);

export const EDITIONS: readonly Edition[] = ["practitioner", "client", "referral"];
export const DIGEST = "2d711642b726b04401627ca9fbac32f5c8530fb1903cc4db02258717921a4881";

export const figuresOf = (results: Results, earlier: readonly Results[], language = "en"): readonly Figure[] =>
  drawCharts({ results, earlier, series, speech: speechOf(wordsOf(language)) });

export function inputOf(edition: Edition, language = "en", results = retest, earlier = [baseline]): ReportInput {
  return {
    results,
    earlier,
    figures: figuresOf(results, earlier, language),
    client: client as unknown as ReportInput["client"],
    laboratory,
    formulas,
    rules,
    tables: [],
    words: wordsOf(language),
    digest: DIGEST,
    edition,
  };
}
export const MARKS = { decimal: ".", thousands: "\u202f" };
