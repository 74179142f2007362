/**
 * The fast reader of plain YAML against the general parser: on every YAML file of the repository, and on seeded random
 * edits of them. What the fast reader reads, the general parser reads alike and without a fault; what it does not read
 * goes to the general parser, so a missed file costs time, never a value.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "../../src/read/yaml.js";
import { plainYaml } from "../../src/read/yaml-plain.js";
import { FUZZ_RUNS } from "../hostile/fuzz-runs.js";
import fc from "../tools/properties.js";

const files = ["src", "examples", "tests/golden"].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".yaml") && !file.endsWith("results.yaml"))
    .sort()
    .map((file) => join(folder, file)),
);
const texts = files.map((file) => readFileSync(file, "utf8"));

/** The general parser's value, or why it refuses. */
function general(text: string): { value: unknown } | { refused: string } {
  try {
    const { value, diagnostics } = parse("a.yaml", text);
    return diagnostics.length > 0 ? { refused: diagnostics[0]?.code ?? "" } : { value };
  } catch (error) {
    return { refused: String(error) };
  }
}

describe("plain YAML", () => {
  it("reads nearly every file of the repository, as the general parser does", () => {
    const plain = texts.map((text) => plainYaml(text));
    for (const [i, value] of plain.entries())
      if (value !== undefined) expect({ value }, files[i]).toEqual(general(texts[i] as string));
    const tables = files.flatMap((file, i) => (/tables|examples/.test(file) ? [plain[i]] : []));
    expect(tables.filter((value) => value === undefined)).toHaveLength(0);
  });

  it("never reads an edited text otherwise than the general parser", () => {
    const short = texts.filter((text) => text.length < 4000);
    const piece = fc.oneof(
      fc.constantFrom(..."abc:-[]{}\"'#&*!|>%@`,?~ \n.0127+eE_/\\é".split("")),
      fc.constantFrom(
        ": ",
        "- ",
        " #",
        "\n  ",
        "\n- ",
        "\n    ",
        "null",
        "0x1f",
        "1e3",
        ".5",
        "- - ",
        "? ",
        "''",
        '""',
        "<<: ",
        "{}",
        "[]",
        "---\n",
      ),
    );
    const edit = fc.record({
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      drop: fc.nat(6),
      add: fc.array(piece, { maxLength: 3 }),
    });
    let read = 0;
    fc.assert(
      fc.property(fc.constantFrom(...short), fc.array(edit, { minLength: 1, maxLength: 3 }), (text, edits) => {
        let edited = text;
        for (const { at, drop, add } of edits) {
          const i = Math.floor(at * edited.length);
          edited = edited.slice(0, i) + add.join("") + edited.slice(i + drop);
        }
        const value = plainYaml(edited);
        if (value === undefined) return;
        read++;
        expect({ value }).toEqual(general(edited));
      }),
      { seed: 9, numRuns: 1500 * FUZZ_RUNS },
    );
    expect(read).toBeGreaterThan(100);
  });

  it("never reads a made-up text otherwise than the general parser", () => {
    const piece = fc.constantFrom(
      ...[
        "a: ",
        "b: ",
        "c:",
        "\n",
        "\n",
        "\n  ",
        "\n  ",
        "\n    ",
        "- ",
        "[",
        "]",
        "{",
        "}",
        ", ",
        ",",
        '"x"',
        "'y'",
        "z",
        "1",
        "-2.5",
        "1e3",
        "~",
        "true",
        "#",
        " # c",
        ":",
        ": ",
        "é",
        "(",
        ".5",
        "017",
        "a b",
        " ",
      ],
    );
    let read = 0;
    fc.assert(
      fc.property(fc.array(piece, { minLength: 2, maxLength: 14 }), (pieces) => {
        const text = `k: ${pieces.join("")}`;
        const value = plainYaml(text);
        if (value === undefined) return;
        read++;
        expect({ value }).toEqual(general(text));
      }),
      { seed: 10, numRuns: 6000 * FUZZ_RUNS },
    );
    expect(read).toBeGreaterThan(300);
  });
});
