import type { Cell, Column, Table } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import {
  type Context,
  cellText,
  decimalsOf,
  nameOf,
  opening,
  sentence,
  told,
  toldSentence,
  unitText,
} from "./context.js";
import { shortCitation } from "./sources.js";
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
  const [first, ...others] = columns;
  const rows = table.rows.map((row) => ({
    head: printed(context, first, row[0]),
    headNumber: first?.number === true,
    cells: others.map((column, i) => ({ text: printed(context, column, row[i + 1]), number: column.number })),
  }));
  const half = widthOf(columns, rows, place) <= HALF[place];
  return {
    id,
    caption,
    hasCaption: caption !== "",
    columns,
    rows,
    note,
    hasNote: note !== "",
    wide: columns.length > 7,
    crowded: columns.length > 11,
    short: table.rows.length <= (half ? SHORT : SHORT / 2),
    half,
  };
}

/** A cell by what its column is of: a measure's name, a reference table's authors, a unit, a change with its sign. */
function printed(context: Context, column: PrintedColumn | undefined, cell: Cell | undefined): string {
  if (column === undefined || typeof cell !== "string" || cell === "")
    return cellText(context, cell, column?.decimals ?? 0);
  if (column.key === "measure" && measureInfo(cell) !== undefined) return nameOf(context, cell);
  if (column.key === "table") return shortCitation(context, cell);
  if (column.key === "unit") return unitText(context, cell);
  if (!NUMBER.test(cell)) return cellText(context, cell, column.decimals);
  const [value, decimals] = [Number(cell), decimalsOf(cell)];
  return column.key === "change" ? context.speech.signed(value, decimals) : context.speech.number(value, decimals);
}
/** A number that was recorded as text, because rows differ in decimals. */
const NUMBER = /^-?\d+(?:\.\d+)?$/;

/** Rows that are kept on one page. */
const SHORT = 16;
/** Letters of a table's line that half of the page holds. */
const HALF = { text: 64, data: 72 } as const;
/** Letters that the space between two columns takes, and letters of a cell from where on it wraps. */
const GAP = 2;
const WRAPS = { text: 40, data: 20 } as const;

/** The width of a table in letters: each column as wide as its longest cell and as the longest word of its title. */
function widthOf(columns: TableView["columns"], rows: TableView["rows"], place: "text" | "data"): number {
  return columns.reduce((sum, { title, unit }, i) => {
    const words = [...title.split(" "), unit].map((word) => word.length);
    const length = (row: TableView["rows"][number]) => (i === 0 ? row.head : row.cells[i - 1]?.text)?.length ?? 0;
    const cells = rows.reduce((most, row) => Math.max(most, length(row)), 0);
    return sum + GAP + Math.max(...words, Math.min(WRAPS[place], cells));
  }, 0);
}

/** Columns nobody filled (power on a treadmill) say nothing; the first column names the row and stays. */
const withoutEmptyColumns = (table: Plain): Plain =>
  keeping(table, (i) => i === 0 || table.rows.some((row) => row[i] !== null && row[i] !== undefined && row[i] !== ""));

/** The columns that `kept` says yes to. */
function keeping(table: Plain, kept: (column: number) => boolean): Plain {
  const at = [...table.columns.keys()].filter(kept);
  if (at.length === table.columns.length) return table;
  const keep = <T>(list: readonly T[]): T[] => at.map((i) => list[i] as T);
  return { columns: keep(table.columns), rows: table.rows.map(keep) };
}

/** Rows cite few works again and again: the table carries their numbers, the line below it their names. */
function withNumberedSources(context: Context, table: Plain, said: string): { table: Plain; note: string } {
  const { speech } = context;
  const at = table.columns.findIndex((column) => column.key === "source");
  if (at < 1) return { table, note: said };
  const cited = table.rows.map((row) => row[at]).filter((cell) => typeof cell === "string" && cell !== "");
  const works = [...new Set(cited as string[])];
  const note = (text: string) => [said, text].filter((part) => part !== "").join(" ");
  if (!works.some((work) => work.length > BRIEF)) return { table, note: said };
  const [only] = works;
  if (works.length === 1 && cited.length === table.rows.length && only !== undefined) {
    const source = speech.say("report.figure_source", { source: toldSentence(context, only) });
    return { table: keeping(table, (i) => i !== at), note: note(source) };
  }
  const numbered = (row: readonly Cell[]): Cell[] =>
    row.map((cell, i) => (i === at && typeof cell === "string" && cell !== "" ? `[${works.indexOf(cell) + 1}]` : cell));
  const list = works.map((work, i) => `[${i + 1}] ${toldSentence(context, work)}`).join(" ");
  return {
    table: { columns: table.columns, rows: table.rows.map(numbered) },
    note: note(speech.say("report.figure_source", { source: list })),
  };
}
/** Letters of a source that a column holds without wrapping. */
const BRIEF = 10;

/** A word that stands in every row of a long table is said once, below it; so is one that stands in hardly any. */
function withoutConstantColumns(context: Context, table: Plain, said: string): { table: Plain; note: string } {
  const { columns, rows } = table;
  if (rows.length < MANY) return { table, note: said };
  const constant = columns.map((_, i) => i > 0 && isWord(rows[0]?.[i]) && rows.every((row) => row[i] === rows[0]?.[i]));
  const words = (i: number) => rows.filter((row) => isWord(row[i]));
  const sparse = columns.map(
    (_, i) => i > 0 && rows.every((row) => typeof row[i] !== "number") && words(i).length * SPARSE <= rows.length,
  );
  const once = columns.flatMap((column, i) =>
    constant[i]
      ? [sentence(`${columnTitle(context, column)}: ${told(context, String(rows[0]?.[i]))}`)]
      : sparse[i]
        ? words(i).map((row) => sentence(`${told(context, String(row[0]))}: ${told(context, String(row[i]))}`))
        : [],
  );
  return {
    table: keeping(table, (i) => !constant[i] && !sparse[i]),
    note: [said, ...once].filter((part) => part !== "").join(" "),
  };
}
const MANY = 8;
/** A column of words in fewer than one row of so many is said below the table too. */
const SPARSE = 12;
const isWord = (cell: Cell | undefined): boolean => typeof cell === "string" && cell !== "";

/** A column of one visit is headed by its date, which is in the report's language already. */
const columnTitle = (context: Context, { key, title }: Column): string =>
  context.speech.find(`columns.${key}`) ?? opening(/^visit_\d+$/.test(key) ? title : told(context, title));

/** Columns as they are printed, with one number of decimals each: the most any cell needs, so that points align. */
function columnsOf(context: Context, { columns, rows }: Plain, place: "text" | "data"): PrintedColumn[] {
  const { speech } = context;
  return columns.map((column, i) => {
    const brief = place === "data" ? speech.find(`brief.${column.key}`) : undefined;
    const unit = unitText(context, column.unit ?? "");
    return {
      title: brief ?? columnTitle(context, column),
      unit,
      hasUnit: unit !== "",
      key: column.key,
      long: rows.some((row) => typeof row[i] === "string" && row[i].length > WRAPS.text),
      number: rows.some((row) => isNumber(row[i])) && rows.every((row) => isNumber(row[i]) || !isWord(row[i])),
      decimals: column.decimals ?? rows.reduce((most, row) => Math.max(most, decimalsIn(row[i])), 0),
    };
  });
}
type PrintedColumn = TableView["columns"][number] & { readonly key: string; readonly decimals: number };
const isNumber = (cell: Cell | undefined): boolean =>
  typeof cell === "number" || (typeof cell === "string" && WRITTEN.test(cell));
/** A number as it is printed, with the mark that sends to a remark. */
const WRITTEN = /^[-+\u2212]?\d[\d\u202f]*(?:[.,]\d+)?\*?$/;
const decimalsIn = (cell: Cell | undefined): number =>
  typeof cell !== "number" || Number.isInteger(cell) ? 0 : Math.min(3, String(cell).split(".")[1]?.length ?? 0);

export const entryTable = (context: Context, table: Table, place: "text" | "data" = "text"): TableView =>
  tableView(
    context,
    `table-${table.id.replaceAll("_", "-")}`,
    nameOf(context, table.id),
    table,
    table.note === undefined ? "" : toldSentence(context, table.note),
    place,
  );
