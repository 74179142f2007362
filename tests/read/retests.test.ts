import { describe, expect, it } from "vitest";
import { readPairs } from "../../src/read/retests.js";

const read = (text: string) => readPairs("retests/a.csv", new TextEncoder().encode(text));

describe("a laboratory's retest file", () => {
  it("gives pairs, whatever the separator and the decimal mark", () => {
    const pairs = [
      [62.5, 67],
      [78, 76.25],
    ];
    expect(read("test,retest\n62.5,67\n78,76.25\n").pairs).toEqual(pairs);
    expect(read("\ufeffRetest;Test\r\n67;62,5\r\n\r\n76,25;78\r\n").pairs).toEqual(pairs);
  });

  it("names line and column of a cell that is no number, and uses nothing of the file silently", () => {
    const { diagnostics } = read("test,retest\n62,67\n78,\nabc,70\n");
    expect(diagnostics.map((d) => [d.at.line, d.at.header, d.found])).toEqual([
      [3, "retest", '""'],
      [4, "test", '"abc"'],
    ]);
    expect(diagnostics.every((d) => d.code === "retest-file" && d.severity === "error")).toBe(true);
  });

  it("asks for its two columns, and for closed quotation marks", () => {
    expect(read("first,second\n1,2\n").diagnostics[0]).toMatchObject({
      found: "the columns first, second",
      at: { line: 1 },
    });
    expect(read("").diagnostics[0]?.found).toMatch(/the columns/);
    expect(read('test,retest\n"1,2\n').diagnostics[0]).toMatchObject({ at: { line: 2 } });
  });
});
