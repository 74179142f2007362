/** Entries of recorded results by id. */
import type { Cell, Change, Entry, Judgement, Quantity, Table } from "./measure.js";
import type { Results } from "./results.js";

/** Made once a visit: comparing, planning, charts and reports look every measure up many times. */
const indexes = new WeakMap<Results, ReadonlyMap<string, Entry>>();

export function entryOf(results: Results, id: string): Entry | undefined {
  const index = indexes.get(results) ?? indexOf(results);
  return index.get(id);
}

function indexOf(results: Results): ReadonlyMap<string, Entry> {
  const index = new Map<string, Entry>();
  for (const entry of results.entries) index.set(entry.id, entry);
  indexes.set(results, index);
  return index;
}

/** The value of a measure at a visit, or undefined. */
export function quantityOf(results: Results, id: string): Quantity | undefined {
  const entry = entryOf(results, id);
  return entry?.kind === "quantity" ? entry : undefined;
}

export function judgementOf(results: Results, id: string): Judgement | undefined {
  const entry = entryOf(results, id);
  return entry?.kind === "judgement" ? entry : undefined;
}

export function tableOf(results: Results, id: string): Table | undefined {
  const entry = entryOf(results, id);
  return entry?.kind === "table" ? entry : undefined;
}

/** Changes against the baseline, one a measure; those since another visit have longer ids and stand in the trend. */
export const sinceBaseline = (results: Results): readonly Change[] =>
  results.entries.filter((entry): entry is Change => entry.kind === "change" && entry.id === `change_${entry.measure}`);

/** A column of a table by its key, one cell a row; empty when the table has no such column. */
export function columnOf(table: Table, key: string): readonly Cell[] {
  const at = table.columns.findIndex((column) => column.key === key);
  return at < 0 ? [] : table.rows.map((row) => row[at] ?? null);
}
