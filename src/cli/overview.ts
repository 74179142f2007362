/**
 * The pages of the practice and of each client. Client by client: a summary of every visit is kept in .waymark/overview/,
 * so that a build reads only the results that changed, and memory holds one client's numbers at a time. Losing that
 * folder costs time, never a line: the pages come out the same.
 */
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Client } from "../kernel/generated/client.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import { type ClientLine, clientLine, practicePage } from "../report/overview/practice-page.js";
import { summaryOf, type VisitSummary } from "../report/overview/visit-summary.js";
import { openPages } from "../report/pages.js";
import { recorded, type VisitBuilt } from "./build-client.js";
import { clientDocument, readDocument } from "./check-practice.js";
import { drawnClientPage, hrefOf, reportsOf } from "./client-overview.js";
import { sha256, writeAtomically } from "./files.js";
import { FORMAT, keepKey, OVERVIEW, type OverviewKey, PAGE, textAt } from "./overview-key.js";
import type { ClientFolder, Practice, VisitFolder } from "./practice.js";
import { dressed } from "./press.js";
import { asProblem } from "./report-overrides.js";

type Summed = Pick<VisitBuilt, "visit" | "summary">;

/** Writes the pages that changed; gives their paths. The key is that of now, after a build. `force`: write all, trusting no summary kept from before. */
export async function writeOverview(
  practice: Practice,
  key: OverviewKey,
  built: readonly Summed[],
  force: boolean,
): Promise<readonly string[]> {
  try {
    return await written(practice, key, built, force);
  } catch (error) {
    throw asProblem(error, practice);
  }
}

async function written(
  practice: Practice,
  key: OverviewKey,
  built: readonly Summed[],
  force: boolean,
): Promise<readonly string[]> {
  mkdirSync(join(practice.root, OVERVIEW), { recursive: true });
  const laboratory = (readDocument(practice.root, "lab.yaml").value ?? { name: "" }) as Laboratory;
  const { assets, words } = dressed(practice, laboratory.language);
  const pages = openPages(assets, words, laboratory);
  const fresh = new Map(built.map(({ visit, summary }) => [visit.path, summary]));
  const lines: ClientLine[] = [];
  const wrote: string[] = [];
  for (const client of practice.clients) {
    const keys = [FORMAT, ...(key.clients.get(client) ?? [])];
    const kept = force ? undefined : keptSummaries(practice, client);
    const known = summaries(practice, client, fresh, kept, keys);
    if (known.length === 0) continue;
    const changed = sha256(keys.join("\n")) !== kept?.key || client.visits.some((visit) => fresh.has(visit.path));
    const page = `${client.path}/${PAGE}`;
    if (changed || !existsSync(join(practice.root, page))) {
      const html = await drawnClientPage(pages, practice, client, known);
      if (writeIfChanged(join(practice.root, page), html)) wrote.push(page);
      keep(practice, client, known, keys);
    }
    lines.push(lineOf(practice, client, known));
  }
  if (writeIfChanged(join(practice.root, PAGE), practicePage(pages, lines))) wrote.unshift(PAGE);
  keepKey(practice, key);
  return wrote;
}

/** A visit with its summary; a visit without results that can be read has none and is left out. */
export interface Known {
  readonly visit: VisitFolder;
  readonly summary: VisitSummary;
}

interface Kept {
  readonly key: string;
  readonly visits: Readonly<Record<string, { readonly key: string; readonly summary: VisitSummary }>>;
}

function summaries(
  practice: Practice,
  client: ClientFolder,
  fresh: ReadonlyMap<string, VisitSummary | undefined>,
  kept: Kept | undefined,
  keys: readonly string[],
): readonly Known[] {
  let document: Pick<Client, "goals" | "primary_outcomes"> | undefined;
  return client.visits.flatMap((visit, i) => {
    const old = kept?.visits[visit.path];
    const key = keys[i + 1] as string;
    const summary =
      fresh.get(visit.path) ?? (old?.key === key && !key.endsWith("not built here") ? old.summary : undefined);
    if (summary !== undefined) return [{ visit, summary }];
    const results = recorded(practice, visit);
    if (results === undefined) return [];
    document ??= (clientDocument(practice, client)?.value ?? {}) as Client;
    return [{ visit, summary: summaryOf(results, document) }];
  });
}

const placeOf = (practice: Practice, client: ClientFolder) => join(practice.root, OVERVIEW, `${client.id}.json`);

function keptSummaries(practice: Practice, client: ClientFolder): Kept | undefined {
  try {
    return JSON.parse(readFileSync(placeOf(practice, client), "utf8")) as Kept;
  } catch {
    return undefined;
  }
}

function keep(practice: Practice, client: ClientFolder, known: readonly Known[], keys: readonly string[]): void {
  const visits = Object.fromEntries(
    known.map(({ visit, summary }) => [visit.path, { key: keys[client.visits.indexOf(visit) + 1], summary }]),
  );
  writeAtomically(placeOf(practice, client), JSON.stringify({ key: sha256(keys.join("\n")), visits }));
}

const lineOf = (practice: Practice, client: ClientFolder, known: readonly Known[]): ClientLine =>
  clientLine(
    client.id,
    known.map(({ summary }) => summary),
    known.map(({ visit }) => hrefOf(visit, reportsOf(practice, visit))),
  );

function writeIfChanged(path: string, text: string): boolean {
  if (textAt(path) === text) return false;
  writeAtomically(path, text);
  return true;
}
