/**
 * The whole data flow, one line a stage. Start reading here.
 *
 *     session.yaml + CSV → read → validate → derive → norms → validity → compare → plan → results → charts → report
 *
 * Texts in, texts out: no file, clock or environment is touched. results.yaml is the boundary: what comes after it is
 * presentation, and compares nothing but recorded numbers.
 */
import { drawCharts } from "./charts/charts.js";
import { compare } from "./compare/compare.js";
import { knownOf } from "./compare/known.js";
import { referenceSpreads } from "./compare/reference-spreads.js";
import { derive } from "./derive/derive.js";
import type { Results } from "./kernel/results.js";
import { norms } from "./norms/norms.js";
import { headerOf, type Inputs, type Manner, type Outcome, type Reference, type Shown } from "./pipeline-parts.js";
import { plan } from "./plan/plan.js";
import { readSeries } from "./read/series.js";
import { readTrainingLog } from "./read/training-log.js";
import type { Edition } from "./report/render.js";
import { recordResults, withEntries } from "./results/record.js";
import { validateVisit } from "./validate/visit.js";
import { validity } from "./validity/validity.js";

export function compute(inputs: Inputs, earlier: readonly Results[], reference: Reference): Outcome {
  const { visit, results: measured, diagnostics } = measure(inputs, reference);
  if (visit === undefined || measured === undefined) return { diagnostics };
  const spreads = referenceSpreads(measured, reference.tables);
  const known = knownOf(visit.client, reference.laboratoryRetests, reference.publishedErrors, spreads);
  const compared = withEntries(measured, compare(measured, earlier, known));
  const results = withEntries(compared, plan(compared, visit, earlier, reference.eventProfiles));
  return { diagnostics, visit, results };
}

/** Up to what one visit says by itself, without earlier ones. */
export function measure(inputs: Inputs, reference: Pick<Reference, "checker" | "rules" | "tables">): Outcome {
  const texts = {
    ...inputs,
    seriesTexts: Object.fromEntries(Object.entries(inputs.series).map(([name, file]) => [name, file.bytes])),
  };
  const { visit, diagnostics } = validateVisit(texts, reference.checker, readSeries, readTrainingLog);
  if (visit === undefined) return { diagnostics };
  const derived = derive(visit);
  const placed = norms(derived, visit, reference.tables);
  const judged = validity(placed, visit, reference.rules);
  return { diagnostics, visit, results: recordResults(headerOf(visit, inputs), judged) };
}

/** Results to a report, a page an edition: everything after the boundary. */
export function present({ visit, ...shown }: Shown, manner: Manner, editions: readonly Edition[]): Promise<string[]> {
  const { client, laboratory, series } = visit;
  const figures = drawCharts({ ...shown, series, speech: manner.speech });
  const page = (edition: Edition) =>
    manner.reporter.renderReport({ ...manner, ...shown, client, laboratory, figures, edition });
  return Promise.all(editions.map(page));
}
