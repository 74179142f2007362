/** The runs of the benchmark: the program as a user starts it, on a practice of any size, with time, memory and bytes. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

export interface Run {
  readonly name: string;
  readonly visits: number;
  readonly wallMs: number;
  /** Of the program and all its threads. */
  readonly cpuMs: number;
  /** Of processes it started (a browser). */
  readonly childrenCpuMs: number;
  readonly peakMb: number;
  /** Bytes the practice holds afterwards. */
  readonly megabytes: number;
}

const PROBE = resolve("tests/tools/bench-probe.mjs");

export function measured(
  name: string,
  visits: number,
  program: string,
  practice: string,
  words: readonly string[],
): Run {
  const probe = join(mkdtempSync(join(tmpdir(), "bench-")), "probe.json");
  const started = performance.now();
  const { status, stderr } = spawnSync(process.execPath, [join(program, "dist/cli/main.js"), ...words], {
    cwd: practice,
    encoding: "utf8",
    maxBuffer: 1e9,
    env: { ...process.env, BENCH_PROBE: probe, NODE_OPTIONS: `--import=${PROBE}` },
  });
  const wallMs = performance.now() - started;
  if (status !== 0 && !(name === "diff" || name === "verify"))
    throw new Error(`${name} of ${visits} visits ended with ${status}: ${stderr.slice(-2000)}`);
  const { cpuMs, childrenCpuMs, peakKb } = JSON.parse(readFileSync(probe, "utf8")) as Record<string, number>;
  rmSync(join(probe, ".."), { recursive: true });
  return {
    name,
    visits,
    wallMs,
    cpuMs: cpuMs ?? 0,
    childrenCpuMs: childrenCpuMs ?? 0,
    peakMb: (peakKb ?? 0) / 1024,
    megabytes: bytesIn(practice) / 1e6,
  };
}

const bytesIn = (folder: string): number =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((sum, entry) => sum + statSync(join(entry.parentPath, entry.name)).size, 0);

export function edit(path: string, from: string | RegExp, to: string): void {
  const text = readFileSync(path, "utf8");
  const edited = text.replace(from, to);
  if (edited === text) throw new Error(`nothing to edit in ${path}`);
  writeFileSync(path, edited);
}

/** The installed program once more, so that a formula or a table in it can be changed. */
export function copyOfProgram(): string {
  const folder = mkdtempSync(join(tmpdir(), "bench-program-"));
  for (const part of ["dist", "schema", "templates", "src", "package.json"])
    cpSync(part, join(folder, part), { recursive: true });
  symlinkSync(resolve("node_modules"), join(folder, "node_modules"));
  return folder;
}

/** Raises the revision of a formula from 1 to 2, in the part of the built program that holds it. */
export function reviseFormula(program: string, id: string): void {
  const first = new RegExp(`(?<=\\bid:.${id}.,revision:)1\\b`);
  const parts = readdirSync(join(program, "dist/parts")).filter((name) => name.endsWith(".js"));
  const part = parts.find((name) => first.test(readFileSync(join(program, "dist/parts", name), "utf8")));
  if (part === undefined) throw new Error(`no formula ${id} in its first revision`);
  edit(join(program, "dist/parts", part), first, "2");
}

/** A session of the practice, somewhere in its middle. */
export function someSession(practice: string): string {
  const clients = readdirSync(join(practice, "clients")).sort();
  const client = join(practice, "clients", clients[clients.length >> 1] as string);
  const visit = readdirSync(client)
    .filter((name) => /^\d{4}/.test(name))
    .sort()
    .at(-1) as string;
  return join(client, visit, "session.yaml");
}

/** Commits everything in the practice, for diff. */
export function commit(practice: string): void {
  const git = (...words: string[]) =>
    spawnSync("git", ["-c", "user.name=bench", "-c", "user.email=bench@invalid", ...words], {
      cwd: practice,
      maxBuffer: 1e9,
    });
  git("init", "-q");
  writeFileSync(join(practice, ".gitignore"), ".waymark/\n*.html\n*.pdf\n");
  git("add", "-A");
  git("commit", "-q", "-m", "all");
}
