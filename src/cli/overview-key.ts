/** Whether the pages of practice and clients are what the last build left: told without loading what draws them. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { sha256, writeAtomically } from "./files.js";
import { readRecord } from "./freshness.js";
import type { ClientFolder, Practice } from "./practice.js";

export const PAGE = "index.html";
/** Of the practice: what is kept of its visits for these pages. */
export const OVERVIEW = ".waymark/overview";
/** Raise it when VisitSummary changes: kept summaries are then made anew. What a build's key covers is covered already. */
export const FORMAT = "summaries 2";

export interface OverviewKey {
  /** Of every client: what its visits were last built from, as the record says. */
  readonly clients: ReadonlyMap<ClientFolder, readonly string[]>;
  readonly key: string;
  /** Nothing was built since the pages were written. */
  readonly same: boolean;
}

export function overviewKey(practice: Practice): OverviewKey {
  const clients = new Map(practice.clients.map((client) => [client, clientKeys(practice, client)]));
  const key = sha256([FORMAT, ...[...clients.values()].flat()].join("\n"));
  const same = textAt(keyFile(practice)) === key && existsSync(join(practice.root, PAGE));
  return { clients, key, same };
}

/** After the pages are written. */
export const keepKey = (practice: Practice, { key }: OverviewKey): void => writeAtomically(keyFile(practice), key);

const keyFile = ({ root }: Practice) => join(root, OVERVIEW, "key");

function clientKeys({ root }: Practice, client: ClientFolder): readonly string[] {
  const record = readRecord(root, client.id);
  return client.visits.map((visit) => `${visit.path} ${record[visit.path]?.key ?? "not built here"}`);
}

export function textAt(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}
