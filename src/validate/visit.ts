/**
 * Three documents and the raw files they name become a visit, or a list of everything that is wrong with them.
 * Warnings come with a visit; any error and there is none.
 */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document, Path } from "../kernel/document.js";
import type { Client } from "../kernel/generated/client.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import type { Session } from "../kernel/generated/session.js";
import type { Series } from "../kernel/series.js";
import type { Visit } from "../kernel/visit.js";
import { decimalAge } from "./calendar.js";
import type { Checker, DocumentKind } from "./checker.js";
import { resolveChoices } from "./choices.js";
import type { Code } from "./codes.js";
import { confirmedFaults } from "./confirmed.js";
import { bodyFaults, dateFaults, folderFaults, pressureFaults } from "./cross.js";
import { documentFaults } from "./faults.js";
import { laboratoryFaults, measureFaults } from "./named.js";
import { personalFaults } from "./privacy.js";
import { type ReadSeries, seriesOf } from "./series-files.js";
import { logOf, type ReadLog } from "./training-log.js";
import { words } from "./words.js";

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
          ...contentFaults(kind, document),
        ];
  remembered.set(document, faults);
  return faults;
}
/** What no schema can say about a file by itself. */
function contentFaults(kind: DocumentKind, document: Document): readonly Diagnostic[] {
  if (kind === "laboratory") return laboratoryFaults(document);
  return kind === "client" ? [...measureFaults(document), ...personalFaults(document)] : personalFaults(document);
}
const remembered = new WeakMap<Document, readonly Diagnostic[]>();

export function validateVisit(
  texts: VisitTexts,
  checker: Checker,
  readSeries: ReadSeries,
  readLog?: ReadLog,
): Validation {
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
    ...(suspected(session, ["size", "stature_cm"]) || suspected(session, ["size", "mass_kg"])
      ? []
      : bodyFaults(session)),
  );
  function suspected(document: Document, path: Path): boolean {
    if (diagnostics.length === 0) return false;
    const { line } = document.place(path);
    return diagnostics.some((d) => d.at.file === document.file && d.at.line === line);
  }
  const { series, faults } = seriesOf(texts, hasError(validateDocument("laboratory", lab, checker)), readSeries);
  const log = logOf(texts, readLog);
  diagnostics.push(...faults, ...log.faults);
  const sorted = inOrder(withoutRepeats(diagnostics), [lab.file, client?.file ?? "", session.file]);
  if (client === undefined || hasError(sorted)) return { diagnostics: sorted };
  const visit = assemble(lab.value as Laboratory, client.value as Client, session, series, checker);
  return { visit: log.sessions ? { ...visit, trainingLog: log.sessions } : visit, diagnostics: sorted };
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
