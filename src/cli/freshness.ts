/**
 * What need not be built again. A visit is fresh when the content of everything it depends on is what it was at the
 * last build, and its outputs are the files that build wrote. The record lies in .waymark/built/, a file a client, so
 * that what several machines have built is put together by copying. It is not committed; losing it costs time, never a
 * number: results.yaml stays its own record, and `--no-cache` gives the same bytes.
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
  readonly sha256: string;
}
export interface Built {
  readonly key: string;
  readonly outputs: readonly Output[];
}
/** The visits of a client by their path. */
export type BuildRecord = Readonly<Record<string, Built>>;

const FOLDER = join(".waymark", "built");

export function readRecord(root: string, client: string): BuildRecord {
  try {
    const known = JSON.parse(readFileSync(join(root, FOLDER, `${client}.json`), "utf8")) as BuildRecord | null;
    // A list, a number or half a record is no record: what it would have known is built again.
    return Object.fromEntries(
      Object.entries(known ?? {}).filter(([, built]) => typeof built?.key === "string" && Array.isArray(built.outputs)),
    );
  } catch {
    return {};
  }
}

export function writeRecord(root: string, client: string, record: BuildRecord): void {
  mkdirSync(join(root, FOLDER), { recursive: true });
  writeAtomically(join(root, FOLDER, `${client}.json`), JSON.stringify(record));
}

/** Writes an output of a visit and notes it as it lies on the disk then; its digest is given where it is known. */
export function writeOutput(folder: string, file: string, data: string | Uint8Array, digest?: string): Output {
  const bytes = typeof data === "string" ? Buffer.from(data, "utf8") : data;
  writeAtomically(join(folder, file), bytes);
  const { size, mtimeMs } = statSync(join(folder, file));
  return { file, size, mtimeMs, sha256: digest ?? sha256(bytes) };
}

/**
 * The record of a visit that need not be built, undefined for one that must. Outputs with another time stamp (copied
 * from another machine, checked out) are read: the same bytes are fresh, and their record comes back with the new times.
 */
export function freshRecord(
  folder: string,
  built: Built | undefined,
  key: string,
  files: readonly string[],
): Built | undefined {
  if (built?.key !== key) return undefined;
  const known = new Map(built.outputs.map((output) => [output?.file, output]));
  const moved = new Map<string, Output>();
  for (const file of files) {
    const was = known.get(file);
    const now = statSync(join(folder, file), { throwIfNoEntry: false });
    if (was === undefined || now === undefined || !now.isFile() || now.size !== was.size) return undefined;
    if (now.mtimeMs === was.mtimeMs) continue;
    if (sha256(readFileSync(join(folder, file))) !== was.sha256) return undefined;
    moved.set(file, { ...was, mtimeMs: now.mtimeMs });
  }
  if (moved.size === 0) return built;
  return { key, outputs: built.outputs.map((output) => moved.get(output.file) ?? output) };
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
