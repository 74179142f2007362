/**
 * What need not be built again. A visit is fresh when the content of everything it depends on is what it was at the
 * last build, and its outputs are the files that build wrote. The record lies in .waymark/ (not committed); losing it
 * costs time, never a number: results.yaml stays its own record, and `--no-cache` gives the same bytes.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { sha256, writeAtomically } from "./files.js";

/** Folder of the installed program: holds dist/, schema/, templates/, src/norms/tables/. */
export const PROGRAM = fileURLToPath(new URL("../../", import.meta.url));

export interface Output {
  readonly file: string;
  readonly size: number;
  readonly mtimeMs: number;
}
export interface Built {
  readonly key: string;
  readonly outputs: readonly Output[];
}
export type BuildRecord = { [visit: string]: Built };

const place = (root: string) => join(root, ".waymark", "built.json");

export function readRecord(root: string, useCache: boolean): BuildRecord {
  if (!useCache) return {};
  try {
    const known = JSON.parse(readFileSync(place(root), "utf8")) as BuildRecord | null;
    // A list, a number or half a record is no record: what it would have known is built again.
    return Object.fromEntries(
      Object.entries(known ?? {}).filter(([, built]) => typeof built?.key === "string" && Array.isArray(built.outputs)),
    );
  } catch {
    return {};
  }
}

export function writeRecord(root: string, record: BuildRecord): void {
  mkdirSync(join(root, ".waymark"), { recursive: true });
  writeAtomically(place(root), JSON.stringify(record));
}

/** Notes the outputs of a visit as they lie on the disk now. */
export function outputsOf(folder: string, files: readonly string[]): Output[] {
  return files.map((file) => {
    const { size, mtimeMs } = statSync(join(folder, file));
    return { file, size, mtimeMs };
  });
}

export function isFresh(folder: string, built: Built | undefined, key: string, files: readonly string[]): boolean {
  if (built === undefined || built.key !== key) return false;
  const known = new Map(built.outputs.map((output) => [output.file, output]));
  return files.every((file) => {
    const was = known.get(file);
    if (was === undefined) return false;
    const now = statSync(join(folder, file), { throwIfNoEntry: false });
    return now !== undefined && now.size === was.size && now.mtimeMs === was.mtimeMs;
  });
}

let known: string | undefined;

/**
 * One digest of everything in the program that can move a byte of output: code, schemas, templates, tables. With the
 * root of a practice it is kept there beside sizes and times of the program's files, which are quicker asked than read.
 */
export function programDigest(root?: string): string {
  known ??= root === undefined ? digestOf(programFiles()) : keptDigest(root);
  return known;
}

function keptDigest(root: string): string {
  const files = programFiles();
  const facts = files.map((file) => {
    const { size, mtimeMs, ctimeMs } = statSync(join(PROGRAM, file));
    return `${file} ${size} ${mtimeMs} ${ctimeMs}`;
  });
  const signature = sha256([PROGRAM, ...facts].join("\n"));
  const path = join(root, ".waymark", "program.json");
  try {
    const kept = JSON.parse(readFileSync(path, "utf8")) as { signature?: unknown; digest?: unknown } | null;
    if (kept?.signature === signature && typeof kept.digest === "string") return kept.digest;
  } catch {
    // none kept, or not readable: read the program itself
  }
  const digest = digestOf(files);
  mkdirSync(join(root, ".waymark"), { recursive: true });
  writeAtomically(path, JSON.stringify({ signature, digest }));
  return digest;
}

function programFiles(): string[] {
  const parts = ["dist", "schema", "templates", "src/norms/tables", "src/compare/tables", "src/plan/profiles"];
  return parts
    .filter((part) => existsSync(join(PROGRAM, part)))
    .flatMap((part) =>
      readdirSync(join(PROGRAM, part), { recursive: true, encoding: "utf8" })
        .filter((file) => /\.(js|json|yaml|hbs|css|woff2)$/.test(file))
        .sort()
        .map((file) => `${part}/${file}`),
    );
}

const digestOf = (files: readonly string[]): string =>
  sha256(files.map((file) => `${file}\n${sha256(readFileSync(join(PROGRAM, file)))}`).join("\n"));
