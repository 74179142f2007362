/** YAML reading: what comes out of good text, where things stand, and that hostile text ends in a message. */

import { describe, expect, it } from "vitest";
import { readYaml, YAML_LIMITS } from "../../src/read/yaml.js";
import fc from "../tools/properties.js";

const codesOf = (content: string | Uint8Array) => readYaml("a.yaml", content).diagnostics.map((d) => d.code);

describe("readYaml", () => {
  it("follows the YAML 1.2 core schema (specification 1.2.2, section 10.3.2)", () => {
    const { value } = readYaml("a.yaml", "a: no\nb: 2026-03-02\nc: 08:30\nd: 0x1F\ne: 1e3\nf: true\ng: ~\nh: 017\n");
    expect(value).toEqual({ a: "no", b: "2026-03-02", c: "08:30", d: 31, e: 1000, f: true, g: null, h: 17 });
  });

  it("knows line, column and length of keys and values", () => {
    const document = readYaml("a.yaml", "size:\n  stature_cm: 178.4 # barefoot\n  mass_kg: [72.1, 72.3]\n");
    expect(document.place(["size", "stature_cm"])).toEqual({ file: "a.yaml", line: 2, column: 15, length: 5 });
    expect(document.place(["size", "stature_cm"], "key")).toEqual({ file: "a.yaml", line: 2, column: 3, length: 10 });
    expect(document.place(["size", "mass_kg", 1])).toEqual({ file: "a.yaml", line: 3, column: 19, length: 4 });
    expect(document.place(["size"])).toEqual({ file: "a.yaml", line: 1, column: 1, length: 4 });
    expect(document.place(["size", "absent"])).toEqual({ file: "a.yaml", line: 1, column: 1, length: 4 });
    expect(document.written(["size", "stature_cm"])).toBe("178.4");
    const span = document.span(["size", "stature_cm"]);
    expect(span && document.text.slice(span.start, span.end)).toBe("178.4");
  });

  it("gives the same places with a byte-order mark and with CRLF line ends", () => {
    const text = "a: 1\nb:\n  c: 22\n";
    const plain = readYaml("a.yaml", text);
    const marked = readYaml("a.yaml", `\uFEFF${text}`);
    const crlf = readYaml("a.yaml", text.replaceAll("\n", "\r\n"));
    for (const path of [["a"], ["b", "c"]]) {
      expect(marked.place(path)).toEqual(plain.place(path));
      expect(crlf.place(path)).toEqual(plain.place(path));
    }
    expect(marked.value).toEqual(plain.value);
    expect(crlf.value).toEqual(plain.value);
  });

  it("keeps a key named like a built-in of the language away", () => {
    expect(codesOf("__proto__: {polluted: true}\n")).toEqual(["yaml-key"]);
    expect(codesOf("a: {constructor: 1}\n")).toEqual(["yaml-key"]);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it("refuses what is too large, too deep or too often repeated, quickly", () => {
    const started = performance.now();
    expect(codesOf(`# ${"x".repeat(YAML_LIMITS.characters)}`)).toEqual(["file-too-large"]);
    expect(codesOf(`a: ${"[".repeat(100_000)}`)).toHaveLength(1);
    expect(codesOf(`${"- ".repeat(100_000)}x`)).toHaveLength(1);
    expect(codesOf("a: &a [1]\nb: [".concat("*a, ".repeat(50_000), "1]\n"))).toEqual(["yaml-alias"]);
    // Masses are answered before the parser meets them: it does not get to the key that stands twice.
    expect(codesOf("a: 1\na: 2\nb: [".concat("*a,".repeat(10_001), "1]\n"))).toEqual(["yaml-alias"]);
    expect(performance.now() - started).toBeLessThan(10_000);
  });

  it("refuses numbers that do not exist, with every place of one", () => {
    expect(codesOf("a: [1e309, -1e309, .inf, .nan, 1e308]\n")).toEqual(Array(4).fill("number-not-finite"));
  });

  it("never throws, whatever the text", () => {
    const piece = fc.constantFrom(
      ..."abc:-[]{}\"'#&*!|>%@`,? \n\t\r0123456789.\u0000\u202e\uFEFF\ud800é漢".split(""),
      "  ",
      "- ",
      ": ",
      "\n  ",
      "---\n",
      "<<: *a",
      "&a ",
      "!!binary ",
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => {
        const document = readYaml("a.yaml", pieces.join(""));
        for (const d of document.diagnostics) {
          expect(d.found.length).toBeGreaterThan(0);
          expect(d.at.line ?? 1).toBeGreaterThan(0);
        }
        expect(document.value === undefined).toBe(document.diagnostics.length > 0);
      }),
      { numRuns: 1500 },
    );
  });

  it("never throws, whatever the bytes", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        readYaml("a.yaml", bytes);
      }),
    );
  });
});
