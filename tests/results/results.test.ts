/** results.yaml: what is written reads back the same, byte for byte and value for value. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { Entry } from "../../src/kernel/measure.js";
import type { Results } from "../../src/kernel/results.js";
import { toDecimals } from "../../src/kernel/rounding.js";
import { parseWritten } from "../../src/results/parse.js";
import { readResults } from "../../src/results/read.js";
import { recordResults } from "../../src/results/record.js";
import { writeResults } from "../../src/results/write.js";
import * as yaml from "../../src/results/yaml-bytes.js";
import fc from "../tools/properties.js";

const textOf = (results: Results): string => writeResults(results).toString();
const flow = (value: yaml.Flow): string => yaml.bytesOf(() => yaml.flow(value)).toString();
const line = (indent: 0 | 2, key: string, value: yaml.Flow): string =>
  yaml.bytesOf(() => yaml.line(indent, key, value)).toString();
const scalar = (text: string, inFlow: boolean): string => yaml.bytesOf(() => yaml.scalar(text, inFlow)).toString();

const entries: Entry[] = [
  {
    kind: "quantity",
    id: "body_mass_index",
    value: 22.857142,
    unit: "kg/m²",
    decimals: 1,
    origin: {
      kind: "formula",
      formula: "body-mass-index r1",
      inputs: [
        { name: "body_mass", text: "70.0 kg", measure: "body_mass" },
        { name: "stature", text: "175.0 cm", measure: "stature" },
      ],
    },
    error: { typical: 0.1234, low: 22.6, high: 23.14, from: "invented for this test" },
    norms: [{ table: "bmi-who", category: "normal weight", percentile: 41.6, note: "WHO: {quoted}" }],
  },
  {
    kind: "quantity",
    id: "body_mass",
    value: 70,
    unit: "kg",
    decimals: 1,
    origin: { kind: "key", key: "session.yaml size.mass_kg" },
  },
  { kind: "not given", id: "waist", because: "the tape was missing: see remarks" },
  {
    kind: "judgement",
    id: "blood_pressure_class",
    verdict: "high normal",
    because: "132/84 mmHg",
    rule: "esh-2023 r1",
    inputs: [],
  },
  {
    kind: "table",
    id: "waist_to_height",
    columns: [
      { key: "t", title: "Time", unit: "s", decimals: 0 },
      { key: "w", title: "What" },
    ],
    rows: [
      [14.7, "a, b"],
      [null, "null"],
    ],
    origin: { kind: "formula", formula: "bins r1", inputs: [] },
  },
  {
    kind: "remark",
    id: "remark_scales",
    severity: "fatal",
    found: "not recorded",
    limit: "yearly",
    because: "x",
    affects: ["body_mass"],
    rule: "scales r1",
  },
  {
    kind: "change",
    id: "change_body_mass",
    measure: "body_mass",
    unit: "kg",
    decimals: 1,
    since: "2026-03-02",
    before: 72,
    now: 70,
    change: -2,
    low: -2.61,
    high: -1.4,
    typicalError: 0.22,
    errorFrom: "laboratory retests, 12 pairs",
    chances: { higher: 0, trivial: 3, lower: 97 },
    differs: [],
    verdict: "lower, beyond error",
    because: "It is.",
    primary: true,
  },
];

const results: Results = recordResults(
  {
    client: "c-017",
    sex: "female",
    date: "2026-03-02",
    label: "baseline",
    purpose: "baseline",
    ageYears: 41.26,
    sources: [{ file: "session.yaml", sha256: "00ff" }],
    choices: { peak_window_s: 30 } as Results["choices"],
    conditions: { mode: "treadmill", "hour of day": "8" },
  },
  entries,
);

describe("results.yaml", () => {
  it("reads back what was written, and writing again changes no byte", () => {
    const text = textOf(results);
    expect(readResults(text)).toEqual({ ...results, entries: results.entries.map(withoutEmptyInputs) });
    expect(textOf(readResults(text))).toBe(text);
  });

  it("keeps trailing zeros, puts the value first and measures at the top level", () => {
    expect(textOf(results)).toContain("\nbody_mass:\n  value: 70.0\n  unit: kg\n  from: session.yaml size.mass_kg\n");
  });

  it("writes entries in the report's order whatever order they came in", () => {
    const ids = recordResults(results, [...entries].reverse()).entries.map((e) => e.id);
    expect(ids).toEqual(results.entries.map((e) => e.id));
    expect(ids.slice(0, 2)).toEqual(["body_mass", "body_mass_index"]);
  });

  it("refuses a file it did not write", () => {
    expect(() => readResults("waymark: session 1\n")).toThrow(/not a results file/);
    expect(() => readResults(`${textOf(results)}\nodd: {a: 1}\n`)).toThrow(/odd is not an entry/);
  });
});

/** An absent and an empty input list print alike for a formula; a judgement keeps what it had. */
const withoutEmptyInputs = (entry: Entry): Entry => entry;

describe("the fast reader", () => {
  const committed = readdirSync("examples", { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith("results.yaml"))
    .map((file) => readFileSync(join("examples", file), "utf8"));

  it("gives what a general parser gives, for every committed result", () => {
    expect(committed.length).toBeGreaterThan(5);
    for (const text of [textOf(results), ...committed]) expect(parseWritten(text)).toEqual(parse(text));
  });

  it("gives what a general parser gives for any texts and numbers in an entry", () => {
    const value = fc.oneof(
      fc.string({ unit: "grapheme" }),
      fc.integer(),
      fc.constantFrom("017", "yes", "a: b", "- x", "", "{a", "#"),
    );
    fc.assert(
      fc.property(value, value, fc.array(value), (a, b, list) => {
        const text = `${line(0, "k", { a, b: [b, list], c: { d: a } })}block:\n${line(2, "x", a)}  rows:\n    - ${flow(list)}\n`;
        expect(parseWritten(text)).toEqual(parse(text));
      }),
      { numRuns: 1000 },
    );
  });

  it("leaves to the general parser what was edited by hand", () => {
    for (const text of [
      "a: 'quoted'\n",
      "a: &x 1\n",
      "a: |\n  text\n",
      "a: {b: 1\n",
      "a: 1\na: 2\n",
      "a: b # note\n",
      "<<<<<<< HEAD\n",
      "a: [1,2]\n",
    ])
      expect(parseWritten(text), text).toBeUndefined();
  });
});

describe("yaml text", () => {
  const anyText = fc.string({ unit: "grapheme" });
  it("reads back every text, in block and in flow context", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(parse(`a: ${scalar(text, false)}\n`)).toEqual({ a: text });
        expect(parse(`[${scalar(text, true)}, ${scalar(text, true)}]`)).toEqual([text, text]);
        expect(parse(line(0, "k", text))).toEqual({ k: text });
      }),
      { numRuns: 2000 },
    );
  });
  it.each([
    "017",
    "1e3",
    "yes",
    "null",
    "~",
    "- a",
    "a: b",
    "a #b",
    "#a",
    "2026-03-02",
    "12:30",
    "",
    " a",
    "a ",
    "{a",
    "a:",
    "<<",
    "\u202eabc",
    "0x1f",
    ".5",
    "1_000",
  ])("keeps %j a text", (text) => {
    expect(parse(`a: ${scalar(text, false)}`)).toEqual({ a: text });
    expect(parse(flow({ a: text, b: [text] }))).toEqual({ a: text, b: [text] });
  });
  it("prints decimals as they are printed everywhere", () => {
    const anyNumber = fc.oneof(
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.integer().map((n) => n / 1000),
    );
    fc.assert(
      fc.property(anyNumber, fc.integer({ min: 0, max: 7 }), (value, decimals) => {
        expect(yaml.bytesOf(() => yaml.decimal(value, decimals)).toString()).toBe(toDecimals(value, decimals));
      }),
      { numRuns: 2000 },
    );
  });
  it("grows with the document, and keeps nothing of the one before", () => {
    const long = "wörd ".repeat(100_000).trim();
    expect(line(0, "k", long)).toBe(`k: ${long}\n`);
    expect(line(0, "k", "short")).toBe("k: short\n");
  });
  it("writes prose without quotes", () => {
    expect(scalar("12 W is inside the detectable change of 17 W", false)).toBe(
      "12 W is inside the detectable change of 17 W",
    );
  });
});
