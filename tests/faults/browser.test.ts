/**
 * The browser that prints, killed under a running build, and a build killed under its browser. The practice is invented.
 * Skipped where no Chromium is to be had, or where the system does not tell whose child a process is (Linux does).
 */
import { appendFileSync, cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../src/report/browser.js";
import { EXAMPLE } from "../cli/practice-copy.js";
import { caseList } from "./case-list.js";
import { digests, type Ended, type Running, run, start } from "./running.js";

const cases = caseList("browser");
const home = mkdtempSync(join(tmpdir(), "browser-faults-"));
const fresh = join(home, "fresh");
const found = await findBrowser().catch(() => undefined);
const canRun = found !== undefined && existsSync("/proc/self/stat");
const BUILD = ["build", "--edition", "practitioner", "--edition", "client"];
const PDFS = 4;
let undisturbed: Record<string, string> = {};
let made = 0;

/** Programs of this build keep their profiles, and whatever else is temporary, in a folder of its own. */
interface Place {
  readonly root: string;
  readonly env: NodeJS.ProcessEnv;
  readonly temporary: string;
}
function place(): Place {
  const name = `practice-${++made}`;
  const [root, temporary] = [join(home, name), join(home, `${name}-tmp`)];
  cpSync(fresh, root, { recursive: true });
  mkdirSync(temporary);
  return { root, temporary, env: { TMPDIR: temporary, ...found?.environment, WAYMARK_BROWSER: found?.path } };
}

/** Living children of a process, by what the system says; the browser is a child of the program itself. */
function childrenOf(pid: number | undefined): number[] {
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .filter((name) => {
      try {
        const [state, parent] = readFileSync(`/proc/${name}/stat`, "latin1").split(") ")[1]?.split(" ") ?? [];
        return Number(parent) === pid && state !== "Z";
      } catch {
        return false; // ended meanwhile
      }
    })
    .map(Number);
}
const isThere = (pid: number) =>
  existsSync(`/proc/${pid}/stat`) && !/\) Z /.test(readFileSync(`/proc/${pid}/stat`, "latin1"));
const pdfsIn = (root: string) =>
  readdirSync(root, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".pdf"));
const profilesIn = ({ temporary }: Place) =>
  readdirSync(temporary).filter((name) => name.startsWith("waymark-browser-"));
const halfFiles = (root: string) =>
  readdirSync(root, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".part"));

/** Kills every browser that a build starts, as soon as one is there, for as long as `goOn` says. */
async function killBrowsers({ child, ended }: Running, goOn: (killed: number) => boolean): Promise<number> {
  const killed = new Set<number>();
  let over = false;
  void ended.then(() => {
    over = true;
  });
  while (!over && goOn(killed.size)) {
    for (const pid of childrenOf(child.pid).filter((one) => !killed.has(one))) {
      killed.add(pid);
      process.kill(pid, "SIGKILL");
    }
    await new Promise((go) => setTimeout(go, 2));
  }
  return killed.size;
}

/** What stands there is what an undisturbed build writes, or what stood there before. */
function expectWhole(root: string, before: Record<string, string>) {
  expectNamedWhole(root, before);
  expect(halfFiles(root)).toEqual([]);
}
/** The same, but a file that was being written may lie beside the whole ones under its passing name. */
function expectNamedWhole(root: string, before: Record<string, string>) {
  for (const [path, digest] of Object.entries(digests(root)))
    if (!path.endsWith(".part")) expect([undisturbed[path], before[path]], path).toContain(digest);
}
async function expectNextBuildRight(at: Place) {
  const { code, err } = await run(at.root, BUILD, at.env);
  expect(err).toBe("");
  expect(code).toBe(0);
  expect(digests(at.root)).toEqual(undisturbed);
  expect(halfFiles(at.root)).toEqual([]);
  expect(profilesIn(at)).toEqual([]);
  expect(existsSync(join(at.root, ".waymark/lock"))).toBe(false);
}
const told = (name: string, { code, err }: Pick<Ended, "code" | "err">, more: string) =>
  cases.add(name, `exit ${code}; ${err.trim().split("\n")[0] || "no message"}; ${more}`);

beforeAll(async () => {
  if (!canRun) return;
  cpSync(EXAMPLE, fresh, {
    recursive: true,
    filter: (path) => !/\.waymark|results\.yaml$|\.(html|pdf)$|clients\/c-0(17|23|31)/.test(path),
  });
  const at = place();
  expect(await run(at.root, BUILD, at.env)).toMatchObject({ code: 0, err: "" });
  expect(pdfsIn(at.root)).toHaveLength(PDFS);
  undisturbed = digests(at.root);
}, 60_000);
afterAll(() => {
  if (canRun) cases.write();
  rmSync(home, { recursive: true, force: true });
});

describe.skipIf(!canRun)("the browser is killed while it prints", () => {
  it.each([0, 1, 2, 3])(
    "once, when %i PDF files lie there: another takes its place, nothing is missing",
    async (after) => {
      const at = place();
      const program = start(at.root, BUILD, at.env);
      await program.until(() => pdfsIn(at.root).length >= after && childrenOf(program.child.pid).length > 0);
      const killed = await killBrowsers(program, (count) => count < 1);
      const end = await program.ended;
      if (after < 3) expect(killed).toBe(1);
      expect(end).toMatchObject({ code: 0, err: "" });
      expect(digests(at.root)).toEqual(undisturbed);
      expect(profilesIn(at)).toEqual([]);
      await expectNextBuildRight(at);
      told(`browser killed once, after ${after} PDF files`, end, `${killed} killed; started again, all files right`);
    },
  );

  it("every time: said in a line, old files whole, nothing left behind, next build right", async () => {
    const at = place();
    expect((await run(at.root, BUILD, at.env)).code).toBe(0);
    const before = digests(at.root);
    for (const client of readdirSync(join(at.root, "clients")))
      appendFileSync(join(at.root, "clients", client, "client.yaml"), "# looked at again\n");
    const after = digests(at.root);
    const program = start(at.root, BUILD, at.env);
    const killed = await killBrowsers(program, () => true);
    const end = await program.ended;
    expect(killed).toBeGreaterThanOrEqual(2);
    expect(end.code).toBe(1);
    expect(end.err).toMatch(/^waymark: the PDF could not be printed: .+\n$/);
    expect(end.err).not.toMatch(/fault of this program/);
    // The comment moves no result: every file is the one that stood there.
    expect(digests(at.root)).toEqual(after);
    expectWhole(at.root, after);
    expect(Object.keys(before)).toEqual(Object.keys(after));
    expect(profilesIn(at)).toEqual([]);
    const again = await run(at.root, BUILD, at.env);
    expect(again).toMatchObject({ code: 0, err: "" });
    expect(again.out).toMatch(/2 of 2 visits built/);
    expect(digests(at.root)).toEqual(after);
    told("browser killed every time it is started", end, `${killed} killed; old files whole, next build right`);
  });
});

describe.skipIf(!canRun)("the build is killed while its browser prints", () => {
  it("kill -9: the browser ends with it, whole files stay, the next build clears away and is right", async () => {
    const at = place();
    const program = start(at.root, BUILD, at.env);
    await program.until(() => pdfsIn(at.root).length >= 1);
    const browsers = childrenOf(program.child.pid);
    expect(browsers.length).toBeGreaterThan(0);
    program.child.kill("SIGKILL");
    const end = await program.ended;
    expect(end.signal).toBe("SIGKILL");
    expectNamedWhole(at.root, undisturbed);
    expect(profilesIn(at).length).toBeGreaterThan(0); // nobody was left to remove it
    for (let i = 0; i < 400 && browsers.some(isThere); i++) await new Promise((go) => setTimeout(go, 10));
    expect(browsers.filter(isThere)).toEqual([]);
    await expectNextBuildRight(at);
    told(
      "kill -9 of the build while it prints",
      { code: 137, err: end.err },
      "browser gone, profile cleared by the next build",
    );
  });

  it("Ctrl-C: the client in work is printed, nothing is left behind", async () => {
    const at = place();
    const program = start(at.root, BUILD, at.env);
    await program.until(() => pdfsIn(at.root).length >= 1);
    program.child.kill("SIGINT");
    const end = await program.ended;
    expect(end.code).toBe(130);
    expectWhole(at.root, undisturbed);
    expect(profilesIn(at)).toEqual([]);
    await expectNextBuildRight(at);
    told("Ctrl-C while the browser prints", end, "profile removed, next build right");
  });
});
