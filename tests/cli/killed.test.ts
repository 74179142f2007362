/**
 * kill -9 in the middle of a build and of an archive, at random moments of a fixed seed: every file is the old one or the
 * new one, whole, and the next run is clean. KILLS=300 for a long run; 30 without it.
 */
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Copy, copyPractice } from "./practice-copy.js";

const KILLS = Number(process.env.KILLS ?? 30);
const VISIT = "clients/c-044/2026-06-08-retest";
const PROGRAM = resolve("dist/cli/main.js");
let copy: Copy;
let session = "";
const versions: string[] = [];
/** By file, the bytes of a build of either version. */
const whole = new Map<string, string[]>();

/** The same moments on every run: a linear congruential generator (Numerical Recipes' constants), 0 to 1. */
let state = 20_260_302;
const chance = () => {
  state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
  return state / 2 ** 32;
};

const files = () =>
  readdirSync(copy.root, { recursive: true, encoding: "utf8" }).filter((name) =>
    /(results\.yaml|\.html|\.zip)$/.test(name),
  );
const begun = () =>
  readdirSync(copy.root, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".part"));
const read = (name: string) => readFileSync(join(copy.root, name), "latin1");

/** How long a run takes when it is left alone. */
let build = 0;
let archive = 0;
const timed = (...words: readonly string[]): number => {
  const start = performance.now();
  expect(copy.run(...words).code).toBe(0);
  return performance.now() - start;
};

function killed(words: readonly string[], afterMs: number): Promise<{ code: number | null }> {
  return new Promise((done) => {
    const program = spawn(process.execPath, [PROGRAM, ...words], { cwd: copy.root, stdio: "ignore" });
    const timer = setTimeout(() => program.kill("SIGKILL"), afterMs);
    program.once("exit", (code) => {
      clearTimeout(timer);
      done({ code });
    });
  });
}

beforeAll(() => {
  copy = copyPractice(["c-044"]);
  session = join(copy.root, VISIT, "session.yaml");
  const text = readFileSync(session, "utf8");
  versions.push(text, text.replace("right_kg: [40, 41, 40]", "right_kg: [40, 44, 40]"));
  expect(versions[0]).not.toBe(versions[1]);
  for (const version of versions) {
    writeFileSync(session, version);
    build = timed("build", "--no-pdf", "--no-cache");
    archive = timed("archive", "c-044");
    for (const name of files()) whole.set(name, [...(whole.get(name) ?? []), read(name)]);
  }
}, 120_000);
afterAll(() => copy.remove());

const expectWhole = () => {
  for (const name of files())
    if (name.endsWith(".zip")) expectWholeArchive(name);
    else expect(whole.get(name)?.includes(read(name)), `${name} is whole`).toBe(true);
};

/** An archive made after a killed build may hold files of both versions; each must be what its manifest says. */
function expectWholeArchive(name: string): void {
  const entries = unzipSync(readFileSync(join(copy.root, name)));
  const { sha256 } = JSON.parse(strFromU8(entries["MANIFEST.json"] ?? new Uint8Array())) as {
    sha256: Record<string, string>;
  };
  expect(Object.keys(entries).sort()).toEqual(["MANIFEST.json", ...Object.keys(sha256)].sort());
  for (const [file, digest] of Object.entries(sha256))
    expect(
      createHash("sha256")
        .update(entries[file] ?? "")
        .digest("hex"),
      `${file} in ${name}`,
    ).toBe(digest);
}

describe("killed without warning", () => {
  it(
    `leaves whole files and a clean next run, ${KILLS} times`,
    async () => {
      let hit = 0;
      for (let i = 0; i < KILLS; i++) {
        const building = i % 2 === 0;
        writeFileSync(session, versions[Math.floor(i / 2) % 2] ?? "");
        const words = building ? ["build", "--no-pdf", "--no-cache"] : ["archive", "c-044"];
        // From before the first line runs until after it would be done.
        const { code } = await killed(words, 40 + chance() * 1.2 * (building ? build : archive));
        if (code === null) hit++;
        expectWhole();
        if (i % 6 === 5) {
          expect(copy.run("build", "--no-pdf")).toMatchObject({ code: 0, err: "" });
          expect(copy.run("archive", "c-044").code).toBe(0);
          expect(begun()).toEqual([]);
          expect(existsSync(join(copy.root, ".waymark/lock"))).toBe(false);
          expectWhole();
        }
      }
      expect(hit).toBeGreaterThan(KILLS / 4);
    },
    KILLS * 8000,
  );
});
