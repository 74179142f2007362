/**
 * A practice folder as it lies on the disk: laboratory file, client folders, visit folders. Nothing is interpreted
 * here but names; the texts go to the pipeline.
 */
import { existsSync, realpathSync, statSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { digestOf, type FileBytes, list, readBytes, readFile, slashed, Unreadable } from "./files.js";

export interface VisitFolder {
  /** "clients/c-017/2026-03-02-baseline" */
  readonly path: string;
  readonly client: string;
  readonly name: string;
}
export interface ClientFolder {
  readonly path: string;
  readonly id: string;
  readonly visits: readonly VisitFolder[];
}
export interface Practice {
  readonly root: string;
  readonly clients: readonly ClientFolder[];
}

export const SESSION = "session.yaml";
export const RESULTS = "results.yaml";
const IGNORED = /^[.]|^node_modules$/;

/** The practice that holds `start`: the nearest folder upward with a lab.yaml. Throws Unreadable when there is none. */
export function findPractice(start: string): string {
  const from = resolve(start);
  for (let at = existsSync(from) && statSync(from).isFile() ? dirname(from) : from; ; at = dirname(at)) {
    if (existsSync(join(at, "lab.yaml"))) return realpathSync(at);
    if (at === dirname(at))
      throw new Unreadable(
        start,
        "no lab.yaml here or in any folder above",
        "Run this inside a practice, or make one: waymark new practice DIR.",
      );
  }
}

export function openPractice(root: string): Practice {
  const clients = list(root, "clients")
    .filter((entry) => entry.folder && !IGNORED.test(entry.name))
    .map(({ name: id }) => {
      const path = `clients/${id}`;
      const visits = list(root, path)
        .filter(
          (entry) => entry.folder && !IGNORED.test(entry.name) && existsSync(join(root, path, entry.name, SESSION)),
        )
        .map(({ name }) => ({ path: `${path}/${name}`, client: id, name }));
      return { path, id, visits };
    });
  return { root, clients };
}

/** The clients and visits that the paths on the command line mean; everything when there are none. */
export function select(practice: Practice, paths: readonly string[], cwd: string): ReadonlySet<string> {
  const all = practice.clients.flatMap((client) => client.visits.map((visit) => visit.path));
  if (paths.length === 0) return new Set(all);
  const chosen = new Set<string>();
  for (const path of paths) {
    const asked = wanted(practice.root, path, cwd);
    const hits =
      asked === ""
        ? all
        : all.filter((visit) => visit === asked || visit.startsWith(`${asked}/`) || asked.startsWith(`${visit}/`));
    if (hits.length === 0)
      throw new Unreadable(
        path,
        "names no client or visit of this practice",
        `Visits are folders like clients/c-017/2026-03-02-baseline with a ${SESSION} inside.`,
      );
    for (const hit of hits) chosen.add(hit);
  }
  return chosen;
}

/** A path as typed, relative to the practice: from where one stands, or from the practice, or "c-017/2026-03-02-baseline". */
function wanted(root: string, path: string, cwd: string): string {
  for (const full of [resolve(cwd, path), join(root, path), join(root, "clients", path)]) {
    if (!existsSync(full)) continue;
    const inside = slashed(relative(root, realpathSync(full)));
    if (!inside.startsWith("..")) return inside === "clients" ? "" : inside;
  }
  throw new Unreadable(path, "does not exist in this practice", "Give a client or visit folder, e.g. clients/c-017.");
}

/** What lies in a visit's folder: asked once by who needs it more than once. */
export const filesOf = (practice: Practice, visit: VisitFolder): Listing => list(practice.root, visit.path);

export type Listing = ReturnType<typeof list>;

/** Every file beside session.yaml that a session may name as a series, by file name. */
export const seriesFiles = (
  practice: Practice,
  visit: VisitFolder,
  files = filesOf(practice, visit),
): Readonly<Record<string, FileBytes>> => series(visit, files, (path) => readFile(practice.root, path));

/** The same without digests. */
export const seriesBytes = (
  practice: Practice,
  visit: VisitFolder,
  files: Listing,
): Readonly<Record<string, Uint8Array>> => series(visit, files, (path) => readBytes(practice.root, path));

/** Their SHA-256 alone. */
export const seriesDigests = (practice: Practice, visit: VisitFolder): Readonly<Record<string, string>> =>
  series(visit, filesOf(practice, visit), (path) => digestOf(practice.root, path));

function series<T>(visit: VisitFolder, files: Listing, read: (path: string) => T): Readonly<Record<string, T>> {
  return Object.fromEntries(
    files
      .filter((entry) => !entry.folder && /\.(csv|tsv|txt)$/i.test(entry.name))
      .map((entry) => [entry.name, read(`${visit.path}/${entry.name}`)]),
  );
}

/** Files of a folder of the practice with an ending, e.g. norms/*.yaml. */
export const filesIn = (practice: Practice, folder: string, ending: RegExp): readonly FileBytes[] =>
  list(practice.root, folder)
    .filter((entry) => !entry.folder && ending.test(entry.name))
    .map((entry) => readFile(practice.root, `${folder}/${entry.name}`));

/** A file of the practice, or undefined when there is none. */
export const readIfThere = (practice: Practice, path: string): FileBytes | undefined =>
  existsSync(join(practice.root, path)) ? readFile(practice.root, path) : undefined;
