/** Rows of a table entry, by column key. */
import type { Entry } from "../kernel/measure.js";

export type NumberRow = Readonly<Record<string, number | string | null>>;

/** Each row as key → cell; none when the entry is no table. */
export function readRows(entry: Entry | undefined): readonly NumberRow[] {
  if (entry?.kind !== "table") return [];
  return entry.rows.map((cells) =>
    Object.fromEntries(entry.columns.map((column, i) => [column.key, cells[i] ?? null])),
  );
}

/** Values of one column of rows that hold a number in all `keys`. */
export function columns(rows: readonly NumberRow[], ...keys: readonly string[]): number[][] {
  const whole = rows.filter((row) => keys.every((key) => typeof row[key] === "number"));
  return keys.map((key) => whole.map((row) => row[key] as number));
}
