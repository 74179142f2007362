/** Every parser on random and on edited text: seeded, bounded; longer by `npm run fuzz`. None crashes, hangs or answers otherwise than its peer. */
import { readFileSync } from "node:fs";
import { parse as parseCsv } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { Unreadable } from "../../src/cli/files.js";
import { pack, unpack } from "../../src/cli/zip.js";
import { splitCsv } from "../../src/read/csv.js";
import { decodeLeniently, decodeStrictly } from "../../src/read/decode.js";
import { readHours, readMinutes, readNumber } from "../../src/read/number.js";
import { readPairs } from "../../src/read/retests.js";
import { readSeries, type SeriesMapping } from "../../src/read/series.js";
import { readYaml } from "../../src/read/yaml.js";
import { parseWritten } from "../../src/results/parse.js";
import fc from "../tools/properties.js";
import { FUZZ_RUNS } from "./fuzz-runs.js";

const runs = (numRuns: number, seed: number) => ({ numRuns: numRuns * FUZZ_RUNS, seed });
const bytes = fc.uint8Array({ maxLength: 300 });
/** Pieces of the languages the parsers read, put together in any order. */
const text = fc
  .array(
    fc.constantFrom(
      ..."abc019.,;:\"'\t\n\r -+eE[]{}#&*!|>%@`~=\u0000\uFEFF\u202eé漢".split(""),
      "\r\n",
      '""',
      "1.5",
      "key: ",
      "- ",
      "null",
    ),
    { maxLength: 60 },
  )
  .map((pieces) => pieces.join(""));

/** A text with a few places cut, doubled or replaced. */
const edited = (whole: string) =>
  fc
    .array(fc.tuple(fc.nat(whole.length), fc.nat(8), text), { minLength: 1, maxLength: 4 })
    .map((edits) =>
      edits.reduce((now, [at, cut, put]) => now.slice(0, at) + put.slice(0, 6) + now.slice(at + cut), whole),
    );

describe("parsers", () => {
  it("read any bytes as YAML into a value or into messages", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          bytes,
          text.map((t) => new TextEncoder().encode(t)),
        ),
        (content) => {
          const { value, diagnostics } = readYaml("a.yaml", content);
          if (diagnostics.length === 0) expect(() => JSON.stringify(value)).not.toThrow();
          else expect(value).toBeUndefined();
        },
      ),
      runs(2000, 21),
    );
  });

  it("split CSV as a general parser does, wherever that one accepts it (RFC 4180)", () => {
    const cell = fc
      .array(fc.constantFrom("a", "1.5", " ", ",", '"', "\n", "é", ""), { maxLength: 4 })
      .map((c) => c.join(""));
    const quote = (c: string) => (/[",\n]/.test(c) ? `"${c.replaceAll('"', '""')}"` : c);
    const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(table, (rows) => {
        const written = rows.map((row) => row.map(quote).join(",")).join("\n");
        const general = parseCsv(written, { relax_column_count: true, skip_empty_lines: false }) as string[][];
        expect(splitCsv(written, ",").rows).toEqual(general);
        expect(general).toEqual(rows);
      }),
      runs(1500, 22),
    );
  });

  it("split any text into rows without losing a line", () => {
    fc.assert(
      fc.property(text, fc.constantFrom(",", ";", "\t"), (whole, delimiter) => {
        const { rows, lines, unclosed } = splitCsv(whole, delimiter);
        expect(lines).toHaveLength(rows.length);
        expect([...lines].sort((a, b) => a - b)).toEqual(lines);
        if (unclosed === undefined && !whole.includes('"'))
          expect(rows.map((r) => r.join(delimiter)).join("\n")).toBe(
            whole.replace(/\r\n|\r/g, "\n").replace(/\n$/, ""),
          );
      }),
      runs(2000, 23),
    );
  });

  it("read numbers as the language does, and nothing else as a number", () => {
    const digits = fc.array(fc.constantFrom(..."0123456789"), { minLength: 1, maxLength: 12 }).map((d) => d.join(""));
    fc.assert(
      fc.property(digits, fc.option(digits), (whole, part) => {
        const written = part === null ? whole : `${whole}.${part}`;
        expect(readNumber(written, ".")).toBe(Number(written));
        expect(readNumber(written.replace(".", ","), ",")).toBe(Number(written));
      }),
      runs(5000, 24),
    );
    fc.assert(
      fc.property(text, (cell) => {
        for (const x of [readNumber(cell, "."), readNumber(cell, ","), readHours(cell), readMinutes(cell)])
          expect(Number.isNaN(x) || Number.isFinite(x)).toBe(true);
        if (!Number.isNaN(readNumber(cell, "."))) expect(cell).toMatch(/^[-+]?[\d.]+(?:[eE][-+]?\d+)?$/);
      }),
      runs(3000, 25),
    );
  });

  it("read any bytes as a series into values or into messages", () => {
    const mapping: SeriesMapping = {
      columns: { time_s: { column: "a", unit: "s" }, heart_rate_bpm: { column: "b", unit: "1/min" } },
    };
    const table = text.map((rest) => `a,b\n1,60\n2,61\n${rest}`);
    fc.assert(
      fc.property(fc.oneof(bytes, table), (content) => {
        const { series, diagnostics } = readSeries("x.csv", content, mapping);
        expect(series === undefined).toBe(diagnostics.some((d) => d.severity === "error"));
        for (const values of Object.values(series?.channels ?? {}))
          for (const x of values) expect(Number.isNaN(x) || Number.isFinite(x)).toBe(true);
      }),
      runs(2000, 26),
    );
    fc.assert(
      fc.property(
        fc.oneof(
          bytes,
          text.map((t) => new TextEncoder().encode(t)),
        ),
        (content) => void readPairs("r.csv", content),
      ),
      runs(500, 27),
    );
  });

  it("decode any bytes", () => {
    fc.assert(
      fc.property(bytes, (content) => {
        expect(typeof decodeLeniently(content)).toBe("string");
        decodeStrictly(content);
      }),
      runs(1000, 28),
    );
  });

  it("read edited results into plain data, or leave them to a general parser", () => {
    const path = "examples/skarn-point/clients/c-044/2026-03-30-baseline/results.yaml";
    const whole = readFileSync(path, "utf8").slice(0, 3000);
    let read = 0;
    fc.assert(
      fc.property(edited(whole.slice(0, whole.lastIndexOf("\n") + 1)), (content) => {
        const quick = parseWritten(content);
        if (quick === undefined) return;
        read++;
        expect(Object.getPrototypeOf(quick)).toBe(Object.prototype);
        expect(Object.keys(quick)).not.toContain("__proto__");
      }),
      runs(600, 29),
    );
    expect(read).toBeGreaterThan(50);
  });

  it("open an edited archive, or say why not", () => {
    const whole = pack({
      "a.txt": new TextEncoder().encode("x".repeat(500)),
      "b/c.txt": new TextEncoder().encode("y"),
    });
    expect(Object.keys(unpack("a.zip", whole)).sort()).toEqual(["a.txt", "b/c.txt"]);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 }),
        fc.nat(whole.length),
        (changes, cut) => {
          const bad = whole.slice(0, cut % 3 === 0 ? cut : whole.length);
          for (const [at, byte] of changes) if (at < bad.length) bad[at] = byte;
          try {
            unpack("a.zip", bad);
          } catch (error) {
            expect(error).toBeInstanceOf(Unreadable);
          }
        },
      ),
      runs(600, 30),
    );
  });
});
