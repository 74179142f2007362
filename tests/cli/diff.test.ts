/** What moved since a commit, or against another copy: in a repository above the practice, on a path of any letters. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../src/report/browser.js";
import { run } from "../faults/running.js";
import { EXAMPLE } from "./practice-copy.js";

const browser = await findBrowser().catch(() => undefined);
const home = mkdtempSync(join(tmpdir(), "diff-"));
const root = join(home, "Labor für Höhe 測定 🧪", "practice");
const CLIENT = join(root, "clients/c-044");
const RETEST = join(CLIENT, "2026-06-08-retest");
const results = join(RETEST, "results.yaml");
const git = (...words: string[]) =>
  expect(
    spawnSync("git", ["-c", "user.name=n", "-c", "user.email=e@example.org", ...words], { cwd: home }).status,
  ).toBe(0);

beforeAll(async () => {
  mkdirSync(join(root, ".."));
  cpSync(EXAMPLE, root, {
    recursive: true,
    filter: (path) => !/\.waymark|results\.yaml$|\.(html|pdf)$|clients\/c-0(17|23|31)/.test(path),
  });
  expect(await run(root, browser === undefined ? ["build", "--no-pdf"] : ["build"])).toMatchObject({
    code: 0,
    err: "",
  });
  git("init", "-q");
  git("add", "-A");
  git("commit", "-qm", "first");
}, 60_000);
afterAll(() => rmSync(home, { recursive: true, force: true }));

describe("waymark diff", () => {
  it("says that nothing moved, then names what did and nothing else", async () => {
    expect(await run(root, ["diff"])).toMatchObject({ code: 0, err: "", out: "No finding moved.\n" });
    const other = join(home, "other");
    cpSync(root, other, { recursive: true });
    const text = readFileSync(results, "utf8");
    const moved = text.replace(/(\ngrip_strength:\n {2}value: )[\d.]+/, "$149.9");
    expect(moved).not.toBe(text);
    writeFileSync(results, moved);
    for (const words of [["diff"], ["diff", "--from", "HEAD"], ["diff", "--against", other]]) {
      const { code, out } = await run(root, words);
      expect(code).toBe(0);
      expect(out).toMatch(/^clients\/c-044\/2026-06-08-retest\n/);
      expect(out).toMatch(/grip_strength +41\.0 kg → 49\.9 kg/);
      expect(out).not.toContain("baseline");
    }
    const data = JSON.parse((await run(root, ["diff", "--json"])).out);
    expect(data).toHaveLength(1);
    expect(data[0]).toMatchObject({ state: "compared" });
    rmSync(results);
    expect((await run(root, ["diff"])).out).toMatch(/retest: removed/);
    writeFileSync(results, text);
    expect((await run(root, ["verify"])).out).toBe("2 of 2 visits agree with what is computed now.\n");
  });

  it("refuses what is no revision, and a practice that is in no repository", async () => {
    expect((await run(root, ["diff", "--from", "nowhere"])).code).toBe(2);
    expect((await run(root, ["diff", "--from=--output=x"])).code).toBe(2);
    const end = await run(root, ["diff"], { GIT_DIR: join(home, "none") });
    expect(end.code).toBe(1);
    expect(end.err).toMatch(/is not in a Git repository/);
  });
});

describe("waymark verify REPORT", () => {
  const EDITIONS = ["report", "report-client", "report-referral"];
  it("finds the results that any edition was made from, and says when they are no longer there", async () => {
    const files = readdirSync(RETEST).filter((name) => /\.(html|pdf)$/.test(name));
    expect(files).toEqual(expect.arrayContaining(EDITIONS.map((name) => `${name}.html`)));
    const text = readFileSync(results, "utf8");
    for (const file of files) {
      const yes = await run(root, ["verify", join(RETEST, file)]);
      expect(yes, file).toMatchObject({ code: 0, err: "" });
      expect(yes.out).toMatch(/^yes: printed from clients\/c-044\/2026-06-08-retest\/results\.yaml/);
    }
    writeFileSync(results, `${text}# looked at\n`);
    for (const file of files) {
      const no = await run(root, ["verify", join(RETEST, file)]);
      expect(no.code, file).toBe(1);
      expect(no.out).toMatch(/^no: no results in this practice have the digest/);
    }
    writeFileSync(results, text);
    writeFileSync(join(root, "letter.html"), "<p>A letter.</p>");
    const letter = await run(root, ["verify", "letter.html"]);
    expect(letter.code).toBe(1);
    expect(letter.err).toMatch(/carries no digest of results/);
  });
});
