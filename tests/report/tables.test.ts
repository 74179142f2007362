/** Tables as they are printed: numbers recorded as text align, sign and unit are the report's, short words stay whole. */
import { describe, expect, it } from "vitest";
import { speechOf } from "../../src/kernel/speech.js";
import type { Context } from "../../src/report/view/context.js";
import { tableView } from "../../src/report/view/tables.js";
import { inputOf, wordsOf } from "./assets.js";

const contextIn = (language: string): Context => ({
  ...inputOf("practitioner", language),
  speech: speechOf(wordsOf(language)),
  drawn: new Map(),
});
const others = {
  columns: ["measure", "before", "now", "change", "unit", "verdict"].map((key) => ({ key, title: key })),
  rows: [
    ["Waist circumference", "78.7", "76.3", "-2.4", "cm", "error not known"],
    ["Resting heart rate", "59", "62", "3", "1/min", "not answered"],
    ["vo2_peak_per_mass", "0.79", "0.78", "-0.01", "ratio", ""],
  ],
};
const view = (language: string) => tableView(contextIn(language), "t", "", others);

describe("a table of numbers recorded as text", () => {
  it("aligns them, with the sign of a change, a true minus and the unit as it is printed", () => {
    const { columns, rows } = view("en");
    expect(columns.map((column) => column.number)).toEqual([false, true, true, true, false, false]);
    expect(rows[0]?.cells.map((cell) => cell.text)).toEqual(["78.7", "76.3", "−2.4", "cm", "error not known"]);
    expect(rows[1]?.cells.map((cell) => cell.text)).toEqual(["59", "62", "+3", "per min", "not\u00a0answered"]);
    expect(rows[2]?.cells[3]?.text).toBe("");
  });
  it("has the decimal sign of the language", () => {
    expect(view("de").rows[0]?.cells[2]?.text).toBe("−2,4");
  });
  it("names a measure by its title", () => {
    expect(view("en").rows[2]?.head).toBe("Peak oxygen uptake per kilogram");
  });
  it("marks a column of sentences, which needs room on a phone", () => {
    const said = {
      columns: others.columns.slice(0, 2),
      rows: [["a", "walk: 10 min easy, then 2 × 4 min hard, 3 min easy between"]],
    };
    expect(tableView(contextIn("en"), "t", "", said).columns.map((column) => column.long)).toEqual([false, true]);
  });
  it("leaves a column with a word among its numbers as words", () => {
    const mixed = {
      columns: others.columns.slice(0, 2),
      rows: [
        ["a", "1"],
        ["b", "two"],
      ],
    };
    expect(tableView(contextIn("en"), "t", "", mixed).columns[1]?.number).toBe(false);
  });
});
