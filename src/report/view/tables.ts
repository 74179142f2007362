import type { Cell, Column, Table } from "../../kernel/measure.js";
import { type Context, cellText, nameOf, opening, unitText } from "./context.js";
import type { TableView } from "./types.js";

interface Plain {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

/** A table as text. A column is one of numbers when every cell it has is a number: those align on the point. */
export function tableView(context: Context, id: string, caption: string, whole: Plain, note = ""): TableView {
  const table = withoutEmptyColumns(whole);
  const columns = columnsOf(context, table);
  const numeric = (i: number) =>
    table.rows.some((row) => typeof row[i] === "number") && table.rows.every((row) => typeof row[i] !== "string");
  return {
    id,
    caption,
    hasCaption: caption !== "",
    columns: columns.map((column, i) => ({
      title: column.title,
      unit: unitText(context, column.unit ?? ""),
      number: numeric(i),
    })),
    rows: table.rows.map((row) => ({
      head: cellText(context, row[0], columns[0] ?? EMPTY),
      headNumber: numeric(0),
      cells: columns
        .slice(1)
        .map((column, i) => ({ text: cellText(context, row[i + 1], column), number: numeric(i + 1) })),
    })),
    note,
    hasNote: note !== "",
    wide: columns.length > 7,
    crowded: columns.length > 11,
    short: table.rows.length <= 16,
  };
}

/** Columns nobody filled (power on a treadmill) say nothing; the first column names the row and stays. */
function withoutEmptyColumns({ columns, rows }: Plain): Plain {
  const filled = columns.map(
    (_, i) => i === 0 || rows.some((row) => row[i] !== null && row[i] !== undefined && row[i] !== ""),
  );
  const keep = <T>(list: readonly T[]): T[] => list.filter((_, i) => filled[i]);
  return { columns: keep(columns), rows: rows.map((row) => keep(columns.map((_, i) => row[i] ?? null))) };
}

const EMPTY: Column = { key: "", title: "" };

/** Columns with one number of decimals each: the most any cell needs, so that points align. */
function columnsOf({ speech }: Context, { columns, rows }: Plain): Column[] {
  return columns.map((column, i) => {
    const title = speech.find(`columns.${column.key}`) ?? opening(column.title);
    if (column.decimals !== undefined) return { ...column, title };
    const decimals = Math.max(0, ...rows.map((row) => decimalsIn(row[i])));
    return { ...column, title, decimals };
  });
}
const decimalsIn = (cell: Cell | undefined): number =>
  typeof cell === "number" ? Math.min(3, String(cell).split(".")[1]?.length ?? 0) : 0;

export const entryTable = (context: Context, table: Table): TableView =>
  tableView(context, `table-${table.id.replaceAll("_", "-")}`, nameOf(context, table.id), table, table.note ?? "");
