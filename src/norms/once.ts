/** What is read of a table's page (its rows, its columns, whom it covers) is read once: tables never change. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";

export function once<Page extends object, T>(read: (table: ReferenceTable, page: Page) => T) {
  const known = new WeakMap<Page, T>();
  return (table: ReferenceTable, page: Page): T => {
    const was = known.get(page);
    if (was !== undefined) return was;
    const made = read(table, page);
    known.set(page, made);
    return made;
  };
}
