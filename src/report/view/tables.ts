import type { Cell, Column, Table } from "../../kernel/measure.js";
import { type Context, cellText, nameOf, opening, sentence, unitText } from "./context.js";
import type { TableView } from "./types.js";

interface Plain {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

/** A table as text. A column is one of numbers when every cell it has is a number: those align on the point. */
export function tableView(
  context: Context,
  id: string,
  caption: string,
  whole: Plain,
  said = "",
  place: "text" | "data" = "text",
): TableView {
  const numbered = withNumberedSources(context, withoutEmptyColumns(whole), said);
  const { table, note } = withoutConstantColumns(context, numbered.table, numbered.note);
  const columns = columnsOf(context, table, place);
  const numeric = (i: number) =>
    table.rows.some((row) => typeof row[i] === "number") && table.rows.every((row) => typeof row[i] !== "string");
  return {
    id,
    caption,
    hasCaption: caption !== "",
    columns: columns.map((column, i) => ({
      title: column.title,
      unit: unitText(context, column.unit ?? ""),
      hasUnit: unitText(context, column.unit ?? "") !== "",
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
    short: table.rows.length <= (widthOf(context, table, columns, place) <= HALF[place] ? SHORT : SHORT / 2),
    half: widthOf(context, table, columns, place) <= HALF[place],
  };
}

/** Rows that are kept on one page. */
const SHORT = 16;
/** Letters of a table's line that half of the page holds. */
const HALF = { text: 64, data: 72 } as const;
/** Letters that the space between two columns takes, and letters of a cell from where on it wraps. */
const GAP = 2;
const WRAPS = { text: 40, data: 20 } as const;

/** The width of a table in letters: each column as wide as its longest cell and as the longest word of its title. */
function widthOf(context: Context, { rows }: Plain, columns: readonly Column[], place: "text" | "data"): number {
  return columns.reduce((sum, column, i) => {
    const words = [...column.title.split(" "), unitText(context, column.unit ?? "")];
    const cells = rows.map((row) => Math.min(WRAPS[place], cellText(context, row[i], column).length));
    return sum + GAP + Math.max(...words.map((word) => word.length), ...cells);
  }, 0);
}

/** Columns nobody filled (power on a treadmill) say nothing; the first column names the row and stays. */
function withoutEmptyColumns({ columns, rows }: Plain): Plain {
  const filled = columns.map(
    (_, i) => i === 0 || rows.some((row) => row[i] !== null && row[i] !== undefined && row[i] !== ""),
  );
  const keep = <T>(list: readonly T[]): T[] => list.filter((_, i) => filled[i]);
  return { columns: keep(columns), rows: rows.map((row) => keep(columns.map((_, i) => row[i] ?? null))) };
}

/** Rows cite few works again and again: the table carries their numbers, the line below it their names. */
function withNumberedSources({ speech }: Context, table: Plain, said: string): { table: Plain; note: string } {
  const at = table.columns.findIndex((column) => column.key === "source");
  const cited = table.rows.map((row) => row[at]).filter((cell) => typeof cell === "string" && cell !== "");
  const works = [...new Set(cited as string[])];
  const note = (text: string) => [said, text].filter((part) => part !== "").join(" ");
  if (at < 1 || works.length === 0 || !works.some((work) => work.length > BRIEF)) return { table, note: said };
  const [only] = works;
  if (works.length === 1 && cited.length === table.rows.length && only !== undefined) {
    const without = <T>(list: readonly T[]): T[] => list.filter((_, i) => i !== at);
    const source = speech.say("report.figure_source", { source: sentence(only) });
    return { table: { columns: without(table.columns), rows: table.rows.map(without) }, note: note(source) };
  }
  const numbered = (row: readonly Cell[]): Cell[] =>
    row.map((cell, i) => (i === at && typeof cell === "string" && cell !== "" ? `[${works.indexOf(cell) + 1}]` : cell));
  const list = works.map((work, i) => `[${i + 1}] ${sentence(work)}`).join(" ");
  return {
    table: { columns: table.columns, rows: table.rows.map(numbered) },
    note: note(speech.say("report.figure_source", { source: list })),
  };
}
/** Letters of a source that a column holds without wrapping. */
const BRIEF = 10;

/** A word that stands in every row of a long table is said once, below it; so is one that stands in hardly any. */
function withoutConstantColumns({ speech }: Context, table: Plain, said: string): { table: Plain; note: string } {
  const { columns, rows } = table;
  if (rows.length < MANY) return { table, note: said };
  const constant = columns.map((_, i) => i > 0 && isWord(rows[0]?.[i]) && rows.every((row) => row[i] === rows[0]?.[i]));
  const words = (i: number) => rows.filter((row) => isWord(row[i]));
  const sparse = columns.map(
    (_, i) => i > 0 && rows.every((row) => typeof row[i] !== "number") && words(i).length * SPARSE <= rows.length,
  );
  const keep = <T>(list: readonly T[]): T[] => list.filter((_, i) => !constant[i] && !sparse[i]);
  const once = columns.flatMap((column, i) =>
    constant[i]
      ? [sentence(`${speech.find(`columns.${column.key}`) ?? opening(column.title)}: ${String(rows[0]?.[i])}`)]
      : sparse[i]
        ? words(i).map((row) => sentence(`${String(row[0])}: ${String(row[i])}`))
        : [],
  );
  return {
    table: { columns: keep(columns), rows: rows.map(keep) },
    note: [said, ...once].filter((part) => part !== "").join(" "),
  };
}
const MANY = 8;
/** A column of words in fewer than one row of so many is said below the table too. */
const SPARSE = 12;
const isWord = (cell: Cell | undefined): boolean => typeof cell === "string" && cell !== "";

const EMPTY: Column = { key: "", title: "" };

/** Columns with one number of decimals each: the most any cell needs, so that points align. */
function columnsOf({ speech }: Context, { columns, rows }: Plain, place: "text" | "data"): Column[] {
  return columns.map((column, i) => {
    const brief = place === "data" ? speech.find(`brief.${column.key}`) : undefined;
    const title = brief ?? speech.find(`columns.${column.key}`) ?? opening(column.title);
    if (column.decimals !== undefined) return { ...column, title };
    const decimals = Math.max(0, ...rows.map((row) => decimalsIn(row[i])));
    return { ...column, title, decimals };
  });
}
const decimalsIn = (cell: Cell | undefined): number =>
  typeof cell === "number" ? Math.min(3, String(cell).split(".")[1]?.length ?? 0) : 0;

export const entryTable = (context: Context, table: Table, place: "text" | "data" = "text"): TableView =>
  tableView(
    context,
    `table-${table.id.replaceAll("_", "-")}`,
    nameOf(context, table.id),
    table,
    table.note === undefined ? "" : sentence(table.note),
    place,
  );
