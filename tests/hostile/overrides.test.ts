/**
 * Hostile partials, words and style in a practice: each is answered with its file, the line where there is one, exit 1,
 * in time and in memory, and nothing is written. Those that could only act while a page is filled go to the real program.
 */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { Unreadable } from "../../src/cli/files.js";
import { openPractice } from "../../src/cli/practice.js";
import { openPress } from "../../src/cli/press.js";
import type { Reference } from "../../src/pipeline-parts.js";
import { EXAMPLE } from "../cli/practice-copy.js";
import { caseList } from "../faults/case-list.js";
import { digests, run } from "../faults/running.js";

const CPU_LIMIT_MS = 2000;
const MEMORY_LIMIT = 500_000_000;
const cases = caseList("overrides");
const home = mkdtempSync(join(tmpdir(), "hostile-overrides-"));
const base = join(home, "base");
let made = 0;

beforeAll(() =>
  cpSync(EXAMPLE, base, {
    recursive: true,
    filter: (path) => !/\.waymark|results\.yaml$|\.(html|pdf)$|clients\/c-0(17|23|31)|retest$/.test(path),
  }),
);
afterAll(() => {
  cases.write();
  rmSync(home, { recursive: true, force: true });
});

type Files = Readonly<Record<string, string | ((path: string) => void)>>;
interface Case {
  readonly name: string;
  /** By path under report/: the text, or what puts it there. */
  readonly files: Files;
  /** Where the message points: "partials/note.hbs:2". */
  readonly at: string;
  readonly says: RegExp;
}

function practiceWith(files: Files): string {
  const root = join(home, `practice-${++made}`);
  cpSync(base, root, { recursive: true });
  for (const [name, put] of Object.entries(files)) {
    const path = join(root, "report", name);
    mkdirSync(dirname(path), { recursive: true });
    if (typeof put === "string") writeFileSync(path, put);
    else put(path);
  }
  return root;
}

const note = (text: string, at: string, says: RegExp, name: string): Case => ({
  name: `partial: ${name}`,
  files: { "partials/note.hbs": text },
  at: `partials/note.hbs${at}`,
  says,
});
const theme = (text: string, at: string, says: RegExp, name: string): Case => ({
  name: `style: ${name}`,
  files: { "theme.css": text },
  at: `theme.css${at}`,
  says,
});
const words = (text: string, at: string, says: RegExp, name: string): Case => ({
  name: `words: ${name}`,
  files: { "words/en.yaml": text },
  at: `words/en.yaml${at}`,
  says,
});
const linkTo = (target: string) => (path: string) => symlinkSync(target, path);

const BEFORE: readonly Case[] = [
  note("<p>\n{{> note note=note}}</p>", ":2", /leads back to where it stands: note → note/, "calls itself"),
  note("{{#if note.text}}\n{{> note note=note}}{{/if}}", ":2", /leads back/, "calls itself under a condition"),
  {
    name: "partial: two that call each other",
    files: {
      "partials/note.hbs": "<p>\n\n{{> missing title=note.text missing=note}}</p>",
      "partials/missing.hbs": "{{> note note=missing}}",
    },
    at: "partials/missing.hbs:1",
    says: /missing → note → missing/,
  },
  {
    name: "partial: a circle through one of ours",
    files: { "partials/note.hbs": "<p>\n{{> section section=note words=note}}</p>" },
    at: "partials/note.hbs:2",
    says: /note → section → note/,
  },
  note("<p>\n{{constructor}}</p>", ":2", /leads into the program/, "the constructor of what it is given"),
  note("{{note.constructor.constructor}}", ":1", /leads into the program/, "the constructor of a constructor"),
  note("{{note.__proto__}}", ":1", /leads into the program/, "a prototype"),
  note("{{note.[__proto__].polluted}}", ":1", /leads into the program/, "a prototype in brackets"),
  note("{{#each\n note.constructor}}{{/each}}", ":1", /leads into the program/, "each of a constructor"),
  note("{{lookup note 'constructor'}}", ":1", /calls a helper/, "lookup"),
  note("{{#if (lookup note 'constructor')}}x{{/if}}", ":1", /computed/, "lookup in a condition"),
  note("{{#with note}}{{text}}{{/with}}", ":1", /#with}} is no helper/, "with"),
  note("{{log note.text}}", ":1", /calls a helper/, "log"),
  note("{{helperMissing}}{{blockHelperMissing a}}", ":1", /calls a helper/, "hooks of the template engine"),
  note("{{#blockHelperMissing note}}{{/blockHelperMissing}}", ":1", /is no helper/, "a hook as a block"),
  note("{{text x=1}}", ":1", /calls a helper/, "a helper by a named value"),
  note("{{> (lookup note 'text')}}", ":1", /computed/, "a partial chosen by a value"),
  note("{{> head head=(lookup note 'text')}}", ":1", /computed/, "a computed value for a partial"),
  note("{{> ../other}}", ":1", /there is no partial \.\.\/other/, "../ as a partial's name"),
  note("{{> [../../client.yaml]}}", ":1", /there is no partial/, "a path in brackets as a partial's name"),
  note("{{> page}}", ":1", /there is no partial page/, "the page in the page"),
  note("{{#> head}}x{{/head}}", ":1", /places text/, "a partial as a block"),
  note("{{* decorator}}", ":1", /places text/, "a decorator"),
  note("{{#*inline 'note'}}{{> note}}{{/inline}}", ":1", /places text/, "a partial of its own that calls it"),
  note(
    `<p>\n${"{{#if note.text}}".repeat(31)}${"{{/if}}".repeat(31)}</p>`,
    ":2",
    /more than 30 deep/,
    "31 blocks deep",
  ),
  note(`${"{{#if a}}".repeat(450)}${"{{/if}}".repeat(450)}`, ":1", /more than 30 deep/, "450 blocks deep"),
  note(`{{#if a}}${"{{else if a}}".repeat(900)}{{/if}}`, ":1", /more than 30 deep/, "900 times else if"),
  note("{{#if a}}\n".repeat(900), ":901", /no template/, "900 blocks that are never closed"),
  note("{{#if a}}\n".repeat(9000), ":1001", /more than 1000 values/, "9 000 blocks that are never closed"),
  note("{{note.text}}".repeat(1001), ":1", /more than 1000 values/, "1 001 values"),
  note(`{{${"a.".repeat(45_000)}a}}\n{{b c}}`, ":2", /helper/, "a name of 45 000 parts"),
  note("x".repeat(100_001), "", /is 100 kB; the limit is 100 kB/, "100 kB"),
  note("x".repeat(60_000_000), "", /is 60 MB; the limit is 100 kB/, "60 MB"),
  note(`${"<".repeat(99_000)}<script>`, ":1", /script/, "99 000 angles"),
  note(`<${" ".repeat(99_000)}\n<script>`, ":2", /script/, "an angle and 99 000 spaces"),
  note(`${"<a ".repeat(33_000)}\nonclick=x`, ":2", /run code/, "33 000 tags that are never closed"),
  note(`${"=".repeat(99_000)}\n<p onclick=x>`, ":2", /run code/, "99 000 equals signs"),
  note("<svg/onload=alert(1)>", ":1", /run code/, "a handler after a slash"),
  note('<p title=">"\nonclick="x()">', ":2", /run code/, "a handler behind an angle in quotation marks"),
  note("<p onclick\n = 'x'>", ":1", /run code/, "a handler with its sign on the next line"),
  note("<a/href=//example.org>x</a>", ":1", /followed/, "an address after a slash"),
  note('<a href="&#104;ttps://example.org">x</a>', ":1", /followed/, "an address in character references"),
  note('<p style="background:&#117;rl(//example.org)">', ":1", /& has no place/, "style in character references"),
  note("<p style=background:url(//example.org)>", ":1", /fetched/, "style without quotation marks"),
  { name: "partial: its name is .hbs alone", files: { "partials/.hbs": "x" }, at: "partials/.hbs", says: /no partial/ },
  {
    name: "partial: its name is that of an object's own part",
    files: { "partials/constructor.hbs": "x" },
    at: "partials/constructor.hbs",
    says: /there is no partial constructor/,
  },
  {
    name: "partial: 61 files",
    files: Object.fromEntries(Array.from({ length: 61 }, (_, i) => [`partials/p${i}.hbs`, "x"])),
    at: "partials",
    says: /holds 61 files/,
  },
  {
    name: "partial: a link out of the practice",
    files: { "partials/note.hbs": linkTo("/etc/hostname") },
    at: "partials/note.hbs",
    says: /leads out of the practice folder/,
  },
  {
    name: "partial: a link to itself",
    files: { "partials/note.hbs": linkTo("note.hbs") },
    at: "partials/note.hbs",
    says: /circle/,
  },
  {
    name: "partial: a folder of that name behind a link",
    files: { "partials/note.hbs": linkTo("../../clients") },
    at: "partials/note.hbs",
    says: /is not a file/,
  },
  {
    name: "partial: the folder is a link out of the practice",
    files: { partials: linkTo(join(home, "outside")) },
    at: "partials/note.hbs",
    says: /leads out of the practice folder/,
  },
  theme("a{}\n@im\\port 'x.css';", ":2", /import/, "an import written with an escape"),
  theme("a{background:u\\rl(//example.org)}", ":1", /fetched/, "an address written with an escape"),
  theme("a{\nbackground:/**/url(/**///example.org)}", ":2", /fetched/, "an address between comments"),
  theme("a{}\n/* never closed", ":2", /comment is never closed/, "a comment without end"),
  theme(`a{}\n${"/* ".repeat(600_000)}`, ":2", /comment is never closed/, "600 000 beginnings of comments"),
  theme(`${"url(".repeat(450_000)}`, ":1", /fetched/, "450 000 addresses that are never closed"),
  theme(`a{}${" ".repeat(1_900_000)}\n}`, ":2", /closes nothing/, "two million spaces"),
  theme(`${"a{".repeat(900_000)}`, ":1", /never closed/, "900 000 braces"),
  theme("x".repeat(2_000_001), "", /the limit is 2 MB/, "2 MB"),
  { name: "style: a link out", files: { "theme.css": linkTo("/etc/hostname") }, at: "theme.css", says: /leads out/ },
  words(`client: ${"[".repeat(100_000)}`, ":1", /without end/, "100 000 brackets"),
  words(
    `client:\n${Array.from({ length: 500 }, (_, i) => `${" ".repeat(i + 1)}a:`).join("\n")}`,
    ":2",
    /no text/,
    "500 levels",
  ),
  words("a: &a [x, x]\nb: &b [*a, *a]\nclient: *b\n", ":1", /no text a/, "aliases"),
  words('client:\n  training: &t "x"\n  varies: *t\n', ":3", /no text|written/, "an alias for a text"),
  words("__proto__:\n  polluted: yes\n", ":1", /no text __proto__/, "__proto__"),
  words("client:\n  constructor: x\n", ":2", /no text client.constructor/, "constructor"),
  words('client:\n  varies: "{constructor}"\n', ":2", /nothing fills/, "a place that nothing fills"),
  words("x".repeat(300_001), "", /the limit is 300 kB/, "300 kB"),
  words("client: {a: 1}\n? [x]\n: y\n", ":1", /no text/, "a list as key"),
];

describe("hostile files of a practice's dress, found before a page is filled", () => {
  mkdirSync(join(home, "outside"));
  writeFileSync(join(home, "outside/note.hbs"), "secret");

  it.each(BEFORE.map((one) => [one.name, one] as const))("%s", (name, { files, at, says }) => {
    const root = practiceWith(files);
    const memory = process.memoryUsage();
    const cpu = process.cpuUsage();
    const press = openPress(openPractice(root), { tables: [], publishedErrors: [] } as unknown as Reference);
    let fault: unknown;
    try {
      press.prepare("en");
    } catch (error) {
      fault = error;
    }
    const used = process.cpuUsage(cpu);
    const now = process.memoryUsage();
    expect((used.user + used.system) / 1000).toBeLessThan(CPU_LIMIT_MS);
    expect(now.heapUsed + now.external - memory.heapUsed - memory.external).toBeLessThan(MEMORY_LIMIT);
    expect(fault).toBeInstanceOf(Unreadable);
    const message = (fault as Unreadable).message;
    expect(message.startsWith(`report/${at}:`) || message.startsWith(`report/${at} `), message.slice(0, 200)).toBe(
      true,
    );
    expect(message).toMatch(says);
    expect(message.length).toBeLessThan(700);
    expect(message).not.toMatch(/undefined|secret|\[object/);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    cases.add(name, message);
    rmSync(root, { recursive: true, force: true });
  });
});

const rounds = (deep: number, text: string): string =>
  `${"{{#each @root.sections}}".repeat(deep)}${text}${"{{/each}}".repeat(deep)}`;

describe("hostile files of a practice's dress, given to the program", () => {
  const probe = join(home, "probe.mjs");
  writeFileSync(
    probe,
    `import { isMainThread } from "node:worker_threads";
import { writeFileSync } from "node:fs";
if (isMainThread) process.on("exit", () => writeFileSync(process.env.PROBE, JSON.stringify({ cpu: process.cpuUsage(), rss: process.resourceUsage().maxRSS })));`,
  );
  const build = async (root: string) => {
    const PROBE = join(home, `probe-${made}.json`);
    const end = await run(root, ["build", "--no-pdf", "--edition", "practitioner"], {
      NODE_OPTIONS: `--import=${probe}`,
      PROBE,
    });
    const { cpu, rss } = JSON.parse(readFileSync(PROBE, "utf8")) as { cpu: NodeJS.CpuUsage; rss: number };
    return { ...end, cpuMs: (cpu.user + cpu.system) / 1000, rss: rss * 1024 };
  };
  let plainCpuMs = 0;
  beforeAll(async () => {
    const root = practiceWith({});
    const end = await build(root);
    expect(end).toMatchObject({ code: 0, err: "" });
    plainCpuMs = end.cpuMs;
  });

  it.each([
    [
      "a partial that calls itself",
      { "partials/note.hbs": "<p>\n{{> note note=note}}" },
      /report\/partials\/note\.hbs:2: /,
    ],
    ["a partial of 60 MB", { "partials/note.hbs": "x".repeat(60_000_000) }, /report\/partials\/note\.hbs: is 60 MB/],
    ["a partial that looks up a constructor", { "partials/note.hbs": "{{note.constructor}}" }, /note\.hbs:1: /],
    ["a link out", { "partials/note.hbs": linkTo("/etc/hostname") }, /note\.hbs: leads out/],
    ["words that are none", { "words/en.yaml": "client:\n  none: x\n" }, /report\/words\/en\.yaml:2: /],
    ["a style that fetches", { "theme.css": "a{}\na{b:url(//x)}" }, /report\/theme\.css:2: /],
    [
      "ten rounds in each other",
      { "partials/section.hbs": `<p>\n${rounds(10, "x")}` },
      /report\/partials\/section\.hbs: it would write a page without end/,
    ],
    [
      "rounds of much text",
      { "partials/section.hbs": rounds(5, "x".repeat(90_000)) },
      /section\.hbs: it would write a page without end/,
    ],
    [
      "hundreds of calls in rounds",
      { "partials/note.hbs": "x", "partials/section.hbs": rounds(4, "{{> note}}".repeat(900)) },
      /partials\/(?:note|section)\.hbs: it would write a page without end/,
    ],
    [
      "one of ours given less than it needs",
      { "partials/section.hbs": "<section>\n\n{{> figure figure=section words=words}}</section>" },
      /report\/partials\/section\.hbs:3: .*\(in figure, which it calls\)/,
    ],
    [
      "a value that is not there",
      { "partials/section.hbs": "<section>\n{{nowhere}}" },
      /section\.hbs:2: "nowhere" not defined/,
    ],
  ] as const)("%s: exit 1, file and line, nothing written", async (name, files, says) => {
    const root = practiceWith(files);
    const before = digests(root);
    const { code, err, out, cpuMs, rss } = await build(root);
    expect(err).toMatch(says);
    expect(err).not.toMatch(/fault of this program/);
    expect(err.trim().split("\n")).toHaveLength(1);
    expect(code).toBe(1);
    expect(out).not.toMatch(/written/);
    expect(digests(root)).toEqual(before);
    // Loading the program and computing the visit is in both.
    expect(cpuMs - plainCpuMs).toBeLessThan(CPU_LIMIT_MS);
    expect(rss).toBeLessThan(MEMORY_LIMIT);
    cases.add(`program: ${name}`, `exit ${code}; ${err.split("\n")[0]}`);
  });
});
