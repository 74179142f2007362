/**
 * Visits from which the laboratory learns its own error: those whose folder label holds "reliability", and each one's
 * neighbours in time that it may be paired with. Found by folder names alone, so that a practice without any pays nothing.
 */

import type { RetestSet } from "../compare/known.js";
import { dayOf } from "../kernel/days.js";
import { readFile, Unreadable } from "./files.js";
import { type ClientFolder, type Practice, readIfThere, SESSION, seriesFiles, type VisitFolder } from "./practice.js";

/** A repeat is paired with a visit of at most so many days before or after (retest-pairs.ts). */
const MOST_DAYS = 14;

const day = (visit: VisitFolder): number => dayOf(visit.name.slice(0, 10));
const isRepeat = (visit: VisitFolder): boolean => /^\d{4}-\d{2}-\d{2}-.*reliability/.test(visit.name);

/**
 * Pairs out of the visits of all clients, as an archive of one client carries them: numbers alone, so that its results can
 * be computed again without the others' records. Where the file stands, it is used instead of visits.
 */
export const REPEATS = "retests/repeated-visits.json";

export const repeatsText = (sets: readonly RetestSet[]): string => `${JSON.stringify(sets, null, 1)}\n`;

/** The pairs an archive carries; undefined where there is no such file. */
export function archivedRepeats(practice: Practice): readonly RetestSet[] | undefined {
  const file = readIfThere(practice, REPEATS);
  if (file === undefined) return undefined;
  try {
    const sets = JSON.parse(new TextDecoder().decode(file.bytes)) as readonly RetestSet[];
    if (Array.isArray(sets) && sets.every(isSet)) return sets;
  } catch {}
  throw new Unreadable(REPEATS, "is not what an archive writes", "Unpack the archive again; this file is not edited.");
}

const isSet = ({ measure, pairs, from }: Partial<RetestSet>): boolean =>
  typeof measure === "string" &&
  typeof from === "string" &&
  Array.isArray(pairs) &&
  pairs.every((pair) => Array.isArray(pair) && pair.length === 2 && pair.every(Number.isFinite));

export interface RepeatedClient {
  readonly client: ClientFolder;
  /** Repeats and possible partners, in the order of their folders. */
  readonly visits: readonly VisitFolder[];
}

export function repeatedClients(practice: Practice): readonly RepeatedClient[] {
  return practice.clients.flatMap((client) => {
    const repeats = client.visits.filter(isRepeat);
    if (repeats.length === 0) return [];
    const near = (visit: VisitFolder) => repeats.some((repeat) => Math.abs(day(repeat) - day(visit)) <= MOST_DAYS);
    return [{ client, visits: client.visits.filter(near) }];
  });
}

/** Digests of every file those visits are computed from: what they measure moves the error of all clients. */
export const repeatDigests = (practice: Practice): readonly string[] => [
  ...[readIfThere(practice, REPEATS)].flatMap((file) => (file === undefined ? [] : [`${file.path} ${file.sha256}`])),
  ...repeatedClients(practice).flatMap(({ client, visits }) => [
    `${client.path} ${readIfThere(practice, `${client.path}/client.yaml`)?.sha256 ?? ""}`,
    ...visits.flatMap((visit) => [
      `${visit.path} ${readFile(practice.root, `${visit.path}/${SESSION}`).sha256}`,
      ...Object.values(seriesFiles(practice, visit)).map((file) => `${file.path} ${file.sha256}`),
    ]),
  ]),
];
