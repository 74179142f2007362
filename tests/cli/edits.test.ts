/**
 * Whatever is edited, in whatever order: a build that trusts its record writes the same bytes as one from nothing. Seeded
 * sequences of edits on a small practice, results after every one, reports after some. `FUZZ=20` runs twenty times as many.
 */
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildPractice } from "../../src/cli/build-practice.js";
import { EDITIONS } from "../../src/cli/editions.js";
import { openPractice } from "../../src/cli/practice.js";
import { digests } from "../faults/running.js";
import { type Chance, chance } from "../generator/random.js";
import { FUZZ_RUNS } from "../hostile/fuzz-runs.js";

const EXAMPLE = "examples/skarn-point";
const home = mkdtempSync(join(tmpdir(), "edits-"));
const fresh = join(home, "fresh");
const SEQUENCES = 200 * FUZZ_RUNS;
/** Reports are drawn after every so many sequences: they take a hundred times as long as results. */
const REPORTS_EVERY = 25;

beforeAll(() => {
  cpSync(EXAMPLE, fresh, {
    recursive: true,
    filter: (path) => !/\.waymark|results\.yaml$|\.(html|pdf)$|clients\/c-0(17|23|31)/.test(path),
  });
  const client = join(fresh, "clients/c-045");
  cpSync(join(fresh, "clients/c-044"), client, { recursive: true });
  for (const file of readdirSync(client, { recursive: true, encoding: "utf8" }).filter((name) =>
    name.endsWith(".yaml"),
  ))
    edit(join(client, file), (text) => text.replaceAll('"c-044"', '"c-045"'));
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

const edit = (path: string, change: (text: string) => string) =>
  writeFileSync(path, change(readFileSync(path, "utf8")));
const pick = <T>(c: Chance, list: readonly T[]): T => list[Math.floor(c.between(0, list.length - 1e-9))] as T;
const visitsOf = (root: string) =>
  openPractice(root).clients.flatMap((client) => client.visits.map((visit) => join(root, visit.path)));

/** Edits that keep the files in order, and some that do not: an error writes nothing for its client. */
const EDITS: readonly ((root: string, c: Chance) => void)[] = [
  // A number in a session: replaced, so that editing back happens too.
  (root, c) =>
    edit(join(pick(c, visitsOf(root)), "session.yaml"), (text) =>
      text.replace(/right_kg: \[\d+/, `right_kg: [${pick(c, [38, 39, 40, 41])}`),
    ),
  (root, c) =>
    edit(join(pick(c, visitsOf(root)), "session.yaml"), (text) =>
      text.replace(/systolic_mmhg: \d+/, `systolic_mmhg: ${pick(c, [118, 131, 146, 14])}`),
    ),
  (root, c) =>
    edit(join(pick(c, visitsOf(root)), "session.yaml"), (text) => `${text}# read again ${pick(c, [1, 2])}\n`),
  // The client and the laboratory: every visit of it, or of all.
  (root, c) =>
    edit(join(root, "clients", pick(c, ["c-044", "c-045"]), "client.yaml"), (text) =>
      text.replace(/birth_date: .*/, `birth_date: ${pick(c, ["1971-03-04", "1972-03-04"])}`),
    ),
  (root, c) =>
    edit(join(root, "lab.yaml"), (text) => text.replace(/^name: .*$/m, `name: Bench ${pick(c, ["A", "B"])}`)),
  (root, c) => edit(join(root, "lab.yaml"), (text) => `${text}# ${pick(c, ["a", "b"])}\n`),
  // Outputs spoilt, lost or older than they look.
  (root, c) => rmSync(join(pick(c, visitsOf(root)), "results.yaml"), { force: true }),
  (root, c) => appendFileSync(join(pick(c, visitsOf(root)), "results.yaml"), "# by hand\n"),
  (root) => rmSync(join(root, ".waymark"), { recursive: true, force: true }),
  (root, c) => {
    const file = join(pick(c, visitsOf(root)), "session.yaml");
    utimesSync(file, new Date("1990-01-01"), new Date("2090-01-01"));
  },
  // Visits that come and go.
  (root, c) => {
    const visit = pick(c, visitsOf(root));
    const to = join(visit, "..", "2026-09-14-retest");
    if (existsSync(to)) return;
    cpSync(visit, to, { recursive: true });
    edit(join(to, "session.yaml"), (text) =>
      text
        .replaceAll(basename(visit).slice(0, 10), "2026-09-14")
        .replace(/^label: .*$/m, "label: retest")
        .replace(/^purpose: .*$/m, "purpose: retest"),
    );
  },
  (root, c) => {
    const extra = visitsOf(root).filter((visit) => visit.endsWith("2026-09-14-retest"));
    if (extra.length > 0) rmSync(pick(c, extra), { recursive: true });
  },
];

async function build(root: string, useCache: boolean, reports: boolean) {
  const practice = openPractice(root);
  const chosen = new Set(practice.clients.flatMap((client) => client.visits.map((visit) => visit.path)));
  return buildPractice(practice, { chosen, editions: reports ? EDITIONS : [], pdf: false, useCache }, () => ({
    step: () => undefined,
    end: () => undefined,
  }));
}

/** Outputs of clients without errors: what stands in a client with an error is what the last good build wrote. */
const outputs = (root: string, without: ReadonlySet<string>, reports: boolean) =>
  Object.fromEntries(
    Object.entries(digests(root)).filter(
      ([path]) =>
        (path.endsWith("results.yaml") || (reports && path.endsWith(".html"))) &&
        !without.has(path.split("/")[1] ?? ""),
    ),
  );

describe("editing in any order", () => {
  it(`builds what a build from nothing builds, in ${SEQUENCES} sequences`, {
    timeout: 240_000 * FUZZ_RUNS,
  }, async () => {
    const root = join(home, "practice");
    const scratch = join(home, "scratch");
    let rebuilt = 0;
    let kept = 0;
    let faulty = 0;
    for (let seed = 1; seed <= SEQUENCES; seed++) {
      const c = chance(seed);
      // A sequence goes on from where the last one ended, now and then from the beginning.
      if (seed % 20 === 1) {
        rmSync(root, { recursive: true, force: true });
        cpSync(fresh, root, { recursive: true });
        await build(root, true, false);
      }
      const deeds = Array.from({ length: 1 + Math.floor(c.between(0, 3)) }, () =>
        Math.floor(c.between(0, EDITS.length - 1e-9)),
      );
      for (const deed of deeds) EDITS[deed]?.(root, c);
      const reports = seed % REPORTS_EVERY === 0;
      const { problems, built, fresh: unchanged } = await build(root, true, reports);
      rebuilt += built.length;
      kept += unchanged;

      rmSync(scratch, { recursive: true, force: true });
      cpSync(root, scratch, { recursive: true, filter: (path) => !/\.waymark|results\.yaml$|\.html$/.test(path) });
      const all = await build(scratch, false, reports);
      const bad = new Set(all.problems.filter((p) => p.severity === "error").map((p) => p.at.file.split("/")[1] ?? ""));
      if (bad.size > 0) faulty++;
      expect(
        new Set(problems.filter((p) => p.severity === "error").map((p) => p.at.file.split("/")[1])),
        `seed ${seed}`,
      ).toEqual(bad);
      expect(outputs(root, bad, reports), `seed ${seed}: ${deeds}`).toEqual(outputs(scratch, bad, reports));
    }
    // The sequences meant something: some visits were kept, some built again, some refused.
    expect(kept).toBeGreaterThan(SEQUENCES / 2);
    expect(rebuilt).toBeGreaterThan(SEQUENCES);
    expect(faulty).toBeGreaterThan(SEQUENCES / 50);
  });
});
