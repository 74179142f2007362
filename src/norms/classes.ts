/** The class a value falls in: limits with their comparison signs, as printed. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import { roundTo } from "../kernel/rounding.js";
import { once } from "./once.js";
import type { Person } from "./person.js";
import { bandOf, columnsOf, type Row, rowsFor } from "./rows.js";

/** Undefined where the printed classes leave a gap at this value. */
export function classOf(table: ReferenceTable, person: Person, value: number): string | undefined {
  const x = table.compare_decimals === undefined ? value : roundTo(value, table.compare_decimals);
  return table.kind === "classes" ? fromList(table, person, x) : fromLimits(table, person, x);
}

const fromList = (table: ReferenceTable, person: Person, x: number): string | undefined =>
  classesIn(table, rowsFor(table, person.sex)).find(({ lower, upper }) => lower(x) && upper(x))?.name;

const classesIn = once((_table, rows: readonly Row[]) =>
  rows.map(([name, lower, upper]) => ({ name: String(name), lower: limitOf(lower), upper: limitOf(upper) })),
);

/** Columns "< low", ">= fair", ">= good": the last sign that holds names the class; `below` names what lies under all. */
function fromLimits(table: ReferenceTable, person: Person, x: number): string | undefined {
  const row = bandOf(table, person)?.row;
  if (row === undefined) return undefined;
  let under: string | undefined;
  let found: string | undefined;
  let first = Number.POSITIVE_INFINITY;
  for (const { sign, name, edge, holds } of limitsIn(table, row)) {
    if (sign.startsWith("<")) under = holds(x) ? name : under;
    else {
      first = Math.min(first, edge);
      if (holds(x)) found = name;
    }
  }
  return found ?? under ?? (x < first ? table.below : undefined);
}

const limitsIn = once((table, row: Row) =>
  columnsOf(table).flatMap((column, i) => {
    const [, sign, name] = /^(>=|>|<=|<) (.+)$/.exec(column) ?? [];
    const edge = row[i];
    if (sign === undefined || typeof edge !== "number") return [];
    return [{ sign, name, edge, holds: limitOf(`${sign} ${edge}`) }];
  }),
);

/** "< 18.5" as a question; null: no limit on this side. */
function limitOf(printed: number | string | null | undefined): (x: number) => boolean {
  if (printed === null || printed === undefined) return () => true;
  const [sign, number] = String(printed).split(" ");
  const edge = Number(number);
  switch (sign) {
    case "<":
      return (x) => x < edge;
    case "<=":
      return (x) => x <= edge;
    case ">":
      return (x) => x > edge;
    case ">=":
      return (x) => x >= edge;
    default:
      throw new Error(`the class limit "${printed}" has no comparison sign`);
  }
}
