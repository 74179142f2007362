/** What goes into the pipeline and comes out of it, and the header that results carry. */
import type { RetestSet } from "./compare/known.js";
import { comparisonConditions } from "./derive/conditions.js";
import type { Diagnostic } from "./kernel/diagnostic.js";
import type { Document } from "./kernel/document.js";
import type { EventProfile } from "./kernel/generated/event-profile.js";
import type { ReferenceTable } from "./kernel/generated/reference-table.js";
import type { TypicalErrorTable } from "./kernel/generated/typical-error.js";
import type { Results } from "./kernel/results.js";
import type { Rule } from "./kernel/rule.js";
import type { Speech } from "./kernel/speech.js";
import type { Visit } from "./kernel/visit.js";
import type { Reporter, ReportInput } from "./report/render.js";
import type { Checker } from "./validate/checker.js";

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

/** What a report shows. */
export interface Shown {
  readonly visit: Visit;
  readonly results: Results;
  readonly earlier: readonly Results[];
  /** SHA-256 of results.yaml. */
  readonly digest: string;
}

/** How it is shown: the opened reporter, the language, and what methods and sources are printed from. */
export type Manner = Pick<ReportInput, "formulas" | "rules" | "tables" | "words" | "logo"> & {
  readonly reporter: Reporter;
  readonly speech: Speech;
};

export const headerOf = (visit: Visit, inputs: Inputs): Omit<Results, "entries"> => ({
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
