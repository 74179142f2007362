/** Shares of a practice: disjoint, complete, the same everywhere; copied together they are what one machine writes. */
import { spawn } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { inShard, readShard } from "../../src/cli/shard.js";
import { digests, type Ended, run, start } from "../faults/running.js";
import fc from "../tools/properties.js";
import { EXAMPLE } from "./practice-copy.js";

const home = mkdtempSync(join(tmpdir(), "shards-"));
const fresh = join(home, "fresh");
const CLIENTS = Array.from({ length: 6 }, (_, i) => `c-${String(i + 1).padStart(3, "0")}`);
const BUILD = ["build", "--no-pdf"];
const SHARES = [1, 2, 3].map((number) => ({ number, of: 3 }));
let made = 0;
/** A copy of the practice, as another machine would have it. */
function copy(from = fresh): string {
  const root = join(home, `practice-${++made}`);
  cpSync(from, root, { recursive: true });
  return root;
}
const share = (root: string, number: number, of = 3): Promise<Ended> =>
  run(root, [...BUILD, "--shard", `${number}/${of}`]);
let whole: Record<string, string>;

beforeAll(async () => {
  for (const part of ["lab.yaml", "retests"]) cpSync(join(EXAMPLE, part), join(fresh, part), { recursive: true });
  for (const id of CLIENTS) {
    const client = join(fresh, "clients", id);
    cpSync(join(EXAMPLE, "clients/c-044"), client, {
      recursive: true,
      filter: (path) => !/(results\.yaml|\.html|\.pdf)$/.test(path),
    });
    for (const name of readdirSync(client, { recursive: true, encoding: "utf8" }).filter((path) =>
      /\.yaml$/.test(path),
    ))
      writeFileSync(join(client, name), readFileSync(join(client, name), "utf8").replaceAll('"c-044"', `"${id}"`));
  }
  const root = copy();
  expect(await run(root, BUILD)).toMatchObject({ code: 0, err: "" });
  whole = digests(root);
  expect(Object.keys(whole).filter((path) => path.endsWith("index.html"))).toHaveLength(CLIENTS.length + 1);
}, 120_000);
afterAll(() => rmSync(home, { recursive: true, force: true }));

describe("a share", () => {
  it("deals every client to exactly one of them, whatever its name and however many there are", () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), fc.integer({ min: 1, max: 40 }), (id, of) => {
        const holders = Array.from({ length: of }, (_, i) => i + 1).filter((number) => inShard(id, { number, of }));
        expect(holders).toHaveLength(1);
      }),
    );
  });

  it("is the same on every machine and for ever: dealt out by digest, worked by hand", () => {
    // printf c-001 | sha256sum begins 45b70746, in decimals 1 169 622 854, which leaves 2 when divided by 3: the third share.
    const dealt = SHARES.map((one) => CLIENTS.filter((id) => inShard(id, one)));
    expect(dealt).toEqual([["c-005"], ["c-002", "c-003"], ["c-001", "c-004", "c-006"]]);
    // One name, however a disk writes its letters.
    expect(inShard("cafe\u0301", { number: 1, of: 2 })).toBe(inShard("caf\u00e9", { number: 1, of: 2 }));
  });

  it("gives every machine its part: of 1 000 clients none of ten gets fewer than 70 or more than 130", () => {
    const ids = Array.from({ length: 1000 }, (_, i) => `c-${String(i + 1).padStart(4, "0")}`);
    for (let number = 1; number <= 10; number++) {
      const many = ids.filter((id) => inShard(id, { number, of: 10 })).length;
      expect(many).toBeGreaterThanOrEqual(70);
      expect(many).toBeLessThanOrEqual(130);
    }
  });

  it.each(["0/3", "4/3", "1/0", "1", "1/3/5", "-1/3", "1.5/3", "01/3", "one/three", "1/10000", ""])(
    "refuses %j",
    (text) => {
      expect(() => readShard(text)).toThrow(/--shard wants a share like 2\/5/);
    },
  );
});

describe("three machines", () => {
  it.each(["in order", "in another order"])(
    "build a share each; copied together %s they are one build, and only pages are left to write",
    async (order) => {
      const machines = SHARES.map(() => copy());
      for (const [i, { number }] of SHARES.entries())
        expect(await share(machines[i] as string, number)).toMatchObject({ code: 0, err: "" });
      const parts = machines.map((root) => digests(root));
      const written = parts.map((part) => Object.keys(part).filter((path) => /results\.yaml$|\.html$/.test(path)));
      // Disjoint, complete, and no pages of the practice among them.
      expect(written.flat().sort()).toEqual([...new Set(written.flat())].sort());
      expect(written.flat().sort()).toEqual(
        Object.keys(whole).filter((path) => /results\.yaml$|report.*\.html$/.test(path)),
      );
      const merged = copy();
      for (const root of order === "in order" ? machines : machines.reverse())
        cpSync(root, merged, { recursive: true });
      await expectOnlyPages(merged);
    },
  );

  async function expectOnlyPages(merged: string) {
    const built = Object.keys(whole).filter((path) => !path.endsWith("index.html"));
    const times = built.map((path) => statSync(join(merged, path)).mtimeMs);
    const end = await run(merged, BUILD);
    expect(end).toMatchObject({ code: 0, err: "" });
    expect(end.out).toMatch(/^index\.html and 6 more pages written\n0 of 12 visits built, 12 unchanged\.$/m);
    expect(built.map((path) => statSync(join(merged, path)).mtimeMs)).toEqual(times);
    expect(digests(merged)).toEqual(whole);
    expect((await run(merged, BUILD)).out).toBe("0 of 12 visits built, 12 unchanged.\n");
  }

  it("lose nothing where copying gives every file a new time; but a file that is not what was built is built again", async () => {
    const root = copy();
    for (const { number } of SHARES) await share(root, number);
    for (const path of Object.keys(digests(root))) utimesSync(join(root, path), new Date(), new Date("2031-01-01"));
    await expectOnlyPages(root);
    const results = Object.keys(whole).filter((path) => path.endsWith("results.yaml"))[3] as string;
    const text = readFileSync(join(root, results), "utf8");
    writeFileSync(
      join(root, results),
      text.replace(/\d/, (digit) => String((Number(digit) + 1) % 10)),
    );
    expect((await run(root, BUILD)).out).toMatch(/1 of 12 visits built, 11 unchanged/);
    expect(digests(root)).toEqual(whole);
  });

  it("share one folder at the same time", async () => {
    const root = copy();
    const ends = await Promise.all(SHARES.map(({ number }) => share(root, number)));
    for (const end of ends) expect(end).toMatchObject({ code: 0, err: "" });
    await expectOnlyPages(root);
  });
});

describe("what must not run beside a share", () => {
  const inUse = async (root: string, words: readonly string[], other: readonly string[]) => {
    const first = start(root, words);
    await first.until(() => existsSync(join(root, ".waymark")) && readdirSync(join(root, ".waymark")).some(isLock));
    const second = await run(root, other);
    expect(await first.ended).toMatchObject({ code: 0, err: "" });
    return second;
  };
  const isLock = (name: string) => /^lock(-|$)/.test(name) && !name.includes(".");
  it.each([
    ["the same share", ["build", "--no-pdf", "--shard", "1/3"]],
    ["a share of another division", ["build", "--no-pdf", "--shard", "1/2"]],
    ["a whole build", BUILD],
  ])("%s is refused and harms nothing", async (_, other) => {
    const root = copy();
    const end = await inUse(root, ["build", "--no-pdf", "--shard", "1/3"], other);
    expect(end.code).toBe(1);
    expect(end.err).toMatch(/\.waymark\/lock-1-of-3: another build is running here \(process \d+\)/);
    expect(readdirSync(join(root, ".waymark")).filter((name) => name.startsWith("lock"))).toEqual([]);
    expect(await run(root, BUILD)).toMatchObject({ code: 0, err: "" });
    expect(digests(root)).toEqual(whole);
  });

  it("a share is refused beside a whole build", async () => {
    const end = await inUse(copy(), BUILD, ["build", "--no-pdf", "--shard", "1/3"]);
    expect(end.code).toBe(1);
    expect(end.err).toMatch(/\.waymark\/lock: another build is running here/);
  });

  it("a lock of a killed share is taken over, one of another machine is left to it", async () => {
    const root = copy();
    mkdirSync(join(root, ".waymark"));
    const dead = spawn("true");
    await new Promise((done) => dead.once("exit", done));
    writeFileSync(join(root, ".waymark/lock-2-of-3"), String(dead.pid));
    expect((await share(root, 1)).code).toBe(0);
    expect((await run(root, [...BUILD, "clients/c-001"])).code).toBe(0);
    writeFileSync(join(root, ".waymark/lock-2-of-3"), "17 another-machine");
    expect((await share(root, 1)).code).toBe(0);
    const end = await run(root, BUILD);
    expect(end.code).toBe(1);
    expect(end.err).toMatch(/\(process 17 on another-machine\)\. Wait for it to end\. If there is none, delete/);
  });
});
