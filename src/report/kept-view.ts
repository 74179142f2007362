/**
 * A view of a structure that is refilled with the data of one figure after another. The rows it holds are written over
 * and only the difference in number is added or taken out: Vega then keeps the marks it has (5 of 30 ms a visit).
 */
import type { Datum } from "../kernel/figure.js";

type Vega = typeof import("vega");
export type View = InstanceType<Vega["View"]>;
type Row = Record<string, Datum[string]>;

export interface KeptView {
  readonly view: View;
  /** The rows the view holds now, by data set, in their order: copies, for Vega numbers them. */
  readonly held: Map<string, readonly Row[]>;
}

/**
 * Gives a data set its rows, which all have the same fields; the rows as the view holds them. One that lacks a number is
 * not drawn: Vega would draw it at nought.
 */
export function refill(vega: Vega, { view, held }: KeptView, name: string, given: readonly Datum[]): readonly Row[] {
  const old = held.get(name) ?? [];
  const rows = given.every(isWhole) ? given : given.filter(isWhole);
  if (old.length === 0 && rows.length === 0) return old;
  const now = rows.map((row, i): Row => Object.assign(old[i] ?? {}, row));
  const change = vega.changeset();
  change.remove(old.slice(now.length)).insert(now.slice(old.length));
  if (old.length > 0 && now.length > 0) written(change, now[0] as Row);
  view.change(name, change);
  held.set(name, now);
  return now;
}

function isWhole(row: Datum): boolean {
  for (const value of Object.values(row)) if (value === null || Number.isNaN(value)) return false;
  return true;
}

/** Says that every row was written over, and which fields. */
function written(change: ReturnType<Vega["changeset"]>, row: Row): void {
  for (const [field, value] of Object.entries(row)) change.modify(row as never, field, value as never);
  // Vega's types leave it out.
  (change as unknown as { reflow(): void }).reflow();
}
