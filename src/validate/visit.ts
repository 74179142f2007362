/**
 * Three documents and the raw files they name become a visit, or a list of everything that is wrong with them.
 * Warnings come with a visit; any error and there is none.
 */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document, Part, Path } from "../kernel/document.js";
import type { Client } from "../kernel/generated/client.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import type { Session } from "../kernel/generated/session.js";
import { nearest } from "../kernel/near.js";
import type { Series } from "../kernel/series.js";
import type { Visit } from "../kernel/visit.js";
import { decimalAge } from "./calendar.js";
import type { Checker, DocumentKind } from "./checker.js";
import { resolveChoices } from "./choices.js";
import type { Code } from "./codes.js";
import { confirmedFaults } from "./confirmed.js";
import { dateFaults, folderFaults, pressureFaults } from "./cross.js";
import { documentFaults } from "./faults.js";
import { fileNameFault } from "./file-name.js";
import { personalFaults } from "./privacy.js";
import { references } from "./references.js";
import { type Words, words } from "./words.js";

type InstrumentEntry = NonNullable<Laboratory["instruments"]>[string];

/** How a raw file becomes a series; read/ has it, and pipeline.ts hands it over. */
export type ReadSeries = (
  name: string,
  content: string | Uint8Array,
  mapping: InstrumentEntry,
  path: string,
) => { readonly series?: Series; readonly diagnostics: readonly Diagnostic[] };

export interface VisitTexts {
  readonly lab: Document;
  /** Absent when the client's folder holds no client.yaml. */
  readonly client: Document | undefined;
  readonly session: Document;
  /** Raw files by the name the session uses (seriesFiles lists them); those that are not there are left out. */
  readonly seriesTexts: Readonly<Record<string, string | Uint8Array | undefined>>;
  /** Names of all files in the visit's folder, for "did you mean"; may be left out. */
  readonly folder?: readonly string[];
}
export interface Validation {
  readonly visit?: Visit;
  /** Errors and warnings, in the order of the files and of their lines. */
  readonly diagnostics: readonly Diagnostic[];
}

/** The faults of one document by itself; the laboratory's are found once and remembered. */
export function validateDocument(kind: DocumentKind, document: Document, checker: Checker): readonly Diagnostic[] {
  const known = remembered.get(document);
  if (known) return known;
  const faults =
    document.value === undefined
      ? document.diagnostics
      : [
          ...documentFaults(document, checker.check(kind, document.value), checker),
          ...confirmedFaults(document),
          ...(kind === "laboratory" ? gasConditionFaults(document) : personalFaults(document)),
        ];
  remembered.set(document, faults);
  return faults;
}
const remembered = new WeakMap<Document, readonly Diagnostic[]>();

export function validateVisit(texts: VisitTexts, checker: Checker, readSeries: ReadSeries): Validation {
  const { lab, client, session } = texts;
  const diagnostics: Diagnostic[] = [
    ...validateDocument("laboratory", lab, checker),
    ...(client ? validateDocument("client", client, checker) : []),
    ...validateDocument("session", session, checker),
  ];
  if (client === undefined) diagnostics.push(clientMissing(session));
  diagnostics.push(
    ...folderFaults(client, session),
    ...(client ? dateFaults(client, session) : []),
    ...(suspected(lab, ["altitude_m"]) || suspected(session, ["room", "pressure_mmhg"])
      ? []
      : pressureFaults(lab, session)),
  );
  function suspected(document: Document, path: Path): boolean {
    const { line } = document.place(path);
    return diagnostics.some((d) => d.at.file === document.file && d.at.line === line);
  }
  const { series, faults } = readAll(texts, hasError(validateDocument("laboratory", lab, checker)), readSeries);
  diagnostics.push(...faults);
  const sorted = inOrder(withoutRepeats(diagnostics), [lab.file, client?.file ?? "", session.file]);
  if (client === undefined || hasError(sorted)) return { diagnostics: sorted };
  const visit = assemble(lab.value as Laboratory, client.value as Client, session, series, checker);
  return { visit, diagnostics: sorted };
}

function assemble(
  laboratory: Laboratory,
  client: Client,
  document: Document,
  series: Readonly<Record<string, Series>>,
  checker: Checker,
): Visit {
  const session = document.value as Session;
  const schema = checker.schema("blocks/choices.schema.json");
  if (schema === undefined) throw new Error("no schema for choices");
  return {
    laboratory,
    client,
    session,
    file: document.file.split("/").at(-1) ?? document.file,
    series,
    choices: resolveChoices(schema, laboratory.choices, client.choices, session.choices),
    ageYears: decimalAge(client.birth_date, session.date),
  };
}

const hasError = (diagnostics: readonly Diagnostic[]) => diagnostics.some((d) => d.severity === "error");

function clientMissing(session: Document): Diagnostic {
  const id = (session.value as { client?: unknown } | undefined)?.client;
  const folder = /^(.*\/)?clients\/([^/]+)\//.exec(session.file);
  const file = `${folder ? (folder[1] ?? "") : ""}clients/${folder?.[2] ?? String(id)}/client.yaml`;
  return {
    code: "unknown-client" satisfies Code,
    severity: "error",
    at: session.place(["client"]),
    ...words.unknownClient(String(id ?? ""), file),
  };
}

/** Reads every raw file the session names. Faults of the laboratory's file are not repeated here. */
function readAll(texts: VisitTexts, labIsFaulty: boolean, readSeries: ReadSeries) {
  const { session, lab, seriesTexts } = texts;
  const series: Record<string, Series> = {};
  const faults: Diagnostic[] = [];
  const report = (code: Code, path: Path, why: Words, part: Part = "value") =>
    faults.push({ code, severity: "error", at: session.place(path, part), ...why });
  const instruments = ((lab.value as Laboratory | undefined)?.instruments ?? {}) as Record<string, InstrumentEntry>;
  const known = lab.value === undefined ? undefined : Object.keys(instruments);
  const named = references(session.value);
  for (const { instrument, path } of named.instruments)
    if (known !== undefined && !known.includes(instrument))
      report("unknown-instrument", path, words.unknownInstrument(instrument, known, nearest(instrument, known)));
  const folder = session.file.split("/").slice(0, -1).join("/");
  for (const { file, instrument, path } of named.series) {
    const fault = fileNameFault(file);
    const content = Object.hasOwn(seriesTexts, file) ? seriesTexts[file] : undefined;
    if (fault !== undefined) report("series-path", [...path, "series"], words.seriesPath(file, fault));
    else if (content === undefined)
      report("series-missing", [...path, "series"], words.seriesMissing(file, nearest(file, texts.folder ?? [])));
    else if (instrument === undefined)
      report("missing-companion", [...path, "series"], words.noInstrument(file), "key");
    else if (Object.hasOwn(instruments, instrument) && series[file] === undefined) {
      const entry = instruments[instrument] as InstrumentEntry;
      if (entry?.columns === undefined) {
        if (!labIsFaulty)
          report("instrument-without-columns", [...path, "instrument"], words.noColumns(instrument, file));
      } else if (!labIsFaulty) {
        const reading = readSeries(file, content, entry, folder ? `${folder}/${file}` : file);
        faults.push(...reading.diagnostics);
        if (reading.series) series[file] = reading.series;
      }
    }
  }
  return { series, faults };
}

/** Volumes whose gas condition lab.yaml does not state. */
function gasConditionFaults(lab: Document): Diagnostic[] {
  const instruments = (lab.value as Laboratory | null)?.instruments;
  const found: Diagnostic[] = [];
  for (const [key, entry] of Object.entries(instruments ?? {}))
    for (const [channel, column] of Object.entries(entry?.columns ?? {})) {
      const isVolume = /ventilation|volume/.test(channel);
      if (isVolume && typeof column === "object" && column !== null && !("condition" in column))
        found.push({
          code: "gas-condition-missing" satisfies Code,
          severity: "warning",
          at: lab.place(["instruments", key, "columns", channel], "key"),
          ...words.gasConditionMissing(channel),
        });
    }
  return found;
}

/**
 * A block's schema and the look across files can find one fault twice: a file name of the wrong shape that leads out
 * of the folder, a series without an instrument. The more exact message stays.
 */
function withoutRepeats(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const spot = ({ at }: Diagnostic) => `${at.file}:${at.line}:${at.column}`;
  const exact = new Set(diagnostics.filter((d) => d.code === "series-path").map(spot));
  const seen = new Set<string>();
  return diagnostics.filter((d) => {
    if (d.code === "wrong-shape" && exact.has(spot(d))) return false;
    if (d.code !== "missing-companion") return true;
    return !seen.has(spot(d)) && seen.add(spot(d));
  });
}

/** Files in the order given, then others by name; inside a file by line and column. */
export function inOrder(diagnostics: readonly Diagnostic[], files: readonly string[]): readonly Diagnostic[] {
  const rank = (file: string) => (files.includes(file) ? files.indexOf(file) : files.length);
  return [...diagnostics].sort(
    (a, b) =>
      rank(a.at.file) - rank(b.at.file) ||
      (a.at.file < b.at.file ? -1 : a.at.file > b.at.file ? 1 : 0) ||
      (a.at.line ?? 0) - (b.at.line ?? 0) ||
      (a.at.column ?? 0) - (b.at.column ?? 0),
  );
}
