/** How charts read results: by id and by column key; what is absent is undefined, never zero. */
import { tableOf } from "../kernel/entries.js";
import type { Cell, Table } from "../kernel/measure.js";
import type { Results } from "../kernel/results.js";
import type { Speech } from "../kernel/speech.js";

/** A table that has rows. */
export function table(results: Results, id: string): Table | undefined {
  const found = tableOf(results, id);
  return found !== undefined && found.rows.length > 0 ? found : undefined;
}

type Records = readonly Readonly<Record<string, Cell>>[];

const recorded = new WeakMap<Table, Records>();

/** Rows of a table as records by column key: made once, for a dozen charts ask for the same table. */
export function records(from: Table): Records {
  const known = recorded.get(from);
  if (known) return known;
  const made = from.rows.map((row) => {
    const record: Record<string, Cell> = {};
    for (const [i, { key }] of from.columns.entries()) record[key] = row[i] ?? null;
    return record;
  });
  recorded.set(from, made);
  return made;
}

export const has = (from: Table | undefined, ...keys: string[]): boolean =>
  from !== undefined && keys.every((key) => from.columns.some((column) => column.key === key));

export const numberOf = (cell: Cell | undefined): number | undefined =>
  typeof cell === "number" && Number.isFinite(cell) ? cell : undefined;

/** An axis title that is also the key of the visits: "Heart rate (per min)   ● 18 May 2026   ○ 2 Mar 2026". */
export const visitKey = (title: string, now: Results, before: Results | undefined, speech: Speech): string =>
  before === undefined ? title : `${title}   ● ${speech.shortDate(now.date)}   ○ ${speech.shortDate(before.date)}`;
