/** Reads rows of a table another domain wrote, by column key. */
import type { Cell, Table } from "../../kernel/measure.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook } from "../../kernel/notebook.js";

export interface Row {
  /** The cell as a number, or undefined when it is empty or a word. */
  number(key: string): number | undefined;
  text(key: string): string | undefined;
}

/** Made once a table: several indices read the same ones. */
const known = new WeakMap<Table, readonly Row[]>();

/** Rows of the table, or none when it is absent or not given. */
export function readTable(book: Notebook, id: MeasureId): readonly Row[] {
  const entry = book.entry(id);
  if (entry?.kind !== "table") return [];
  const rows = known.get(entry) ?? rowsOf(entry);
  known.set(entry, rows);
  return rows;
}

function rowsOf(table: Table): readonly Row[] {
  const at = new Map(table.columns.map((column, i) => [column.key, i]));
  return table.rows.map((cells): Row => {
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
  const lists = keys.map((): number[] => []);
  for (const row of rows) {
    const numbers = keys.map((key) => row.number(key));
    if (numbers.every((x) => x !== undefined))
      for (let k = 0; k < keys.length; k++) lists[k]?.push(numbers[k] as number);
  }
  return lists;
}
