/** The program as a child process that can be watched, stopped and starved. */
import { type ChildProcess, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";

export const PROGRAM = resolve("dist/cli/main.js");

export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly err: string;
}
export interface Running {
  readonly child: ChildProcess;
  readonly ended: Promise<Ended>;
  /** Waits until it is true, or until the program has ended. */
  until(isTrue: () => boolean): Promise<void>;
}

/** `before` is a shell command run first in the same shell, e.g. a limit; `as` another user. */
export function start(
  cwd: string,
  words: readonly string[],
  env: NodeJS.ProcessEnv = {},
  before = "",
  as: { readonly uid?: number } = {},
): Running {
  const options = { cwd, env: { ...process.env, ...env }, ...as };
  const child =
    before === ""
      ? spawn(process.execPath, [PROGRAM, ...words], options)
      : spawn("bash", ["-c", `${before}; exec "$0" "$@"`, process.execPath, PROGRAM, ...words], options);
  let [out, err, over] = ["", "", false];
  child.stdout?.on("data", (data) => {
    out += data;
  });
  child.stderr?.on("data", (data) => {
    err += data;
  });
  const ended = new Promise<Ended>((done) =>
    child.on("close", (code, signal) => {
      over = true;
      done({ code, signal, out, err });
    }),
  );
  return {
    child,
    ended,
    async until(isTrue) {
      while (!over && !isTrue()) await new Promise((go) => setTimeout(go, 5));
    },
  };
}

export const run = (...given: Parameters<typeof start>): Promise<Ended> => start(...given).ended;

/** Files of a practice, what lies in .waymark left out. Only names: a running build makes and renames files under one's eyes. */
const filesIn = (root: string): string[] =>
  readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((path) => !path.includes("/.waymark/"))
    .sort();

/** Every file of a practice at rest by path with its digest. */
export const digests = (root: string): Record<string, string> =>
  Object.fromEntries(
    filesIn(root).map((path) => [
      path.slice(root.length + 1),
      createHash("sha256").update(readFileSync(path)).digest("hex"),
    ]),
  );

export const resultsIn = (root: string): string[] => filesIn(root).filter((path) => path.endsWith("results.yaml"));
