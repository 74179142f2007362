/**
 * Compiles every structure the example practice draws, for dist/structures.json. Part of `npm run build`: a program
 * without the file draws the same, later.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "yaml";
import { drawCharts } from "../../src/charts/charts.js";
import { differencePlot } from "../../src/charts/difference-plot.js";
import type { Spec } from "../../src/kernel/figure.js";
import type { Results } from "../../src/kernel/results.js";
import { speechOf } from "../../src/kernel/speech.js";
import { type Compiled, type Config, compile, structureKey } from "../../src/report/structures.js";
import { readResults } from "../../src/results/read.js";

const root = fileURLToPath(new URL("../../", import.meta.url));
const clients = join(root, "examples/skarn-point/clients");

/** The structures of all figures of the example practice and of its retests. */
export function exampleStructures(): ReadonlyMap<string, Spec> {
  const speech = speechOf(parse(readFileSync(join(root, "templates/words/en.yaml"), "utf8")));
  const pair = { name: "pairs", measure: "", unit: "", decimals: 0, meanShift: 0, limits: { low: 0, high: 0 } };
  const figures = [differencePlot({ ...pair, pairs: [[0, 0]], suspects: [], speech })];
  for (const client of readdirSync(clients).sort()) {
    const earlier: Results[] = [];
    for (const visit of readdirSync(join(clients, client))
      .filter((name) => /^\d{4}-/.test(name))
      .sort()) {
      const results = readResults(readFileSync(join(clients, client, visit, "results.yaml"), "utf8"));
      figures.push(...drawCharts({ results, earlier: [...earlier], series: {}, speech }));
      earlier.push(results);
    }
  }
  return new Map(figures.map(({ spec }) => [structureKey(spec), spec]));
}

export async function compiledStructures(): Promise<Compiled> {
  const config = JSON.parse(readFileSync(join(root, "templates/theme/vega-config.json"), "utf8")) as Config;
  const dataflows: Record<string, Compiled["dataflows"][string]> = {};
  for (const [key, spec] of exampleStructures()) dataflows[key] = await compile(spec, config);
  return { config, dataflows };
}
