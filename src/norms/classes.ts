/** The class a value falls in: limits with their comparison signs, as printed. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import { roundTo } from "../kernel/rounding.js";
import type { Person } from "./person.js";
import { bandOf, columnsOf, rowsFor } from "./rows.js";

/** Undefined where the printed classes leave a gap at this value. */
export function classOf(table: ReferenceTable, person: Person, value: number): string | undefined {
  const x = table.compare_decimals === undefined ? value : roundTo(value, table.compare_decimals);
  return table.kind === "classes" ? fromList(table, person, x) : fromLimits(table, person, x);
}

function fromList(table: ReferenceTable, person: Person, x: number): string | undefined {
  const found = rowsFor(table, person.sex).find(([, lower, upper]) => holds(lower, x) && holds(upper, x));
  return found === undefined ? undefined : String(found[0]);
}

/** Columns "< low", ">= fair", ">= good": the last sign that holds names the class; `below` names what lies under all. */
function fromLimits(table: ReferenceTable, person: Person, x: number): string | undefined {
  const row = bandOf(table, person)?.row;
  if (row === undefined) return undefined;
  let under: string | undefined;
  let found: string | undefined;
  let first = Number.POSITIVE_INFINITY;
  columnsOf(table).forEach((column, i) => {
    const match = /^(>=|>|<=|<) (.+)$/.exec(column);
    const limit = row[i];
    if (match === null || typeof limit !== "number") return;
    const [, sign = "", name = ""] = match;
    if (sign.startsWith("<")) under = holds(`${sign} ${limit}`, x) ? name : under;
    else {
      first = Math.min(first, limit);
      if (holds(`${sign} ${limit}`, x)) found = name;
    }
  });
  return found ?? under ?? (x < first ? table.below : undefined);
}

/** null: no limit on this side. */
function holds(limit: number | string | null | undefined, x: number): boolean {
  if (limit === null || limit === undefined) return true;
  const [sign, number] = String(limit).split(" ");
  const edge = Number(number);
  switch (sign) {
    case "<":
      return x < edge;
    case "<=":
      return x <= edge;
    case ">":
      return x > edge;
    case ">=":
      return x >= edge;
    default:
      throw new Error(`the class limit "${limit}" has no comparison sign`);
  }
}
