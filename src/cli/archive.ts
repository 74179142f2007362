/**
 * One client as one file: what was measured, what was computed, what was printed, and what is needed to do it again.
 * The same files give the same archive, byte for byte.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { RetestSet } from "../compare/known.js";
import { readDocument } from "./check-practice.js";
import { list, readFile, sha256 } from "./files.js";
import { PROGRAM } from "./freshness.js";
import type { ClientFolder, Practice } from "./practice.js";
import { REPEATS, repeatsText } from "./reliability-visits.js";
import { pack } from "./zip.js";

export const MANIFEST = "MANIFEST.json";

export interface Manifest {
  readonly format: "waymark archive 1";
  readonly client: string;
  readonly program: string;
  /** How to rebuild what is inside. */
  readonly rebuild: string;
  /** SHA-256 by path inside the archive. */
  readonly sha256: Readonly<Record<string, string>>;
}

/** Equations, tables and rules with their sources, as this version has them. */
const METHODS = join(PROGRAM, "src", "METHODS.md");

export const version = (): string =>
  (JSON.parse(readFileSync(join(PROGRAM, "package.json"), "utf8")) as { version: string }).version;

/** `repeats`: pairs out of visits of all clients, which the client's results rest on; empty where there are none. */
export function archiveClient(practice: Practice, client: ClientFolder, repeats: readonly RetestSet[]): Uint8Array {
  const files: Record<string, Uint8Array> = {};
  const take = (path: string) => {
    files[path] = readFile(practice.root, path).bytes;
  };
  take("lab.yaml");
  const logo = (readDocument(practice.root, "lab.yaml").value as { logo?: unknown } | undefined)?.logo;
  if (typeof logo === "string") take(logo);
  for (const folder of ["norms", "profiles", "retests"]) takeFolder(practice, folder, take);
  if (repeats.length > 0) files[REPEATS] = new TextEncoder().encode(repeatsText(repeats));
  takeFolder(practice, client.path, take);
  for (const visit of client.visits) takeFolder(practice, visit.path, take);
  for (const file of readdirSync(join(PROGRAM, "schema"), { recursive: true, encoding: "utf8" }).sort())
    if (file.endsWith(".json"))
      files[`schema/${file.replaceAll("\\", "/")}`] = readFileSync(join(PROGRAM, "schema", file));
  if (existsSync(METHODS)) files["METHODS.md"] = readFileSync(METHODS);
  const manifest: Manifest = {
    format: "waymark archive 1",
    client: client.id,
    program: `waymark ${version()}`,
    rebuild: `unpack, then: npx waymark@${version()} build --no-cache`,
    sha256: Object.fromEntries(
      Object.keys(files)
        .sort()
        .map((path) => [path, sha256(files[path] as Uint8Array)]),
    ),
  };
  return pack({ ...files, [MANIFEST]: new TextEncoder().encode(`${JSON.stringify(manifest, null, 2)}\n`) });
}

function takeFolder(practice: Practice, folder: string, take: (path: string) => void): void {
  for (const { name, folder: isFolder } of list(practice.root, folder))
    if (!isFolder && !name.startsWith(".")) take(`${folder}/${name}`);
}

/** "c-017-2026-07-20.zip": the client and the date of the latest visit. */
export function archiveName(client: ClientFolder): string {
  const latest = client.visits.at(-1)?.name.slice(0, 10) ?? "no-visit";
  return `${client.id}-${latest}.zip`;
}

/** Files of an archive that a rebuild must give again. */
export const isRebuilt = (path: string): boolean => /\/(results\.yaml|report[^/]*\.html)$/.test(path);
