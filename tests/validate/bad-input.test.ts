/**
 * Bad input and the messages it gets. Each folder of tests/golden/bad-input lays a few files over _base (without.txt
 * lists files of _base that are taken away); expected.txt is what the program prints. GOLDEN=rewrite rewrites it; a case
 * that fails leaves tests/golden/<case>-changed/ to compare.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { drawDiagnostics, drawSummary } from "../../src/cli/draw-diagnostic.js";
import { codes } from "../../src/validate/codes.js";
import { readTree, validateTree } from "./practice-tree.js";

const ROOT = "tests/golden/bad-input";
const cases = readdirSync(ROOT).filter((name) => !/^[_.]|-changed$/.test(name));

async function run(name: string) {
  const tree = readTree(`${ROOT}/_base`);
  const own = readTree(`${ROOT}/${name}`);
  const without = new TextDecoder().decode(own.get("without.txt") ?? new Uint8Array());
  for (const path of without.split("\n")) tree.delete(path);
  for (const [path, bytes] of own) if (!/^[^/]*\.txt$/.test(path)) tree.set(path, bytes);
  const { diagnostics } = await validateTree(tree);
  const source = (file: string) => {
    const bytes = tree.get(file);
    return bytes && new TextDecoder().decode(bytes);
  };
  return { diagnostics, text: `${drawDiagnostics(diagnostics, source)}\n\n${drawSummary(diagnostics)}\n` };
}

describe("bad input", () => {
  it("has nothing to say about the base", async () => {
    const { diagnostics } = await validateTree(readTree(`${ROOT}/_base`));
    expect(diagnostics).toEqual([]);
  });

  it("has at least 50 cases, and every code occurs in one", () => {
    expect(cases.length).toBeGreaterThanOrEqual(50);
    const text = cases
      .map((name) => `${ROOT}/${name}/expected.txt`)
      .filter((file) => existsSync(file))
      .map((file) => readFileSync(file, "utf8"))
      .join("\n");
    const seen = new Set([...text.matchAll(/^(?:error|warning) ([a-z-]+) {3}/gm)].map((m) => m[1] ?? ""));
    expect([...seen].filter((code) => !Object.hasOwn(codes, code))).toEqual([]);
    // A file beyond the size limit is made in tests/read/yaml.test.ts, one with hundreds of problems in
    // hostile.test.ts; retest files, own tables and what is not named are read by cli/,
    // outside a visit (tests/read/retests.test.ts, tests/cli/own-tables.test.ts).
    const elsewhere = [
      "file-too-large",
      "retest-file",
      "event-profile",
      "reference-table",
      "file-not-named",
      "too-many-problems",
    ];
    expect(Object.keys(codes).filter((code) => !seen.has(code))).toEqual(elsewhere);
  });

  for (const name of cases)
    it(name, async () => {
      const { diagnostics, text } = await run(name);
      const file = `${ROOT}/${name}/expected.txt`;
      expect(diagnostics.length).toBeGreaterThan(0);
      if (process.env.GOLDEN === "rewrite") writeFileSync(file, text);
      else {
        const changed = `tests/golden/${name}-changed`;
        const expected = existsSync(file) ? readFileSync(file, "utf8") : "";
        rmSync(changed, { recursive: true, force: true });
        if (text !== expected) {
          mkdirSync(changed);
          writeFileSync(`${changed}/expected.txt`, text);
        }
        expect(text).toBe(expected);
      }
    });
});
