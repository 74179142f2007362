#!/usr/bin/env node
/**
 * How the built program starts: dist/cli/main.js, and dist/cli/crew-worker.js in a thread, are this file, and run the
 * part of dist/parts/ that bears their name. Beside each part lies what V8 made of it when the program was built
 * (`.code`), so that a run does not compile it again. It counts only whole and for the very part it was made from, which
 * a digest in front tells; another Node refuses it; the part is then compiled as ever. With --debug parts are read as plain modules, so that
 * a stack names the source file and line.
 */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { setFlagsFromString } from "node:v8";
import { Script } from "node:vm";
import { isMainThread } from "node:worker_threads";

type Require = (name: string) => unknown;
type Part = (exports: unknown, require: Require, module: Module, file: string, folder: string) => void;
interface Module {
  exports: unknown;
}

/**
 * Bytes of code a function runs before V8 of Node 20 may compile it for speed; its own number is 67 584. A build runs so
 * much code so few times that at this number compiling cost more than it gave: a fifth of a build's time, more of one
 * with figures. Later V8 counts otherwise and does not know the word.
 */
const USE_BEFORE_COMPILING = 528_000;
if (isMainThread && process.versions.v8.startsWith("11."))
  setFlagsFromString(`--interrupt-budget=${USE_BEFORE_COMPILING}`);

const here = fileURLToPath(import.meta.url);
const PARTS = join(dirname(here), "../parts");
const DIGEST_BYTES = 32;
const modules = new Map<string, Module>();

function load(name: string): unknown {
  const known = modules.get(name);
  if (known !== undefined) return known.exports;
  const module: Module = { exports: {} };
  modules.set(name, module);
  const file = join(PARTS, name);
  const outside = createRequire(file);
  const require: Require = (id) => (id.startsWith("./") ? load(id.slice(2)) : outside(id));
  const run = scriptOf(file).runInThisContext() as Part;
  run(module.exports, require, module, file, PARTS);
  return module.exports;
}

function scriptOf(filename: string): Script {
  const bytes = readFileSync(filename);
  const cachedData = codeOf(filename, bytes);
  return new Script(`(function (exports, require, module, __filename, __dirname) {${bytes.toString("utf8")}\n})`, {
    filename,
    ...(cachedData && { cachedData }),
  });
}

/** V8 itself compares no more than the length of the source, and would run code that a disk has spoilt. */
function codeOf(file: string, part: Uint8Array): Buffer | undefined {
  try {
    const kept = readFileSync(`${file}.code`);
    const code = kept.subarray(DIGEST_BYTES);
    const digest = createHash("sha256").update(part).update(code).digest();
    return kept.subarray(0, DIGEST_BYTES).equals(digest) ? code : undefined;
  } catch {
    return undefined;
  }
}

if (process.argv.includes("--debug")) {
  process.setSourceMapsEnabled(true);
  createRequire(here)(join(PARTS, basename(here)));
} else {
  load(basename(here));
}
