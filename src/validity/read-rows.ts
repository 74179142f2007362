/** Rows of a table entry, by column key. */
import type { Entry } from "../kernel/measure.js";

export type NumberRow = Readonly<Record<string, number | string | null>>;

/** Rows of a table, made once: several rules read the same one. */
const read = new WeakMap<Entry, readonly NumberRow[]>();

/** Each row as key → cell; none when the entry is no table. */
export function readRows(entry: Entry | undefined): readonly NumberRow[] {
  if (entry?.kind !== "table") return [];
  const known = read.get(entry);
  if (known !== undefined) return known;
  const rows = entry.rows.map((cells) =>
    Object.fromEntries(entry.columns.map((column, i) => [column.key, cells[i] ?? null])),
  );
  read.set(entry, rows);
  return rows;
}

/** Values of one column of rows that hold a number in all `keys`. */
export function columns(rows: readonly NumberRow[], ...keys: readonly string[]): number[][] {
  const whole = rows.filter((row) => keys.every((key) => typeof row[key] === "number"));
  return keys.map((key) => whole.map((row) => row[key] as number));
}
