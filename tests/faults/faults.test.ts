/**
 * What can go wrong around a build, made to happen to the real program: disk, links, processes, signals, clock. Each time
 * the old outputs are whole, the message is one a practitioner can act on, and the next build gives what an undisturbed
 * one gives. The practice is invented.
 */
import { spawnSync } from "node:child_process";
import {
  appendFileSync,
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { caseList } from "./case-list.js";
import { digests, type Ended, PROGRAM, resultsIn, run, start } from "./running.js";

const cases = caseList("faults");
const nobody = userWithoutRights();
const home = mkdtempSync(join(tmpdir(), "faults-"));
const fresh = join(home, "fresh");
let undisturbed: Record<string, string>;
let made = 0;

/** The example's shortest client, copied: enough visits for two worker threads. */
const CLIENTS = 20;
const VISITS = 2 * CLIENTS;
const EXAMPLE = "examples/skarn-point";
function makeFresh() {
  for (const part of ["lab.yaml", "retests", "norms", "profiles"])
    if (existsSync(join(EXAMPLE, part))) cpSync(join(EXAMPLE, part), join(fresh, part), { recursive: true });
  for (let i = 1; i <= CLIENTS; i++) {
    const id = `c-${String(i).padStart(5, "0")}`;
    const client = join(fresh, "clients", id);
    cpSync(join(EXAMPLE, "clients/c-044"), client, {
      recursive: true,
      filter: (path) => !/(results\.yaml|\.html|\.pdf)$/.test(path),
    });
    for (const path of digestsOf(client).filter((name) => name.endsWith(".yaml")))
      writeFileSync(join(client, path), readFileSync(join(client, path), "utf8").replaceAll('"c-044"', `"${id}"`));
  }
}
const digestsOf = (folder: string) => Object.keys(digests(folder));
const BUILD = ["build", "--no-report"];
const visits = (root: string) =>
  readdirSync(join(root, "clients"))
    .sort()
    .flatMap((c) =>
      readdirSync(join(root, "clients", c))
        .filter((name) => /^\d{4}-/.test(name))
        .sort()
        .map((v) => join(root, "clients", c, v)),
    );
/** A copy of the practice; `clients` limits it where two are enough. */
function copy(clients = CLIENTS): string {
  const root = join(home, `practice-${++made}`);
  cpSync(fresh, root, {
    recursive: true,
    filter: (path) => !(Number(/clients\/c-(\d{5})/.exec(path)?.[1] ?? 0) > clients),
  });
  return root;
}
/** What an undisturbed build leaves of the clients that are there. */
const wanted = (root: string) =>
  Object.fromEntries(Object.entries(undisturbed).filter(([path]) => existsSync(join(root, path, ".."))));
/** Every results file is either absent or what an undisturbed build writes. */
function expectWhole(root: string) {
  const now = digests(root);
  for (const [path, digest] of Object.entries(now)) {
    if (path.endsWith("results.yaml")) expect(digest, path).toBe(undisturbed[path]);
  }
}
async function expectNextBuildRight(root: string) {
  const { code, err } = await run(root, BUILD);
  expect(err).toBe("");
  expect(code).toBe(0);
  expect(digests(root)).toEqual(wanted(root));
  expect(existsSync(join(root, ".waymark/lock"))).toBe(false);
}
const told = (name: string, { code, err }: Pick<Ended, "code" | "err">, more: string) =>
  cases.add(name, `exit ${code}; ${err.trim().split("\n")[0] || "no message"}; ${more}`);

beforeAll(async () => {
  makeFresh();
  const root = copy();
  expect((await run(root, BUILD)).code).toBe(0);
  undisturbed = digests(root);
}, 60_000);
afterAll(() => {
  cases.write();
  rmSync(home, { recursive: true, force: true });
});

/** A module loaded into every thread, whose workers do this before they take a task. */
const dying = (deed: string) => `import { isMainThread, parentPort } from "node:worker_threads";
import { openSync } from "node:fs";
if (!isMainThread) {
  const on = parentPort.on.bind(parentPort);
  parentPort.on = (name, listen) => on(name, name !== "message" ? listen : (task) => { ${deed} listen(task); });
}`;

describe("processes", () => {
  it("kill -9 in the middle: old files whole, next build goes on where it stopped", async () => {
    const root = copy();
    const { child, ended, until } = start(root, BUILD);
    await until(() => resultsIn(root).length >= 4);
    child.kill("SIGKILL");
    const end = await ended;
    expect(end.signal).toBe("SIGKILL");
    expectWhole(root);
    expect(resultsIn(root).length).toBeLessThan(VISITS);
    await expectNextBuildRight(root);
    told(
      "kill -9 in the middle of a build",
      { code: 137, err: end.err },
      "results whole, next build right, lock taken over",
    );
  });

  it("Ctrl-C: the clients in work are finished, the lock is given back, exit 130", async () => {
    const root = copy();
    const { child, ended, until } = start(root, BUILD);
    await until(() => resultsIn(root).length >= 2);
    child.kill("SIGINT");
    const end = await ended;
    expect(end.code).toBe(130);
    expect(end.err).toMatch(/Stopping after the clients in work/);
    expect(existsSync(join(root, ".waymark/lock"))).toBe(false);
    expectWhole(root);
    await expectNextBuildRight(root);
    told("Ctrl-C in the middle of a build", end, "lock given back, next build right");
  });

  it("two Ctrl-C: ends at once, the lock is given back", async () => {
    const root = copy();
    const { child, ended, until } = start(root, BUILD);
    await until(() => resultsIn(root).length >= 1);
    child.kill("SIGINT");
    setTimeout(() => child.kill("SIGINT"), 30);
    const end = await ended;
    expect(end.code).toBe(130);
    expect(existsSync(join(root, ".waymark/lock"))).toBe(false);
    await expectNextBuildRight(root);
    told("Ctrl-C twice", end, "next build right");
  });

  it("two builds at once: one builds, the other says who is building", async () => {
    const root = copy();
    const ends = await Promise.all([run(root, BUILD), run(root, BUILD), run(root, BUILD)]);
    expect(ends.filter((end) => end.code === 0 && /40 of 40 visits built/.test(end.out))).toHaveLength(1);
    for (const end of ends.filter((e) => e.code !== 0)) {
      expect(end.code).toBe(1);
      expect(end.err).toMatch(/another build is running here \(process \d+\)/);
    }
    await expectNextBuildRight(root);
    told("three builds started at once", ends.find((end) => end.code !== 0) ?? { code: 0, err: "" }, "one built all");
  });

  it("a worker thread that crashes is replaced, and its client is built by another", async () => {
    const root = copy();
    const flag = join(root, ".waymark", "crashed");
    mkdirSync(join(root, ".waymark"));
    const fault = join(home, "crash-once.mjs");
    // Loaded into every thread: the first worker that starts on a client dies under it, once.
    writeFileSync(fault, dying(`try { openSync(${JSON.stringify(flag)}, "wx"); process.exit(9); } catch {}`));
    const end = await run(root, BUILD, { NODE_OPTIONS: `--import=${fault}` });
    expect(existsSync(flag)).toBe(true);
    expect(end.err).toBe("");
    expect(end.code).toBe(0);
    expect(digests(root)).toEqual(wanted(root));
    told("a worker thread crashes once", end, "replaced, all visits built");
  });

  it("a client that kills every thread is a fault of the program, said in a line, and the rest is whole", async () => {
    const root = copy();
    const fault = join(home, "crash-always.mjs");
    writeFileSync(fault, dying(`if (task.client.id === "c-00002") process.exit(9);`));
    const end = await run(root, BUILD, { NODE_OPTIONS: `--import=${fault}` });
    expect(end.code).toBe(3);
    expect(end.err).toMatch(/a fault of this program, not of your files: .*worker thread ended/);
    expectWhole(root);
    await expectNextBuildRight(root);
    told("a client that crashes every worker thread", end, "others whole, next build right");
  });
});

describe("verify", () => {
  it("tells of clients in their order, however many threads compute, and the same as of each alone", async () => {
    const root = copy();
    await run(root, BUILD);
    const client = (i: number) => `clients/c-${String(i).padStart(5, "0")}`;
    const edited = [17, 3, 11].map(client);
    for (const path of resultsIn(root).filter((file) => edited.some((folder) => file.includes(folder))))
      writeFileSync(path, readFileSync(path, "utf8").replace(/^ {2}value: 1/m, "  value: 2"));
    const faulty = client(7);
    appendFileSync(join(root, faulty, "client.yaml"), "sexx: female\n");
    const whole = await run(root, ["verify"]);
    const told: string[] = [];
    for (const folder of [...edited, faulty].sort()) {
      const { out } = await run(root, ["verify", folder]);
      told.push(out.replace(/.* with what is computed now\.\n$/, ""));
    }
    expect(told.every((text) => text !== "")).toBe(true);
    expect(whole.code).toBe(1);
    const end = `${VISITS - 2 * (edited.length + 1)} of ${VISITS - 1} visits agree with what is computed now.\n`;
    expect(whole.out).toBe(told.join("") + end);
  }, 120_000);
});

describe("the disk", () => {
  const limited = (bytes: number) => `trap '' XFSZ; ulimit -f ${Math.ceil(bytes / 1024)}`;
  it("a file larger than the limit: said, old file whole, no half file", async () => {
    const root = copy(2);
    await run(root, BUILD);
    for (const visit of visits(root).slice(0, 3)) appendFileSync(join(visit, "session.yaml"), "# read again\n");
    const before = digests(root);
    const end = await run(root, BUILD, {}, limited(8_000));
    expect(end.code).toBe(1);
    expect(end.err).toMatch(/could not be written: would be larger than the limit/);
    expect(digests(root)).toEqual(before);
    told("writing refused by a size limit", end, "old results untouched");
  });

  const canMount =
    process.platform === "linux" &&
    process.getuid?.() === 0 &&
    spawnSync("mount", ["--version"]).status === 0 &&
    mounts();
  it.skipIf(!canMount)(
    "a full disk (needs root to mount a small one): said, old files whole, next build right",
    async () => {
      const root = join(home, "small");
      mkdirSync(root);
      expect(spawnSync("mount", ["-t", "tmpfs", "-o", "size=900k", "tmpfs", root]).status).toBe(0);
      try {
        cpSync(fresh, root, { recursive: true });
        const end = await run(root, BUILD);
        expect(end.code).toBe(1);
        expect(end.err).toMatch(/could not be written: the disk is full\. The old file, if any, is untouched\./);
        expectWhole(root);
        expect(spawnSync("mount", ["-o", "remount,size=40m", root]).status).toBe(0);
        await expectNextBuildRight(root);
        told("disk full in the middle of a build", end, "results whole, next build right");
        expect(spawnSync("mount", ["-o", "remount,ro", root]).status).toBe(0);
        appendTo(root);
        const readOnly = await run(root, [...BUILD, "--no-cache"]);
        expect(readOnly.code).toBe(1);
        expect(readOnly.err).toMatch(/read-only disk/);
        told("practice on a read-only disk", readOnly, "nothing written");
      } finally {
        spawnSync("umount", [root]);
      }
    },
  );
  /** Nothing can be appended on a read-only disk; a check reads it nevertheless. */
  function appendTo(root: string) {
    expect(() => appendFileSync(join(root, "lab.yaml"), "\n")).toThrow();
  }

  it.skipIf(nobody === undefined)(
    "a read-only folder (as somebody who may not write there): said, nothing written",
    async () => {
      const root = copy(2);
      chmodSync(home, 0o755);
      chmodSync(root, 0o555);
      const before = digests(root);
      const end = await run(root, BUILD, {}, "", nobody);
      chmodSync(root, 0o755);
      expect(end.code).toBe(1);
      expect(end.err).toMatch(/\.waymark\/lock: cannot be made: may not be read or written by you/);
      expect(digests(root)).toEqual(before);
      expect(existsSync(join(root, ".waymark"))).toBe(false);
      told("read-only practice folder", end, "nothing written");
      await run(root, BUILD);
      const visit = visits(root)[0] as string;
      appendFileSync(join(visit, "session.yaml"), "# read again\n");
      const built = digests(root);
      chmodSync(join(root, ".waymark"), 0o777);
      for (const name of readdirSync(join(root, ".waymark"))) chmodSync(join(root, ".waymark", name), 0o777);
      const inside = await run(root, BUILD, {}, "", nobody);
      expect(inside.code).toBe(1);
      expect(inside.err).toMatch(/results\.yaml: could not be written: may not be read or written by you/);
      expect(digests(root)).toEqual(built);
      told("read-only visit folder", inside, "old results untouched");
    },
  );

  it("a folder where results.yaml should be: that client is not built, the others are", async () => {
    const root = copy(2);
    mkdirSync(join(visits(root)[0] as string, "results.yaml"));
    const end = await run(root, BUILD);
    expect(end.code).toBe(1);
    expect(end.err).toMatch(/results\.yaml: (?:could not be written|is not a file)/);
    expect(end.err).not.toMatch(/fault of this program/);
    expect(resultsIn(root).length).toBe(2);
    rmSync(join(visits(root)[0] as string, "results.yaml"), { recursive: true });
    await expectNextBuildRight(root);
    told("a folder stands where results.yaml belongs", end, "other clients built, next build right");
  });

  it("files that vanish in the middle: said by name, other clients built, next build right", async () => {
    const root = copy();
    const last = visits(root).at(-1) as string;
    const { ended, until } = start(root, BUILD);
    await until(() => resultsIn(root).length >= 1);
    renameSync(last, `${last}-away`);
    const end = await ended;
    if (end.code === 1) expect(end.err).toMatch(/does not exist/);
    else expect(end.code).toBe(0); // the disk was quicker: that client had been read already
    expect(end.err).not.toMatch(/fault of this program/);
    for (const name of existsSync(last) ? readdirSync(last) : []) cpSync(join(last, name), join(`${last}-away`, name));
    rmSync(last, { recursive: true, force: true });
    renameSync(`${last}-away`, last);
    await expectNextBuildRight(root);
    told("a visit's folder vanishes in the middle of a build", end, "other clients built, next build right");
  });

  it.each([
    ["a session", "session.yaml", "right_kg: [40, 41, 40]", "right_kg: [40, 44, 40]"],
    ["a client's file", "../client.yaml", "birth_date: 1958-06-21", "birth_date: 1948-06-21"],
  ])(
    "%s edited while the build is running is built again by the next one, even when the edit was taken back",
    async (what, name, from, to) => {
      const root = copy();
      const file = join(visits(root).at(-1) as string, name);
      const text = readFileSync(file, "utf8");
      const edited = text.replace(from, to).concat("# edited\n");
      expect(edited).toContain(to);
      const { ended, until } = start(root, BUILD);
      await until(() => resultsIn(root).length >= 1);
      writeFileSync(file, edited);
      const end = await ended;
      expect(end).toMatchObject({ code: 0, err: "" });
      writeFileSync(file, text);
      await expectNextBuildRight(root);
      told(`${what} edited while a build runs, the edit then taken back`, end, "next build right");
    },
  );

  it("debris of killed builds is cleared away, that of a running one is not", async () => {
    const root = copy(2);
    const folder = visits(root)[0] as string;
    writeFileSync(join(folder, ".99999999-0123abcd.part"), "half");
    writeFileSync(join(folder, `.${process.pid}-0123abcd.part`), "half");
    const end = await run(root, BUILD);
    expect(existsSync(join(folder, ".99999999-0123abcd.part"))).toBe(false);
    expect(existsSync(join(folder, `.${process.pid}-0123abcd.part`))).toBe(true);
    told("half-written files of a killed build", end, "cleared away");
  });
});

describe("records and clocks", () => {
  it.each(["1970-01-01T00:00:01Z", "2099-12-31T23:59:59Z"])(
    "a machine whose clock says %s writes the same bytes",
    async (now) => {
      const root = copy(4);
      const clock = join(home, `clock-${now.slice(0, 4)}.mjs`);
      // Loaded into every thread: the clock of the language, and what the program would take for today.
      writeFileSync(
        clock,
        `const Real = Date, by = Real.parse(${JSON.stringify(now)}) - Real.now();
globalThis.Date = class extends Real {
  constructor(...given) { given.length === 0 ? super(Real.now() + by) : super(...given); }
  static now() { return Real.now() + by; }
};`,
      );
      const end = await run(root, BUILD, { NODE_OPTIONS: `--import=${clock}` });
      expect(end).toMatchObject({ code: 0, err: "" });
      expect(digests(root)).toEqual(wanted(root));
      expect((await run(root, BUILD)).out).toBe("0 of 8 visits built, 8 unchanged.\n");
      told(`the machine's clock says ${now.slice(0, 10)}`, end, "bytes as ever, found unchanged with a right clock");
    },
  );

  it("a clock that was wrong: files from 1970 and from 2099 are built and found unchanged", async () => {
    const root = copy(2);
    for (const [i, visit] of visits(root).entries()) {
      const when = new Date(i % 2 ? "1971-01-01" : "2099-01-01");
      for (const name of readdirSync(visit)) utimesSync(join(visit, name), when, when);
    }
    expect((await run(root, BUILD)).code).toBe(0);
    for (const visit of visits(root))
      utimesSync(join(visit, "session.yaml"), new Date("2099-06-01"), new Date("2099-06-01"));
    const end = await run(root, BUILD);
    expect(end.out).toBe("0 of 4 visits built, 4 unchanged.\n");
    // An edit that keeps time stamp and length is still an edit.
    const session = join(visits(root)[1] as string, "session.yaml");
    const text = readFileSync(session, "utf8");
    writeFileSync(session, text.replace("right_kg: [40, 41, 40]", "right_kg: [40, 43, 40]"));
    utimesSync(session, new Date("2099-06-01"), new Date("2099-06-01"));
    expect((await run(root, BUILD)).out).toMatch(/^clients\/c-00001/);
    told("time stamps from 1971 and 2099", end, "judged by content");
  });

  it.each([
    ["cut short", '{"clients/c-00001'],
    ["empty", ""],
    ["of another shape", '{"clients/c-00001/x": 7, "__proto__": {"key": "x"}}'],
    ["a list", "[1, 2]"],
    ["a list of outputs that are none", '{"clients/c-00001/2026-03-30-baseline": {"key": "x", "outputs": [null, 7]}}'],
    ["null", "null"],
  ])("a record of builds that is %s costs time, nothing else", async (name, text) => {
    const root = copy(2);
    await run(root, BUILD);
    writeFileSync(join(root, ".waymark/built/c-00001.json"), text);
    const end = await run(root, BUILD);
    expect(end.err).toBe("");
    expect(end.code).toBe(0);
    expect(digests(root)).toEqual(wanted(root));
    told(`record of builds ${name}`, end, "built anew");
  });

  it.each([
    ["deleted", (path: string) => rmSync(path)],
    ["emptied", (path: string) => writeFileSync(path, "")],
    ["edited by hand", (path: string) => appendFileSync(path, "# mine\n")],
    ["left with a merge conflict", (path: string) => appendFileSync(path, "<<<<<<< ours\n=======\n>>>>>>> theirs\n")],
  ])("results that were %s are written again", async (name, spoil) => {
    const root = copy(2);
    await run(root, BUILD);
    spoil(join(visits(root)[1] as string, "results.yaml"));
    await expectNextBuildRight(root);
    told(`results.yaml ${name}`, { code: 0, err: "" }, "written again, bytes as before");
  });

  it.each([
    ["empty", ""],
    ["a dead process", "999999999"],
    ["a word", "busy"],
    ["a negative number", "-1"],
  ])("a lock that holds %s is taken over", async (name, text) => {
    const root = copy(2);
    mkdirSync(join(root, ".waymark"));
    writeFileSync(join(root, ".waymark/lock"), text);
    await expectNextBuildRight(root);
    told(`lock file: ${name}`, { code: 0, err: "" }, "taken over");
  });
});

/** A user who may not write everywhere: the one who runs the tests, or for root one without rights who can run the program. */
function userWithoutRights(): { readonly uid?: number } | undefined {
  if (process.getuid?.() !== 0) return process.getuid === undefined ? undefined : {};
  const uid = 65_534;
  return spawnSync(process.execPath, [PROGRAM, "--version"], { uid }).status === 0 ? { uid } : undefined;
}

function mounts(): boolean {
  const place = mkdtempSync(join(tmpdir(), "mount-"));
  const ok = spawnSync("mount", ["-t", "tmpfs", "-o", "size=1m", "tmpfs", place]).status === 0;
  if (ok) spawnSync("umount", [place]);
  rmSync(place, { recursive: true, force: true });
  return ok;
}
