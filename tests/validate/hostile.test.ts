/** Whatever is in the files, checking ends soon, in a visit or in messages that are complete. */

import { describe, expect, it } from "vitest";
import { drawDiagnostics, listDiagnostics } from "../../src/cli/draw-diagnostic.js";
import { codes } from "../../src/validate/codes.js";
import fc from "../tools/properties.js";
import { readTree, validateTree } from "./practice-tree.js";

const SESSION = "clients/c-017/2026-03-02-baseline/session.yaml";
const FILES = ["lab.yaml", "clients/c-017/client.yaml", SESSION, "clients/c-017/2026-03-02-baseline/rest.csv"];
const base = readTree("tests/golden/bad-input/_base");
const text = (path: string) => new TextDecoder().decode(base.get(path));

async function check(path: string, content: string) {
  const tree = new Map(base);
  tree.set(path, new TextEncoder().encode(content));
  const { validations, diagnostics } = await validateTree(tree);
  const hasError = diagnostics.some((d) => d.severity === "error");
  for (const validation of validations)
    expect(validation.visit === undefined).toBe(validation.diagnostics.some((d) => d.severity === "error"));
  for (const d of diagnostics) {
    expect(Object.keys(codes)).toContain(d.code);
    for (const words of [d.found, d.expected, d.why]) expect(words).toMatch(/\S/);
    expect(`${d.found} ${d.expected} ${d.why} ${d.fix ?? ""}`).not.toMatch(/undefined|NaN,|\[object/);
  }
  drawDiagnostics(diagnostics, (file) => (file === path ? content : text(file)));
  listDiagnostics(diagnostics);
  return { diagnostics, hasError };
}

describe("hostile and broken input", () => {
  it("is answered whatever is cut out, doubled, or put in", async () => {
    const edit = fc.record({
      file: fc.constantFrom(...FILES),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      cut: fc.nat(12),
      put: fc.constantFrom(
        "",
        ":",
        "\n",
        "  ",
        "- ",
        "[",
        "{",
        '"',
        "x",
        "0",
        "1e400",
        "null",
        ",",
        ";",
        "#",
        "&a ",
        "*a",
        "\t",
        "~",
        "é",
        "-5",
        "true",
      ),
    });
    await fc.assert(
      fc.asyncProperty(edit, async ({ file, at, cut, put }) => {
        const whole = text(file);
        const start = Math.floor(at * whole.length);
        await check(file, whole.slice(0, start) + put + whole.slice(start + cut));
      }),
      { numRuns: 400 },
    );
  });

  it("is answered whatever a value is replaced by", async () => {
    const values = [
      "null",
      "true",
      "[]",
      "{}",
      "[1, 2]",
      "{a: 1}",
      '""',
      "0",
      "-1",
      "1e308",
      "2026-01-01",
      "'x'",
      "[[]]",
      "|\n  text",
    ];
    for (const path of FILES.slice(0, 3))
      for (const [line, start = "", value] of text(path).matchAll(/^( *[a-z_]+: )(\S.*)$/gm))
        for (const other of values) if (value !== other) await check(path, text(path).replace(line, start + other));
  });

  it("lists 200 problems of a file and counts the rest", async () => {
    const started = performance.now();
    const unknown = Array.from({ length: 5000 }, (_, i) => `key_number_${i}: 1`).join("\n");
    const { diagnostics } = await check(SESSION, `${text(SESSION)}${unknown}\n`);
    expect(diagnostics.filter((d) => d.code === "unknown-key")).toHaveLength(200);
    expect(diagnostics.find((d) => d.code === "too-many-problems")?.found).toBe("4800 more problems in this file");
    expect(performance.now() - started).toBeLessThan(10_000);
  });

  it("is not slowed down by long text", async () => {
    const started = performance.now();
    for (const piece of ["a", "1 ", "A", "Aa ", "@", "1-"])
      await check(SESSION, `${text(SESSION)}remarks: ["${piece.repeat(300_000 / piece.length)}"]\n`);
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});
