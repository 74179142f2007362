/** Reads rows of a table another domain wrote, by column key. */
import type { Cell } from "../../kernel/measure.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook } from "../../kernel/notebook.js";

export interface Row {
  /** The cell as a number, or undefined when it is empty or a word. */
  number(key: string): number | undefined;
  text(key: string): string | undefined;
}

/** Rows of the table, or none when it is absent or not given. */
export function readTable(book: Notebook, id: MeasureId): readonly Row[] {
  const entry = book.entry(id);
  if (entry?.kind !== "table") return [];
  const at = new Map(entry.columns.map((column, i) => [column.key, i]));
  return entry.rows.map((cells): Row => {
    const cell = (key: string): Cell => cells[at.get(key) ?? -1] ?? null;
    return {
      number(key) {
        const value = cell(key);
        return typeof value === "number" ? value : undefined;
      },
      text(key) {
        const value = cell(key);
        return typeof value === "string" ? value : undefined;
      },
    };
  });
}

/** Rows in which all keys hold a number, as lists of numbers, one a key. */
export function numbersOf(rows: readonly Row[], ...keys: readonly string[]): number[][] {
  const complete = rows.filter((row) => keys.every((key) => row.number(key) !== undefined));
  return keys.map((key) => complete.map((row) => row.number(key) as number));
}
