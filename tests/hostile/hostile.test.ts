/**
 * Every hostile file is answered: a clear message, in time, in memory, with nothing left in the language's own objects.
 * Each case runs in this process; the last tests give some of them to the real program and look at what it wrote.
 */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { drawDiagnostics } from "../../src/cli/draw-diagnostic.js";
import { caseList } from "../faults/case-list.js";
import { digests, run } from "../faults/running.js";
import { readTree, validateTree } from "../validate/practice-tree.js";
import { HOSTILE, type Hostile } from "./cases.js";

const VISIT = "clients/c-017/2026-03-02-baseline";
const FILES: Readonly<Record<Hostile["file"], string>> = {
  session: `${VISIT}/session.yaml`,
  lab: "lab.yaml",
  client: "clients/c-017/client.yaml",
  csv: `${VISIT}/rest.csv`,
};
const base = readTree("tests/golden/bad-input/_base");
const cases = caseList("hostile");
const home = mkdtempSync(join(tmpdir(), "hostile-"));
afterAll(() => {
  cases.write();
  rmSync(home, { recursive: true, force: true });
});

const CPU_LIMIT_MS = 2000;
const MEMORY_LIMIT = 500_000_000;

const contentOf = ({ file, make }: Hostile): Uint8Array => {
  const made = make(new TextDecoder().decode(base.get(FILES[file])));
  return typeof made === "string" ? new TextEncoder().encode(made) : made;
};

describe("hostile files", () => {
  it("are at least two hundred, each with a name of its own", () => {
    expect(HOSTILE.length).toBeGreaterThanOrEqual(200);
    expect(new Set(HOSTILE.map(({ name, file }) => `${file} ${name}`)).size).toBe(HOSTILE.length);
  });

  it.each(HOSTILE.map((one) => [`${one.file}, ${one.name}`, one] as const))("%s", async (name, one) => {
    const bytes = contentOf(one);
    expect(Buffer.from(bytes).equals(base.get(FILES[one.file]) ?? new Uint8Array()), "the case changes nothing").toBe(
      false,
    );
    const tree = new Map(base).set(FILES[one.file], bytes);
    const before = process.memoryUsage();
    const cpu = process.cpuUsage();
    const { diagnostics } = await validateTree(tree);
    const drawn = drawDiagnostics(diagnostics, (file) => {
      const found = tree.get(file);
      return found && found.length < 1e6 ? new TextDecoder().decode(found) : undefined;
    });
    const used = process.cpuUsage(cpu);
    const after = process.memoryUsage();
    expect((used.user + used.system) / 1000).toBeLessThan(CPU_LIMIT_MS);
    expect(after.heapUsed + after.external - before.heapUsed - before.external).toBeLessThan(MEMORY_LIMIT);
    const errors = diagnostics.filter((d) => d.severity === "error");
    if (one.outcome === "error") expect(errors.length).toBeGreaterThan(0);
    else expect(errors).toEqual([]);
    for (const d of diagnostics) {
      for (const words of [d.found, d.expected, d.why]) expect(words).toMatch(/\S/);
      expect(`${d.found} ${d.expected} ${d.why} ${d.fix ?? ""}`).not.toMatch(/\bundefined\b|\[object/);
      // What is quoted from a hostile file is short and holds no character that acts on a terminal.
      expect(d.found.length).toBeLessThan(400);
    }
    // biome-ignore lint/suspicious/noControlCharactersInRegex: that none is printed is what is asked
    expect(drawn).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    const first = diagnostics[0];
    cases.add(name, first ? `${first.severity} ${first.code}: found ${first.found}` : "accepted");
  });
});

describe("hostile files given to the program", () => {
  const named = (name: string) => HOSTILE.find((one) => one.name === name) as Hostile;
  const some = [
    "alias bomb",
    "a scalar of 100 MB",
    "100 000 opening brackets",
    "the key __proto__",
    "UTF-16, little end first",
    "body mass: 1e309",
    "date of the visit: a date that does not exist",
    "series named ../secret.csv",
    "three thousand faults",
    "ten million lines",
    "ten million columns",
    "a quotation mark that is never closed",
    "laboratory: a table outside of the practice",
  ];
  it.each(some)("%s: exit 1, nothing written", async (name) => {
    const one = named(name);
    const root = join(home, `program-${some.indexOf(name)}`);
    cpSync("tests/golden/bad-input/_base", root, { recursive: true });
    writeFileSync(join(root, FILES[one.file]), contentOf(one));
    const before = digests(root);
    const { code, err } = await run(root, ["build", "--no-report"], {}, "ulimit -v 4000000; ulimit -t 10");
    expect(err).not.toMatch(/fault of this program/);
    expect(err).toMatch(/Why|\. [A-Z]/);
    expect(code).toBe(1);
    expect(digests(root)).toEqual(before);
    cases.add(`program: ${name}`, `exit ${code}; ${err.split("\n")[0]}`);
  });

  it.each([
    ["a session that is a link out of the practice", "session.yaml"],
    ["a series that is a link out of the practice", "rest.csv"],
  ])("%s: not followed, nothing of it printed", async (name, file) => {
    const root = join(home, `link-${file}`);
    cpSync("tests/golden/bad-input/_base", root, { recursive: true });
    writeFileSync(join(home, "outside"), "secret: 1\n");
    rmSync(join(root, VISIT, file));
    symlinkSync(join(home, "outside"), join(root, VISIT, file));
    const { code, err } = await run(root, ["build", "--no-report"]);
    expect(code).toBe(1);
    expect(err).toMatch(/leads out of the practice folder/);
    expect(err).not.toContain("secret");
    cases.add(`program: ${name}`, `exit ${code}; ${err.split("\n")[0]}`);
  });

  it.each([
    [
      "a link in a circle",
      (root: string) => symlinkSync("session.yaml", join(root, VISIT, "loop.csv").replace("loop.csv", "x.csv")),
    ],
    ["a folder linked into itself", (root: string) => symlinkSync(root, join(root, "clients", "again"))],
  ])("%s: ends", async (name, spoil) => {
    const root = join(home, `circle-${name.length}`);
    cpSync("tests/golden/bad-input/_base", root, { recursive: true });
    spoil(root);
    const { code, err } = await run(root, ["check"], {}, "ulimit -t 10");
    expect([0, 1]).toContain(code);
    expect(err).not.toMatch(/fault of this program/);
    cases.add(`program: ${name}`, `exit ${code}; ${err.split("\n")[0]}`);
  });

  it("HTML, SVG and templates in a remark arrive in the report as text", async () => {
    const root = join(home, "markup");
    cpSync("examples/skarn-point", root, {
      recursive: true,
      filter: (path) => !/\.waymark|results\.yaml$|\.(html|pdf)$|clients\/c-0(17|23|31)/.test(path),
    });
    const visit = readdirSync(join(root, "clients/c-044")).find((one) => one.endsWith("retest")) as string;
    const path = join(root, "clients/c-044", visit, "session.yaml");
    const hostile = `<script>alert(1)</script><img src=x onerror=alert(2)><svg onload=alert(3)>{{constructor}}</style>`;
    const text = readFileSync(path, "utf8");
    const edited = /^remarks:$/m.test(text)
      ? text.replace(/^remarks:$/m, `remarks:\n  - "${hostile}"`)
      : `${text}remarks: ["${hostile}"]\n`;
    writeFileSync(path, edited);
    const { code, err } = await run(root, ["build", "--no-pdf"]);
    expect(err).toBe("");
    expect(code).toBe(0);
    const html = readFileSync(join(root, "clients/c-044", visit, "report.html"), "utf8");
    expect(html.length).toBeGreaterThan(10_000);
    expect(html).not.toMatch(/<script|<img[^>]*onerror|<svg[^>]*onload/i);
    cases.add("program: HTML, SVG and a template in a remark", "no markup of it in the report");
  });
});
