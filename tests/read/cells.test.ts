/** Cells cut as places in a file's bytes are those that splitting the text gives, and their numbers those of the text. */

import { expect, it } from "vitest";
import { cutCsv, isBlank, rowCount, rowOf } from "../../src/read/cells.js";
import { splitCsv } from "../../src/read/csv.js";
import { readNumber } from "../../src/read/number.js";
import fc from "../tools/properties.js";

const any = fc
  .array(fc.constantFrom("1", "20", "3.5", "4,5", ",", ";", ".", "\n", "\r", "\r\n", " ", "-", "é", "µ", "😀", '"'), {
    maxLength: 40,
  })
  .map((parts) => parts.join(""));

it("cuts as splitCsv does", () => {
  fc.assert(
    fc.property(any, fc.constantFrom(",", ";"), (text, delimiter) => {
      const { rows, lines, quoted, unclosed } = splitCsv(text, delimiter);
      const cells = cutCsv(text, delimiter, ".");
      const found = Array.from({ length: rowCount(cells) }, (_, row) => rowOf(cells, row));
      expect(found).toEqual(rows);
      expect([...cells.lines]).toEqual(lines);
      expect([cells.quoted, cells.unclosed]).toEqual([quoted, unclosed]);
      rows.forEach((row, r) => {
        row.forEach((cell, k) => {
          expect(isBlank(cells, r, k)).toBe(cell.trim() === "");
        });
      });
    }),
    { numRuns: 500 },
  );
});

it("gives a number only where the text is that number", () => {
  fc.assert(
    fc.property(any, fc.constantFrom(".", ",") as fc.Arbitrary<"." | ",">, (text, decimal) => {
      const cells = cutCsv(text, ";", decimal);
      splitCsv(text, ";").rows.forEach((row, r) => {
        row.forEach((cell, k) => {
          const number = cells.numbers[(cells.rows[r] as number) + k] as number;
          if (!Number.isNaN(number)) expect(number).toBe(readNumber(cell, decimal));
        });
      });
    }),
    { numRuns: 500 },
  );
});

it("reads the plain numbers of a file in passing", () => {
  const written = ["0", "12", "3.5", "0.257", ".5", "7.", "123456789", "0000000.1"];
  const { numbers } = cutCsv(written.join(","), ",", ".");
  expect([...numbers]).toEqual(written.map(Number));
  for (const other of [",", ".", "1.2.3", "-1", "1e3", "1234567890", " 1", "1 2", "x"])
    expect(cutCsv(other, ",", ".").numbers[0] ?? Number.NaN).toBeNaN();
});
