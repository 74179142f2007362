/**
 * A laboratory's test-retest file: CSV with the columns `test` and `retest`, one pair a row. A pair with a missing or
 * unreadable cell is a fault, not a silent gap: the typical error stands on every pair.
 */
import type { Diagnostic } from "../kernel/diagnostic.js";
import { splitCsv } from "./csv.js";
import { decodeLeniently } from "./decode.js";
import { readNumber } from "./number.js";

export interface PairsReading {
  readonly pairs: readonly (readonly [test: number, retest: number])[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Bytes of a file below the practice folder to pairs, in the measure's unit. Semicolons and decimal commas are understood. */
export function readPairs(path: string, bytes: Uint8Array): PairsReading {
  const text = decodeLeniently(bytes);
  const delimiter = text.split(/\r|\n/, 1)[0]?.includes(";") ? ";" : ",";
  const { rows, lines, unclosed } = splitCsv(text, delimiter);
  const fault = (found: string, expected: string, line: number, header?: string): Diagnostic => ({
    code: "retest-file",
    severity: "error",
    at: { file: path, line, column: 1, ...(header === undefined ? {} : { header }) },
    found,
    expected,
    why: "the laboratory's typical error, and with it every verdict on change, stands on these pairs",
    fix: "correct the cell, or delete the row and say so in the commit",
  });
  if (unclosed !== undefined)
    return {
      pairs: [],
      diagnostics: [fault("a quotation mark that is never closed", "closed quotation marks", unclosed)],
    };
  const header = (rows[0] ?? []).map((cell) => cell.trim().toLowerCase());
  const [testAt, retestAt] = [header.indexOf("test"), header.indexOf("retest")];
  if (testAt < 0 || retestAt < 0)
    return {
      pairs: [],
      diagnostics: [fault(`the columns ${header.join(", ") || "(none)"}`, "the columns test and retest", 1)],
    };
  const pairs: (readonly [number, number])[] = [];
  const diagnostics: Diagnostic[] = [];
  rows.slice(1).forEach((row, i) => {
    if (row.every((cell) => cell.trim() === "")) return;
    const cells = [row[testAt] ?? "", row[retestAt] ?? ""].map((cell) => cell.trim());
    const values = cells.map((cell) => readNumber(cell, delimiter === ";" ? "," : "."));
    const bad = values.findIndex((value) => !Number.isFinite(value));
    if (bad >= 0)
      diagnostics.push(fault(`"${cells[bad]}"`, "a number", lines[i + 1] ?? 1, bad === 0 ? "test" : "retest"));
    else pairs.push([values[0] as number, values[1] as number]);
  });
  return { pairs, diagnostics };
}
