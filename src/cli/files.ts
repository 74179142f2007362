/**
 * The only door to the disk. Reads stay inside the practice folder and inside a size limit; writes are atomic, so that
 * an interrupted build leaves the old file whole.
 */

import { createHash } from "node:crypto";
import {
  closeSync,
  fsyncSync,
  openSync,
  readdirSync,
  readFileSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { dirname, join, relative, sep } from "node:path";

/** Largest file that is read, in bytes: a full day of breaths is about 5 MB. */
export const LARGEST_FILE = 50_000_000;

export interface FileBytes {
  /** Path relative to the practice folder, forward slashes. */
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly sha256: string;
}

/** Why a file could not be read, in words a practitioner can act on. */
export class Unreadable extends Error {
  constructor(
    readonly path: string,
    readonly found: string,
    readonly fix: string,
  ) {
    super(`${path}: ${found}. ${fix}`);
    this.name = "Unreadable";
  }
}

export const slashed = (path: string): string => (sep === "/" ? path : path.split(sep).join("/"));

/** Reads a file of the practice. Throws Unreadable for links that lead out, files too large, and what the disk refuses. */
export function readFile(root: string, path: string, largest = LARGEST_FILE): FileBytes {
  const bytes = readBytes(root, path, largest);
  return { path: slashed(path), bytes, sha256: sha256(bytes) };
}

/** The same without a digest, for what is only read. */
export const readBytes = (root: string, path: string, largest = LARGEST_FILE): Uint8Array =>
  looked(root, path, largest, (real) => readFileSync(real));

/** Pieces of files pass through here. */
const piece = Buffer.alloc(65_536);

/** SHA-256 of a file of which nothing else is wanted: an archive is asked for it file by file, and nothing is left behind. */
export const digestOf = (root: string, path: string): string =>
  looked(root, path, LARGEST_FILE, (real) => {
    const hash = createHash("sha256");
    const handle = openSync(real, "r");
    try {
      for (let read = readSync(handle, piece); read > 0; read = readSync(handle, piece))
        hash.update(piece.subarray(0, read));
    } finally {
      closeSync(handle);
    }
    return hash.digest("hex");
  });

/** What `read` makes of a file that may be read. */
function looked<T>(root: string, path: string, largest: number, read: (real: string) => T): T {
  const full = join(root, path);
  try {
    const real = realpathSync.native(full);
    const inside = relative(realRoot(root), real);
    if (inside.startsWith("..") || inside === "")
      throw new Unreadable(
        path,
        "leads out of the practice folder",
        "Copy the file into the practice; links to the outside are not followed.",
      );
    const stat = statSync(real);
    const { size } = stat;
    if (!stat.isFile()) throw new Unreadable(path, "is not a file", "Name a plain file.");
    if (size > largest)
      throw new Unreadable(
        path,
        `is ${inBytes(size)}; the limit is ${inBytes(largest)}`,
        largest === LARGEST_FILE ? "Keep one test a file, or thin the recording." : "Make it smaller.",
      );
    return read(real);
  } catch (error) {
    if (error instanceof Unreadable) throw error;
    throw new Unreadable(path, diskWords(error), "Check the path and the permissions.");
  }
}

const inBytes = (size: number): string =>
  size < 1e6 ? `${Math.round(size / 1000)} kB` : `${Math.round(size / 1e5) / 10} MB`;

/** The practice's own real path, asked once a run. */
const roots = new Map<string, string>();
function realRoot(root: string): string {
  const known = roots.get(root) ?? realpathSync.native(root);
  roots.set(root, known);
  return known;
}

export const sha256 = (data: Uint8Array | string): string => createHash("sha256").update(data).digest("hex");

/** Names in a folder, sorted by code unit (the same on every machine); empty when the folder does not exist. */
export function list(root: string, path: string): { readonly name: string; readonly folder: boolean }[] {
  try {
    return readdirSync(join(root, path), { withFileTypes: true })
      .map((entry) => ({ name: entry.name, folder: entry.isDirectory() }))
      .sort((a, b) => (a.name < b.name ? -1 : 1));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return [];
    throw new Unreadable(path, diskWords(error), "Check the permissions of the folder.");
  }
}

/** Writes beside the target, then renames: readers see the old file or the new one, never half of one. */
export function writeAtomically(path: string, data: string | Uint8Array): void {
  const beside = join(dirname(path), `.${process.pid}-${sha256(path).slice(0, 8)}.part`);
  try {
    const handle = openSync(beside, "w");
    try {
      const bytes = typeof data === "string" ? Buffer.from(data, "utf8") : data;
      let written = 0;
      while (written < bytes.length) written += writeSync(handle, bytes, written);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new Unreadable(path, `could not be written: ${diskWords(error)}`, "The old file, if any, is untouched.");
  }
}

const WORDS: Readonly<Record<string, string>> = {
  ENOENT: "does not exist",
  EACCES: "may not be read or written by you",
  EPERM: "may not be read or written by you",
  EFBIG: "would be larger than the limit set for this program",
  EDQUOT: "your share of the disk is used up",
  EROFS: "lies on a read-only disk",
  ENOSPC: "the disk is full",
  EISDIR: "is a folder, not a file",
  ENOTDIR: "a part of the path is a file, not a folder",
  EMFILE: "too many files are open",
  ELOOP: "is a link that leads in a circle",
};
export const diskWords = (error: unknown): string => {
  const code = (error as NodeJS.ErrnoException).code ?? "";
  return WORDS[code] ?? `the disk answered ${code || String(error)}`;
};
