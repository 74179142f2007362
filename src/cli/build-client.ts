/**
 * Builds one client: every visit in the order of its folders, because a retest is compared with what was recorded
 * before. A client with an error gets nothing written, so its files never tell half a story; other clients go on.
 */
import { join } from "node:path";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import type { Results } from "../kernel/results.js";
import { compute, type Outcome, type Reference } from "../pipeline.js";
import { readYaml } from "../read/yaml.js";
import { readResults } from "../results/read.js";
import { writeResults } from "../results/write.js";
import { clientDocument, folderNames } from "./check-practice.js";
import { readFile, writeAtomically } from "./files.js";
import { type ClientFolder, type Practice, SESSION, seriesFiles, type VisitFolder } from "./practice.js";

export const RESULTS = "results.yaml";

export interface Workshop {
  readonly practice: Practice;
  readonly lab: Document;
  readonly reference: Reference;
}

export interface VisitBuilt {
  readonly visit: VisitFolder;
  /** Files written, by name in the visit's folder. */
  readonly wrote: readonly string[];
  /** The results as they were before this build, when there were any. */
  readonly before: Results | undefined;
  readonly results: Results;
}
export interface ClientBuilt {
  readonly diagnostics: readonly Diagnostic[];
  /** Empty when any diagnostic is an error. */
  readonly visits: readonly VisitBuilt[];
}

/** Builds the stale visits of a client; fresh ones are read back as earlier visits. */
export function buildClient(shop: Workshop, client: ClientFolder, stale: ReadonlySet<string>): ClientBuilt {
  const { diagnostics, visits } = computeClient(shop, client, stale);
  if (diagnostics.some((d) => d.severity === "error")) return { diagnostics, visits: [] };
  return {
    diagnostics,
    visits: visits.map(({ visit, results }) => {
      const before = recorded(shop.practice, visit);
      writeAtomically(join(shop.practice.root, visit.path, RESULTS), writeResults(results));
      return { visit, results, before, wrote: [RESULTS] };
    }),
  };
}

export interface ClientComputed {
  readonly diagnostics: readonly Diagnostic[];
  readonly visits: readonly { readonly visit: VisitFolder; readonly results: Results }[];
}

/** Computes a client's visits, or only the stale ones; writes nothing. */
export function computeClient(shop: Workshop, client: ClientFolder, stale?: ReadonlySet<string>): ClientComputed {
  const document = clientDocument(shop.practice, client);
  const diagnostics: Diagnostic[] = [];
  const earlier: Results[] = [];
  const visits: { visit: VisitFolder; results: Results }[] = [];
  for (const visit of client.visits) {
    const wanted = stale === undefined || stale.has(visit.path);
    const kept = wanted ? undefined : recorded(shop.practice, visit);
    if (kept !== undefined) {
      earlier.push(kept);
      continue;
    }
    const outcome = computeVisit(shop, document, visit, earlier);
    diagnostics.push(...outcome.diagnostics);
    if (outcome.results === undefined) continue;
    earlier.push(outcome.results);
    if (wanted) visits.push({ visit, results: outcome.results });
  }
  return { diagnostics, visits };
}

function computeVisit(
  shop: Workshop,
  client: Document | undefined,
  visit: VisitFolder,
  earlier: readonly Results[],
): Outcome {
  const { practice, lab, reference } = shop;
  const file = readFile(practice.root, `${visit.path}/${SESSION}`);
  const inputs = {
    lab,
    client,
    session: readYaml(file.path, file.bytes),
    sessionSha256: file.sha256,
    series: seriesFiles(practice, visit),
    folder: folderNames(practice, visit),
  };
  return compute(inputs, earlier, reference);
}

/** What the last build recorded; undefined when there is nothing or it cannot be read as results. */
export function recorded(practice: Practice, visit: VisitFolder): Results | undefined {
  try {
    return readResults(new TextDecoder().decode(readFile(practice.root, `${visit.path}/${RESULTS}`).bytes));
  } catch {
    return undefined;
  }
}
