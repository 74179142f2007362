/** Splitting of CSV text, held against RFC 4180 and against csv-parse, an independent reader. */
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { splitCsv } from "../../src/read/csv.js";
import { readHours, readMinutes, readNumber } from "../../src/read/number.js";
import fc from "../tools/properties.js";

describe("splitCsv", () => {
  it("reads the forms of RFC 4180, section 2", () => {
    expect(splitCsv("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", ",").rows).toEqual([
      ["aaa", "bbb", "ccc"],
      ["zzz", "yyy", "xxx"],
    ]);
    expect(splitCsv('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx', ",")).toEqual({
      rows: [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
      lines: [1, 3],
      quoted: true,
    });
    expect(splitCsv('"aaa","b""bb","ccc"', ",").rows).toEqual([["aaa", 'b"bb', "ccc"]]);
  });

  it("says where a quotation mark was opened and never closed", () => {
    expect(splitCsv('a,b\n1,"2\n3,4\n', ",").unclosed).toBe(2);
  });

  it("agrees with csv-parse on any table", () => {
    const cell = fc.string({ unit: fc.constantFrom("a", "7", ",", ";", '"', "\n", " ", "é"), maxLength: 6 });
    const table = fc
      .integer({ min: 1, max: 4 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }),
      );
    fc.assert(
      fc.property(table, fc.constantFrom(",", ";", "\t"), (rows, delimiter) => {
        const text = rows.map((row) => row.map((c) => `"${c.replaceAll('"', '""')}"`).join(delimiter)).join("\n");
        const { rows: found, lines } = splitCsv(text, delimiter);
        expect(found).toEqual(parse(text, { delimiter }));
        expect(found).toEqual(rows);
        expect(lines[0]).toBe(1);
      }),
    );
  });

  it("takes the quick way and the careful way to one result", () => {
    const cell = fc.string({ unit: fc.constantFrom("a", "7", ".", " ", "-"), maxLength: 5 });
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 2 }), { minLength: 1 }), (rows) => {
        const plain = rows.map((row) => row.join(",")).join("\n");
        const quoted = rows.map((row) => row.map((c) => `"${c}"`).join(",")).join("\n");
        expect(splitCsv(quoted, ",").rows).toEqual(splitCsv(`${plain}\n`, ",").rows);
        expect(splitCsv(quoted, ",").lines).toEqual(splitCsv(`${plain}\n`, ",").lines);
      }),
    );
  });
});

describe("numbers and times", () => {
  it("reads plain and scientific numbers, and nothing else", () => {
    expect(["1", "-2.5", ".5", "5.", "+3", "1e3", "2E-2"].map((t) => readNumber(t, "."))).toEqual([
      1, -2.5, 0.5, 5, 3, 1000, 0.02,
    ]);
    for (const text of ["", "1,5", "1 000", "0x10", "Infinity", "1e999", "--", "1.2.3", "1.234,5"])
      expect(readNumber(text, "."), text).toBeNaN();
    expect(readNumber("1,5", ",")).toBe(1.5);
    expect(readNumber("1.5", ",")).toBeNaN();
  });

  it("reads clock forms as seconds", () => {
    expect(readHours("1:02:03")).toBe(3723);
    expect(readHours("0:00:09,5")).toBe(9.5);
    expect(readMinutes("12:30")).toBe(750);
    expect(readMinutes("1:02:03")).toBe(3723);
    for (const text of ["1:60:00", "12:61", "a:b", "5"]) expect(readMinutes(text), text).toBeNaN();
  });
});
