/** What no cell of a reference table can be: text where a number is due, a limit without its sign, a spread of zero. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import type { Person } from "./person.js";
import { columnsOf, type Row, rowsFor } from "./rows.js";

const LIMIT = /^(?:<|<=|>|>=) -?\d+(?:\.\d+)?$/;
/** Parameters of a distribution: each row needs them. */
const NEEDED = ["M", "S", "sigma", "L", "mean", "sd"];
/** Of those, the ones that nothing can be divided by, or taken the logarithm of, at zero. */
const ABOVE_ZERO = ["M", "S", "sigma", "sd"];

/** Sentences, one a cell. The rows have as many cells as there are columns. */
export const cellFaults = (table: ReferenceTable, sex: Person["sex"]): readonly string[] =>
  rowsFor(table, sex).flatMap((row) =>
    columnsOf(table).flatMap((column, i) => {
      const wanted = wantedIn(table, column, row[i] ?? null);
      const shown = JSON.stringify(row[i]);
      return wanted === undefined
        ? []
        : [`${sex}: the row that begins ${row[0]} holds ${shown} under ${column}: ${wanted} is due`];
    }),
  );

/** What is due in place of a cell, or undefined where it is sound. */
function wantedIn(table: ReferenceTable, column: string, cell: Row[number]): string | undefined {
  if (table.kind === "classes") {
    if (column === "class") return typeof cell === "string" && cell !== "" ? undefined : "the name of the class";
    if (column !== "lower" && column !== "upper") return undefined;
    return cell === null || LIMIT.test(String(cell)) ? undefined : 'a limit with its sign, such as ">= 18.5", or null';
  }
  if (NEEDED.includes(column)) {
    if (typeof cell !== "number") return "a number";
    return ABOVE_ZERO.includes(column) && cell <= 0 ? "a number above 0" : undefined;
  }
  return cell === null || typeof cell === "number" ? undefined : "a number, or null where nothing is printed";
}
