/** Looks into recorded results: the printed digits, which is all a plan is made from. */
import { entryOf, quantityOf as recordedQuantity } from "../kernel/entries.js";
import type { Judgement, Quantity, Table } from "../kernel/measure.js";
import type { MeasureId } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";

export const quantityOf: (results: Results, id: MeasureId) => Quantity | undefined = recordedQuantity;
export const numberOf = (results: Results, id: MeasureId): number | undefined => quantityOf(results, id)?.value;

export function judgementOf(results: Results, id: MeasureId): Judgement | undefined {
  const entry = entryOf(results, id);
  return entry?.kind === "judgement" ? entry : undefined;
}
export function tableOf(results: Results, id: MeasureId): Table | undefined {
  const entry = entryOf(results, id);
  return entry?.kind === "table" ? entry : undefined;
}

/** The client's visits before this one, newest first. */
export const before = (results: Results, earlier: readonly Results[]): readonly Results[] =>
  earlier
    .filter((visit) => visit.client === results.client && visit.date < results.date)
    .sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));

/** A column of a table by its key, one cell a row; empty when the table has no such column. */
export function columnOf(table: Table, key: string): readonly (number | string | null)[] {
  const at = table.columns.findIndex((column) => column.key === key);
  return at < 0 ? [] : table.rows.map((row) => row[at] ?? null);
}
