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
  const keys = entry.columns.map((column) => column.key);
  const rows = entry.rows.map((cells) => {
    const row: Record<string, number | string | null> = {};
    for (let i = 0; i < keys.length; i++) row[keys[i] as string] = cells[i] ?? null;
    return row;
  });
  read.set(entry, rows);
  return rows;
}

/** Values of one column of rows that hold a number in all `keys`. */
export function columns(rows: readonly NumberRow[], ...keys: readonly string[]): number[][] {
  const whole = rows.filter((row) => keys.every((key) => typeof row[key] === "number"));
  return keys.map((key) => whole.map((row) => row[key] as number));
}
