/** Finds the table in a CSV: which delimiter, which line of headers, which rows hold data. */
import { nearest } from "../kernel/near.js";
import { type Cells, isBlank, rowCount, rowOf, widthOf } from "./cells.js";
import { splitCsv, splitLines } from "./csv.js";
import type { FaultList } from "./csv-faults.js";
import { readNumber } from "./number.js";
import type { Columns, SeriesMapping } from "./series-mapping.js";
import { words } from "./words.js";

/** The stated delimiter, or the one that splits the header line into the most mapped headers (then into most cells). */
export function delimiterOf(text: string, mapping: SeriesMapping, columns: Columns, headerRow: number): string {
  if (mapping.delimiter !== undefined) return mapping.delimiter === "tab" ? "\t" : mapping.delimiter;
  const wanted = new Set(columns.flatMap(([, c]) => c.column));
  const header = splitLines(text.slice(0, 100_000), headerRow)[headerRow - 1] ?? "";
  let best = ",";
  let most = -1;
  for (const candidate of [",", ";", "\t", "|"]) {
    const cells = splitCsv(header, candidate).rows[0] ?? [];
    const score = 1000 * cells.filter((c) => wanted.has(c.trim())).length + cells.length;
    if (score > most) {
      best = candidate;
      most = score;
    }
  }
  return best;
}

/** Positions of the rows that hold data: blank ones are passed over, those of the wrong length are faults. */
export function dataRows(
  cells: Cells,
  { first, end }: { readonly first: number; readonly end: number },
  width: number,
  delimiter: string,
  faults: FaultList,
): number[] {
  const kept: number[] = [];
  const blankFrom = (row: number, index: number) => {
    for (let k = index; k < widthOf(cells, row); k++) if (!isBlank(cells, row, k)) return false;
    return true;
  };
  for (let r = first; r < end; r++) {
    const length = widthOf(cells, r);
    if (blankFrom(r, 0) && (length === 1 || length >= width)) continue;
    if (length === width || (length > width && blankFrom(r, width))) kept.push(r);
    else
      faults.add(
        "error",
        "csv-row-length",
        (more) => words.csvRowLength(length, width, more, delimiter === "," && length > width),
        { line: cells.lines[r] ?? 0 },
      );
  }
  return kept;
}

/** How far down a file headers are looked for. */
const TITLE_ROWS = 60;

/** The line among the first ones that holds at least half of the wanted headers. */
function lineWith(cells: Cells, wanted: readonly string[]): number | undefined {
  for (let r = 0; r < Math.min(TITLE_ROWS, rowCount(cells)); r++) {
    const texts = rowOf(cells, r).map((cell) => cell.trim());
    if (2 * wanted.filter((header) => texts.includes(header.trim())).length >= wanted.length) return cells.lines[r];
  }
  return undefined;
}

/** Whether a row right below the headers is one of units: text, none of it a number. */
export function isUnitRow(cells: Cells, row: number, decimal: "." | ","): boolean {
  const texts = rowOf(cells, row).filter((cell) => cell.trim() !== "");
  return (
    texts.length > 1 && texts.every((cell) => Number.isNaN(readNumber(cell.trim(), decimal)) && !/\d:\d/.test(cell))
  );
}

/** Position of each mapped header, -1 where it is missing or stands twice. When none is there, that is one fault. */
export function headerPositions(
  columns: Columns,
  headers: readonly string[],
  line: number,
  cells: Cells,
  faults: FaultList,
): ReadonlyMap<string, number> {
  const wanted = columns.flatMap(([channel, column]) =>
    [column.column].flat().map((header) => [channel, header] as const),
  );
  const found = new Map(wanted.map(([, header]) => [header, headers.indexOf(header.trim())]));
  if (found.size > 1 && [...found.values()].every((at) => at < 0)) {
    faults.add(
      "error",
      "csv-header-missing",
      words.csvNoHeader([...found.keys()], headers, lineWith(cells, [...found.keys()])),
      {
        line,
      },
    );
    return found;
  }
  for (const [channel, header] of wanted) {
    const at = found.get(header) ?? -1;
    if (at < 0)
      faults.add(
        "error",
        "csv-header-missing",
        words.csvHeaderMissing(channel, header, headers, nearest(header, headers)),
        { line, key: channel + header },
      );
    else if (headers.indexOf(header.trim(), at + 1) >= 0) {
      faults.add("error", "csv-header-twice", words.csvHeaderTwice(header), { line, header, key: header });
      found.set(header, -1);
    }
  }
  return found;
}
