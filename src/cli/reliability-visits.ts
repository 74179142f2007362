/**
 * Visits from which the laboratory learns its own error: those whose folder label holds "reliability", and each one's
 * neighbours in time that it may be paired with. Found by folder names alone, so that a practice without any pays nothing.
 */
import { readFile } from "./files.js";
import { type ClientFolder, type Practice, readIfThere, SESSION, seriesFiles, type VisitFolder } from "./practice.js";

/** A repeat is paired with a visit of at most so many days before or after (retest-pairs.ts). */
const MOST_DAYS = 14;
const MS_PER_DAY = 86_400_000;

const day = (visit: VisitFolder): number => Date.parse(`${visit.name.slice(0, 10)}T00:00:00Z`) / MS_PER_DAY;
const isRepeat = (visit: VisitFolder): boolean => /^\d{4}-\d{2}-\d{2}-.*reliability/.test(visit.name);

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
export const repeatDigests = (practice: Practice): readonly string[] =>
  repeatedClients(practice).flatMap(({ client, visits }) => [
    `${client.path} ${readIfThere(practice, `${client.path}/client.yaml`)?.sha256 ?? ""}`,
    ...visits.flatMap((visit) => [
      `${visit.path} ${readFile(practice.root, `${visit.path}/${SESSION}`).sha256}`,
      ...Object.values(seriesFiles(practice, visit)).map((file) => `${file.path} ${file.sha256}`),
    ]),
  ]);
