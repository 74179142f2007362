/** Entries of recorded results by id. */
import type { Entry, Quantity } from "../kernel/measure.js";
import type { Results } from "../kernel/results.js";

/** Entries of a visit by id, made once a visit: every measure is looked up many times. */
const indexes = new WeakMap<Results, ReadonlyMap<string, Entry>>();

export function entryOf(results: Results, id: string): Entry | undefined {
  let index = indexes.get(results);
  if (index === undefined) {
    index = new Map(results.entries.map((entry) => [entry.id, entry]));
    indexes.set(results, index);
  }
  return index.get(id);
}

/** The value of a measure at a visit, or undefined. */
export function quantityOf(results: Results, id: string): Quantity | undefined {
  const entry = entryOf(results, id);
  return entry?.kind === "quantity" ? entry : undefined;
}
