/**
 * The whole data flow, one line a stage. Start reading here.
 *
 *     session.yaml + CSV → read → validate → derive → norms → validity → compare → plan → results → charts → report
 *
 * Texts in, texts out: no file, clock or environment is touched. results.yaml is the boundary: what comes after it is
 * presentation, and compares nothing but recorded numbers.
 */

import { compare } from "./compare/compare.js";
import { knownOf, type RetestSet } from "./compare/known.js";
import { referenceSpreads } from "./compare/reference-spreads.js";
import { comparisonConditions } from "./derive/conditions.js";
import { derive } from "./derive/derive.js";
import type { Diagnostic } from "./kernel/diagnostic.js";
import type { Document } from "./kernel/document.js";
import type { EventProfile } from "./kernel/generated/event-profile.js";
import type { ReferenceTable } from "./kernel/generated/reference-table.js";
import type { TypicalErrorTable } from "./kernel/generated/typical-error.js";
import type { Results } from "./kernel/results.js";
import type { Rule } from "./kernel/rule.js";
import type { Visit } from "./kernel/visit.js";
import { norms } from "./norms/norms.js";
import { plan } from "./plan/plan.js";
import { readSeries } from "./read/series.js";
import { readTrainingLog } from "./read/training-log.js";
import { recordResults, withEntries } from "./results/record.js";
import type { Checker } from "./validate/checker.js";
import { validateVisit } from "./validate/visit.js";
import { validity } from "./validity/validity.js";

/** What the program brings to every visit. */
export interface Reference {
  readonly checker: Checker;
  readonly rules: readonly Rule[];
  /** Built-in tables, and the laboratory's own. */
  readonly tables: readonly ReferenceTable[];
  readonly publishedErrors: readonly TypicalErrorTable[];
  readonly laboratoryRetests: readonly RetestSet[];
  /** Built-in event profiles, and the laboratory's own. */
  readonly eventProfiles: readonly EventProfile[];
}

/** What the practice brings to one visit. */
export interface Inputs {
  readonly lab: Document;
  readonly client: Document | undefined;
  readonly session: Document;
  /** Raw series and their digests, by file name. */
  readonly series: Readonly<Record<string, { readonly bytes: Uint8Array; readonly sha256: string }>>;
  readonly sessionSha256: string;
  /** Names of the files in the visit's folder, for messages. */
  readonly folder?: readonly string[];
}

export interface Outcome {
  readonly diagnostics: readonly Diagnostic[];
  /** Absent when any diagnostic is an error. */
  readonly visit?: Visit;
  readonly results?: Results;
}

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
  return { diagnostics, visit, results: recordResults(header(visit, inputs), judged) };
}

const header = (visit: Visit, inputs: Inputs): Omit<Results, "entries"> => ({
  client: visit.client.id,
  sex: visit.client.sex,
  date: visit.session.date,
  ...(visit.session.label === undefined ? {} : { label: visit.session.label }),
  purpose: visit.session.purpose,
  ageYears: visit.ageYears,
  sources: [
    { file: visit.file, sha256: inputs.sessionSha256 },
    ...[...Object.keys(visit.series), ...(visit.session.training_log ? [visit.session.training_log.file] : [])]
      .sort()
      .map((file) => ({ file, sha256: inputs.series[file]?.sha256 ?? "" })),
  ],
  choices: visit.choices,
  conditions: comparisonConditions(visit),
});
