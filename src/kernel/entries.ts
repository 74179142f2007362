/** Entries of recorded results by id. */
import type { Entry, Quantity } from "./measure.js";
import type { Results } from "./results.js";

/** Made once a visit: comparing and planning look every measure up many times. */
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
