/** Validates visits of a practice without computing anything: what `check` prints and what a build asks first. */

import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import { decodeLeniently } from "../read/decode.js";
import { readSeries } from "../read/series.js";
import { readTrainingLog } from "../read/training-log.js";
import { readYaml } from "../read/yaml.js";
import type { Checker } from "../validate/checker.js";
import { practiceMember, validatePractice } from "../validate/practice.js";
import { validateDocument, validateVisit } from "../validate/visit.js";
import { readBytes } from "./files.js";
import { personalFiles } from "./personal-files.js";
import { type ClientFolder, filesOf, type Practice, SESSION, seriesBytes } from "./practice.js";

export const readDocument = (root: string, path: string): Document => readYaml(path, readBytes(root, path));

export const clientDocument = (practice: Practice, client: ClientFolder): Document | undefined =>
  existsSync(join(practice.root, client.path, "client.yaml"))
    ? readDocument(practice.root, `${client.path}/client.yaml`)
    : undefined;

/** All problems of the chosen visits, and of the practice as a whole when everything is chosen. */
export function checkPractice(
  practice: Practice,
  lab: Document,
  chosen: ReadonlySet<string>,
  checker: Checker,
): Diagnostic[] {
  const seen = new Set<string>();
  const found: Diagnostic[] = [];
  const report = (diagnostics: readonly Diagnostic[]) => {
    for (const diagnostic of diagnostics) {
      const key = JSON.stringify(diagnostic);
      if (!seen.has(key)) found.push(diagnostic);
      seen.add(key);
    }
  };
  const members = [];
  const everything = practice.clients.every((client) => client.visits.every((visit) => chosen.has(visit.path)));
  if (everything) report(validateDocument("laboratory", lab, checker));
  for (const client of practice.clients) {
    const document = clientDocument(practice, client);
    if (everything && document && client.visits.length === 0) report(validateDocument("client", document, checker));
    for (const visit of client.visits) {
      const read = () => readDocument(practice.root, `${visit.path}/${SESSION}`);
      const session = read();
      members.push(practiceMember(session, read));
      if (!chosen.has(visit.path)) continue;
      const files = filesOf(practice, visit);
      const { diagnostics } = validateVisit(
        {
          lab,
          client: document,
          session,
          seriesTexts: seriesBytes(practice, visit, files),
          folder: files.map(({ name }) => name),
        },
        checker,
        readSeries,
        readTrainingLog,
      );
      report(diagnostics);
      const { birth_date: birth } = (document?.value ?? {}) as { birth_date?: unknown };
      const { remarks } = (session.value ?? {}) as { remarks?: unknown };
      report(
        personalFiles(
          practice,
          visit,
          files,
          typeof birth === "string" ? birth : undefined,
          Array.isArray(remarks) ? remarks.map(String) : [],
        ),
      );
    }
  }
  return [...found, ...validatePractice(members.filter((member) => member !== undefined))];
}

/** Text of a file of the practice for a code frame; undefined when it cannot be shown. */
export function sourceText(practice: Practice): (file: string) => string | undefined {
  const cache = new Map<string, string | undefined>();
  return (file) => {
    if (!cache.has(file)) {
      try {
        cache.set(file, decodeLeniently(readBytes(practice.root, file)));
      } catch {
        cache.set(file, undefined);
      }
    }
    return cache.get(file);
  };
}
