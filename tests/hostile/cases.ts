/** Hostile and broken files, generated and made by hand: what lies where a good file lay, and what must come of it. */
export type Outcome = "error" | "warning or nothing";
export interface Hostile {
  readonly name: string;
  readonly file: "session" | "lab" | "client" | "csv";
  /** The whole file from the good one. */
  readonly make: (good: string) => string | Uint8Array;
  readonly outcome: Outcome;
}

const utf8 = (text: string) => new TextEncoder().encode(text);
const from = (codes: readonly number[]) => String.fromCodePoint(...codes);
const bytes = (text: string, ...more: number[]) => new Uint8Array([...utf8(text), ...more]);

/** What a value of the session is replaced by, and whether it can be right there. */
const VALUES: readonly (readonly [name: string, text: string])[] = [
  ["nothing", ""],
  ["null", "null"],
  ["true", "true"],
  ["an empty list", "[]"],
  ["an empty mapping", "{}"],
  ["a list of lists", "[[[[1]]]]"],
  ["a mapping in itself", "&a {b: *a}"],
  ["1e309", "1e309"],
  ["-1e309", "-1e309"],
  [".inf", ".inf"],
  [".nan", ".nan"],
  ["the word Infinity", "Infinity"],
  ["the word NaN", "NaN"],
  ["a hexadecimal number", "0xFFFFFFFFFFFF"],
  ["forty digits", "9".repeat(40)],
  ["minus zero", "-0"],
  ["a decimal comma", "68,2"],
  ["a number with its unit", "68.2 kg"],
  ["a thousands mark", "1'720"],
  ["a script", '"<script>alert(1)</script>"'],
  ["a picture that calls", "\"<img src=x onerror='fetch(1)'>\""],
  ["a spreadsheet formula", '"=HYPERLINK(1)"'],
  ["a template", '"{{#each this}}{{/each}}"'],
  ["a shell command", '"$(rm -rf .)"'],
  ["a path out", '"../../etc/passwd"'],
  ["an address", '"https://example.invalid/x"'],
  ["10 000 letters", `"${"x".repeat(10_000)}"`],
  ["a hundred thousand spaces", `"${" ".repeat(100_000)}"`],
  ["a quotation mark alone", '"'],
  ["an apostrophe alone", "'"],
  ["an unknown tag", "!!js/function x"],
  ["a binary tag", "!!binary aGVsbG8="],
  ["a block scalar", "|\n    one\n    two"],
  ["a folded scalar", ">\n    one\n    two"],
  ["a date that does not exist", "2026-02-30"],
  ["a clock time", "25:61"],
];
const PLACES: readonly (readonly [name: string, found: RegExp, key: string])[] = [
  ["body mass", /mass_kg: .*/, "mass_kg"],
  ["date of the visit", /date: .*/, "date"],
  ["client", /client: .*/, "client"],
  ["inspired gas", /inspired_gas: .*/, "inspired_gas"],
];

const values: Hostile[] = PLACES.flatMap(([place, found, key]) =>
  VALUES.map(
    ([name, text]): Hostile => ({
      name: `${place}: ${name}`,
      file: "session",
      make: (good) => good.replace(found, () => `${key}: ${text}`),
      outcome: "error",
    }),
  ),
);

const session = (name: string, make: Hostile["make"], outcome: Outcome = "error"): Hostile => ({
  name,
  file: "session",
  make,
  outcome,
});
const csv = (name: string, make: Hostile["make"], outcome: Outcome = "error"): Hostile => ({
  name,
  file: "csv",
  make,
  outcome,
});
const put = (text: string) => (good: string) => `${good}${text}\n`;
const inRemark = (text: string) => put(`remarks: ["${text}"]`);

const BOMB = `a: &a [x, x, x, x, x, x, x, x, x, x]\n${"bcdefghi"
  .split("")
  .map((c, i) => `${c}: &${c} [${Array(10).fill(`*${"abcdefgh"[i]}`).join(", ")}]`)
  .join("\n")}`;

const structure: Hostile[] = [
  session("alias bomb", () => BOMB),
  session("alias bomb after a good file", (good) => good + BOMB),
  session("100 000 aliases", (good) => `${good}x: &x [1]\ny: [${"*x, ".repeat(100_000)}1]\n`),
  session("a scalar of 100 MB", () => utf8(`remarks: "${"x".repeat(100_000_000)}"`)),
  session("2 MB of comments", (good) => good + "# x\n".repeat(500_000)),
  session("100 000 opening brackets", put(`x: ${"[".repeat(100_000)}`)),
  session("100 000 opening braces", put(`x: ${"{a: ".repeat(100_000)}`)),
  session("100 000 nested list marks", put(`${"- ".repeat(100_000)}x`)),
  session(
    "5 000 levels of indentation",
    put(Array.from({ length: 500 }, (_, i) => `${" ".repeat(i)}k${i}:`).join("\n")),
  ),
  session("61 brackets deep", put(`x: ${"[".repeat(61)}${"]".repeat(61)}`)),
  session("20 000 keys", put(Array.from({ length: 20_000 }, (_, i) => `k${i}: 1`).join("\n"))),
  session("a key of 10 000 letters", put(`${"k".repeat(10_000)}: 1`)),
  session("the key __proto__", put("__proto__: {polluted: true}")),
  session("the key constructor", put("constructor: {prototype: {polluted: true}}")),
  session("the key prototype in a block", (good) => good.replace("size:", "size:\n  prototype: 1")),
  session("the key toString", put("toString: 1")),
  session("the key hasOwnProperty in a block", (good) => good.replace("size:", "size:\n  hasOwnProperty: 1")),
  session("a key twice", put("date: 2026-03-03")),
  session("a number as key", put("7: x")),
  session("a list as key", put("? [a, b]\n: c")),
  session("null as key", put("~: x")),
  session("a merge key", put("<<: {date: 2026-03-03}")),
  session("tabs for indentation", (good) => good.replace("  stature_cm", "\tstature_cm")),
  session("a tab before a value", (good) => good.replace("stature_cm: ", "stature_cm:\t"), "warning or nothing"),
  session("a byte-order mark", (good) => `\uFEFF${good}`, "warning or nothing"),
  session("two byte-order marks", (good) => `\uFEFF\uFEFF${good}`),
  session("Windows line ends", (good) => good.replaceAll("\n", "\r\n"), "warning or nothing"),
  session(
    "UTF-16, little end first",
    (good) => new Uint8Array([0xff, 0xfe, ...new Uint8Array(Uint16Array.from(good, (c) => c.charCodeAt(0)).buffer)]),
  ),
  session("UTF-16, big end first", (good) => new Uint8Array([0xfe, 0xff, ...[...utf8(good)].flatMap((b) => [0, b])])),
  session("a byte that is no UTF-8", (good) => bytes(good, 0x23, 0xff, 0x0a)),
  session("a cut UTF-8 sequence", (good) => bytes(good, 0x23, 0xe2, 0x82)),
  session("an overlong UTF-8 sequence", (good) => bytes(good, 0x23, 0xc0, 0xaf)),
  session("a null byte", (good) => bytes(good, 0x23, 0)),
  ...[0x1, 0x8, 0x1b, 0x7f, 0x85, 0x9f].map((c) =>
    session(`control character ${c.toString(16)}`, inRemark(`a${from([c])}b`)),
  ),
  ...[0x200e, 0x202a, 0x202e, 0x2066, 0x2069, 0x61c].map((c) =>
    session(`direction mark ${c.toString(16)}`, inRemark(`a${from([c])}b`)),
  ),
  ...[0x200b, 0x2060, 0xad, 0x2028, 0x2029].map((c) =>
    session(`invisible character ${c.toString(16)}`, inRemark(`a${from([c])}b`)),
  ),
  session("a lone surrogate, written out", inRemark("\\ud800"), "warning or nothing"),
  session("emoji and four-byte letters", inRemark("\u{1F9EA} \u{20BB7}"), "warning or nothing"),
  session("HTML in a remark", inRemark("<script>alert(1)</script><b onclick=x>"), "warning or nothing"),
  session("SVG in a remark", inRemark("<svg onload=alert(1)><foreignObject>"), "warning or nothing"),
  session("a template in a remark", inRemark("{{#each results}}{{> frame}}{{/each}}"), "warning or nothing"),
  session("a spreadsheet formula in a remark", inRemark("=cmd|' /C calc'!A0"), "warning or nothing"),
  session("a remark of 100 000 letters", inRemark("x".repeat(100_000))),
  session("10 000 remarks", put(`remarks: [${Array(10_000).fill("x").join(", ")}]`)),
  session("only spaces", () => "   \n  \n"),
  session("nothing at all", () => ""),
  session("only a comment", () => "# later\n"),
  session("a sentence", () => "not a record\n"),
  session("a list", () => "- a\n- b\n"),
  session("a number", () => "7\n"),
  session("JSON of a record of something else", () => '{"waymark": "client 1", "id": "c-017"}'),
  session("two documents", (good) => `${good}---\n${good}`),
  session("a directive", (good) => `%YAML 1.1\n---\n${good}`, "warning or nothing"),
  session("an unknown version", (good) => good.replace("session 1", "session 9")),
  session("cut in the middle", (good) => good.slice(0, 180)),
  session("a merge conflict", (good) => good.replace("size:", "<<<<<<< ours\nsize:\n=======\nsize:\n>>>>>>> theirs")),
  session("a block where a list belongs", put("calibration: {instrument: cart}")),
  session("three thousand faults", (good) => good + Array.from({ length: 3000 }, (_, i) => `wrong_${i}: x`).join("\n")),
  {
    name: "laboratory: constructor as an instrument",
    file: "lab",
    make: (good) => good.replace("  cart:", "  constructor:"),
    outcome: "error",
  },
  {
    name: "laboratory: __proto__ as a channel",
    file: "lab",
    make: (good) => good.replace("time_s:", "__proto__:"),
    outcome: "error",
  },
  {
    name: "laboratory: a table outside of the practice",
    file: "lab",
    make: put('norms: ["../../../etc/passwd"]'),
    outcome: "error",
  },
  {
    name: "laboratory: a logo by address",
    file: "lab",
    make: put('logo: "https://example.invalid/logo.svg"'),
    outcome: "error",
  },
  {
    name: "laboratory: a header row beyond all rows",
    file: "lab",
    make: (good) => good.replace("    columns:", "    header_row: 100000000\n    columns:"),
    outcome: "error",
  },
  {
    name: "laboratory: a name of 10 000 letters",
    file: "lab",
    make: (good) => good.replace("Test bench", "x".repeat(10_000)),
    outcome: "error",
  },
  { name: "laboratory: alias bomb", file: "lab", make: () => BOMB, outcome: "error" },
  { name: "laboratory: empty", file: "lab", make: () => "", outcome: "error" },
  {
    name: "client: a birth date in the future",
    file: "client",
    make: (good) => good.replace("1980-05-14", "2080-05-14"),
    outcome: "error",
  },
  {
    name: "client: a birth date that does not exist",
    file: "client",
    make: (good) => good.replace("1980-05-14", "1980-02-31"),
    outcome: "error",
  },
  {
    name: "client: a birth date of year 0",
    file: "client",
    make: (good) => good.replace("1980-05-14", "0000-01-01"),
    outcome: "error",
  },
  { name: "client: an unknown sex", file: "client", make: (good) => good.replace("female", "f"), outcome: "error" },
  {
    name: "client: an id that leads out",
    file: "client",
    make: (good) => good.replace("c-017", "../c-017"),
    outcome: "error",
  },
  {
    name: "client: __proto__ as goal",
    file: "client",
    make: put("goals: [{goal: x, targets: [{measure: __proto__}]}]"),
    outcome: "error",
  },
  {
    name: "client: toString as primary outcome",
    file: "client",
    make: put("primary_outcomes: [toString]"),
    outcome: "error",
  },
];

const NAMES = [
  "../secret.csv",
  "../../lab.yaml",
  "/etc/passwd",
  "C:\\\\x.csv",
  "..\\\\x.csv",
  "con.csv",
  "rest.csv/..",
  "./../rest.csv",
  "~/rest.csv",
  "file:///etc/passwd",
  "https://example.invalid/a.csv",
  "rest.csv ",
  ".",
  "..",
  "x".repeat(300),
  "nul\\u0000.csv",
  "session.yaml",
  "absent.csv",
  "REST.CSV",
];
const paths: Hostile[] = NAMES.map((name) =>
  session(`series named ${name.slice(0, 40)}`, (good) => good.replace("series: rest.csv", `series: "${name}"`)),
);

const rows = (good: string) => good.trimEnd().split("\n");
const tables: Hostile[] = [
  csv("ten million columns", () => ",".repeat(10_000_000)),
  csv("ten million lines", () => utf8("1\n".repeat(10_000_000))),
  csv("half a million lines and one", (good) => `${rows(good)[0]}\n${"1,2,3,4,5\n".repeat(500_001)}`),
  csv("501 columns", (good) => `${rows(good)[0]},${Array.from({ length: 500 }, (_, i) => `c${i}`).join(",")}\n`),
  csv("one line of 15 MB", () => utf8("x".repeat(15_000_000))),
  csv("a file of 60 MB", () => new Uint8Array(60_000_000).fill(49)),
  csv("a quotation mark that is never closed", (good) => good.replace("251", '"251')),
  csv("a million quotation marks", (good) => `${rows(good)[0]}\n${'"'.repeat(1_000_001)}`),
  csv("a header twice", (good) => good.replace("t,VO2,VCO2", "t,VO2,VO2")),
  csv("no header", (good) => rows(good).slice(1).join("\n")),
  csv("only the header", (good) => `${rows(good)[0]}\n`),
  csv("nothing", () => ""),
  csv("only line ends", () => "\n".repeat(1000)),
  csv("rows of different length", (good) => good.replace("251,203", "251,203,9,9,9")),
  csv("rows too short", (good) => good.replace(",7.9,61", "")),
  csv("the other decimal mark", (good) => good.replaceAll(".", ",").replaceAll(/,(?=\d{3})/g, ";")),
  csv("the word Infinity", (good) => good.replace("251", "Infinity")),
  csv("1e999", (good) => good.replace("251", "1e999")),
  csv("hexadecimal", (good) => good.replace("251", "0xFB")),
  csv("a spreadsheet error", (good) => good.replace("251", "#DIV/0!")),
  csv("a spreadsheet formula", (good) => good.replace("251", "=1+250")),
  csv("a script in a header", (good) => good.replace("VO2", "<script>")),
  csv("HTML in a cell", (good) => good.replace("251", "<b>251</b>")),
  csv("time that runs backwards", (good) => good.replace("6.4,", "1.4,")),
  csv("time that stands still", (good) => good.replaceAll(/^\d[\d.]*,/gm, "3.1,"), "warning or nothing"),
  csv("time missing in a row", (good) => good.replace("6.4,", ",")),
  csv("a channel of another unit", (good) => good.replaceAll(/^([\d.]+),(\d+),/gm, "$1,0.0000$2,")),
  csv("a dead channel", (good) => good.replaceAll(/,\d+$/gm, ","), "warning or nothing"),
  csv("null bytes", (good) => good.replace("251", "25\u00001")),
  csv(
    "UTF-16",
    (good) => new Uint8Array([0xff, 0xfe, ...new Uint8Array(Uint16Array.from(good, (c) => c.charCodeAt(0)).buffer)]),
    "warning or nothing",
  ),
  csv(
    "a byte-order mark and Windows line ends",
    (good) => `\uFEFF${good.replaceAll("\n", "\r\n")}`,
    "warning or nothing",
  ),
  csv("old Macintosh line ends", (good) => good.replaceAll("\n", "\r"), "warning or nothing"),
  csv("a picture", () => new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0xd, 0xa, 0x1a, 0xa, ...Array(2000).fill(7)])),
  csv("a workbook", () => new Uint8Array([0x50, 0x4b, 3, 4, ...Array(2000).fill(200)])),
  csv("headers with a direction mark", (good) => good.replace("VO2", `V${from([0x202e])}O2`)),
  csv("a million empty cells in one row", (good) => good.replace("251", ",".repeat(1_000_000))),
];

export const HOSTILE: readonly Hostile[] = [...values, ...structure, ...paths, ...tables];
