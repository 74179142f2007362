/** Looks into recorded results: the printed digits, which is all a plan is made from. */
import * as entries from "../kernel/entries.js";
import type { Judgement, Quantity, Table } from "../kernel/measure.js";
import type { MeasureId } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";

export { columnOf } from "../kernel/entries.js";

export const quantityOf: (results: Results, id: MeasureId) => Quantity | undefined = entries.quantityOf;
export const judgementOf: (results: Results, id: MeasureId) => Judgement | undefined = entries.judgementOf;
export const tableOf: (results: Results, id: MeasureId) => Table | undefined = entries.tableOf;
export const numberOf = (results: Results, id: MeasureId): number | undefined => quantityOf(results, id)?.value;

/** The client's visits before this one, newest first. */
export const before = (results: Results, earlier: readonly Results[]): readonly Results[] =>
  earlier
    .filter((visit) => visit.client === results.client && visit.date < results.date)
    .sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
