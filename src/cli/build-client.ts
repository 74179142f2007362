/**
 * Builds one client: every visit in the order of its folders, because a retest is compared with what was recorded
 * before. A client with an error gets nothing written, so its files never tell half a story; other clients go on.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import type { Results } from "../kernel/results.js";
import type { Visit } from "../kernel/visit.js";
import { compute } from "../pipeline.js";
import type { Inputs, Outcome, Reference } from "../pipeline-parts.js";
import { readYaml } from "../read/yaml.js";
import { summaryOf, type VisitSummary } from "../report/overview/visit-summary.js";
import type { Edition } from "../report/render.js";
import { readResults } from "../results/read.js";
import { writeResults } from "../results/write.js";
import { clientDocument } from "./check-practice.js";
import { htmlName, type Press, type WrittenPage } from "./editions.js";
import { readBytes, readFile, sha256 } from "./files.js";
import { type Output, writeOutput } from "./freshness.js";
import { moved, movedChoices } from "./moved.js";
import {
  type ClientFolder,
  filesOf,
  type Practice,
  RESULTS,
  SESSION,
  seriesFiles,
  type VisitFolder,
} from "./practice.js";

export { RESULTS } from "./practice.js";

export interface Workshop {
  readonly practice: Practice;
  readonly lab: Document;
  readonly reference: Reference;
}

export interface VisitBuilt {
  readonly visit: VisitFolder;
  /** Files written in the visit's folder. */
  readonly wrote: readonly Output[];
  /** How many findings moved since the results that stood there; undefined when there were none. */
  readonly moves: number | undefined;
  /** Choices that are not what was recorded: "lactate_definition: fixed-4 is now fixed-2". */
  readonly choices: readonly string[];
  /** Editions written, for printing. */
  readonly pages: readonly WrittenPage[];
  /** The files it was computed from, as they were read. */
  readonly sources: Results["sources"];
  /** For the pages of client and practice; undefined when only results are wanted, which writes no pages. */
  readonly summary: VisitSummary | undefined;
}
export interface ClientBuilt {
  readonly diagnostics: readonly Diagnostic[];
  /** Empty when any diagnostic is an error. */
  readonly visits: readonly VisitBuilt[];
}

/** Builds the stale visits of a client; fresh ones are read back as earlier visits. Without a press, results only. */
export async function buildClient(
  shop: Workshop,
  client: ClientFolder,
  stale: ReadonlySet<string>,
  press?: { readonly open: Press; readonly editions: readonly Edition[] },
): Promise<ClientBuilt> {
  const { diagnostics, visits } = computeClient(shop, client, stale);
  if (diagnostics.some((d) => d.severity === "error")) return { diagnostics, visits: [] };
  const built: VisitBuilt[] = [];
  for (const { visit, source, results, earlier } of visits) {
    const bytes = writeResults(results);
    const digest = sha256(bytes);
    const { moves, choices } = movesFrom(shop.practice, visit, results, bytes);
    const pages = press ? await press.open.render(source, results, earlier, digest, press.editions) : [];
    const folder = join(shop.practice.root, visit.path);
    const wrote = [
      writeOutput(folder, RESULTS, bytes, digest),
      ...pages.map((page) => writeOutput(folder, htmlName(page.edition), page.html)),
    ];
    built.push({
      visit,
      pages: pages.map(({ edition, facts }) => ({ edition, facts })),
      moves,
      choices,
      summary: press ? summaryOf(results, source.client) : undefined,
      wrote,
      sources: results.sources,
    });
  }
  return { diagnostics, visits: built };
}

export interface ClientComputed {
  readonly diagnostics: readonly Diagnostic[];
  readonly visits: readonly {
    readonly visit: VisitFolder;
    readonly source: Visit;
    readonly results: Results;
    readonly earlier: readonly Results[];
  }[];
}

/** Computes a client's visits, or only the stale ones; writes nothing. */
export function computeClient(shop: Workshop, client: ClientFolder, stale?: ReadonlySet<string>): ClientComputed {
  const document = clientDocument(shop.practice, client);
  const diagnostics: Diagnostic[] = [];
  const earlier: Results[] = [];
  const visits: ClientComputed["visits"][number][] = [];
  for (const visit of client.visits) {
    const wanted = stale === undefined || stale.has(visit.path);
    const kept = wanted ? undefined : recorded(shop.practice, visit);
    if (kept !== undefined) {
      earlier.push(kept);
      continue;
    }
    const outcome = computeVisit(shop, document, visit, earlier);
    diagnostics.push(...outcome.diagnostics);
    if (outcome.results === undefined || outcome.visit === undefined) continue;
    if (wanted) visits.push({ visit, source: outcome.visit, results: outcome.results, earlier: [...earlier] });
    earlier.push(outcome.results);
  }
  return { diagnostics, visits };
}

/** One visit of the practice by its path, without earlier visits. */
export function computeVisitOf(shop: Workshop, path: string): Outcome {
  for (const client of shop.practice.clients)
    for (const visit of client.visits)
      if (visit.path === path) return computeVisit(shop, clientDocument(shop.practice, client), visit, []);
  return { diagnostics: [] };
}

function computeVisit(
  shop: Workshop,
  client: Document | undefined,
  visit: VisitFolder,
  earlier: readonly Results[],
): Outcome {
  return compute(inputsOf(shop, client, visit), earlier, shop.reference);
}

/** Everything a visit is computed from, read from the disk. */
export function inputsOf(
  { practice, lab }: Pick<Workshop, "practice" | "lab">,
  client: Document | undefined,
  visit: VisitFolder,
): Inputs {
  const file = readFile(practice.root, `${visit.path}/${SESSION}`);
  const files = filesOf(practice, visit);
  return {
    lab,
    client,
    session: readYaml(file.path, file.bytes),
    sessionSha256: file.sha256,
    series: seriesFiles(practice, visit, files),
    folder: files.map(({ name }) => name),
  };
}

/** How many findings move when `bytes` replace what stands there (undefined when nothing does), and which choices. */
function movesFrom(
  practice: Practice,
  visit: VisitFolder,
  results: Results,
  bytes: Uint8Array,
): Pick<VisitBuilt, "moves" | "choices"> {
  const path = `${visit.path}/${RESULTS}`;
  if (!existsSync(join(practice.root, path))) return { moves: undefined, choices: [] };
  if (Buffer.compare(bytes, readBytes(practice.root, path)) === 0) return { moves: 0, choices: [] };
  const before = recorded(practice, visit);
  return before === undefined
    ? { moves: undefined, choices: [] }
    : { moves: moved(before, results).length, choices: movedChoices(before, results) };
}

/** What the last build recorded; undefined when there is nothing or it cannot be read as results. */
export function recorded(practice: Practice, visit: VisitFolder): Results | undefined {
  try {
    return readResults(new TextDecoder().decode(readBytes(practice.root, `${visit.path}/${RESULTS}`)));
  } catch {
    return undefined;
  }
}
