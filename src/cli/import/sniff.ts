/**
 * How a CSV is written: delimiter, decimal mark, line of the headers, rows of units below, marks for "no value". Looks at
 * the text alone; what the columns mean is another file's question.
 */
import { splitCsv } from "../../read/csv.js";
import { decodeLeniently, decodeStrictly, type Encoding } from "../../read/decode.js";
import { beginningOf, endOfData, summaryBelow } from "../../read/end-of-data.js";

export interface Sniffed {
  readonly text: string;
  readonly encoding: Encoding | undefined;
  readonly delimiter: "," | ";" | "\t" | "|";
  readonly decimal: "." | ",";
  /** Line of the headers, 1-based; undefined when the file has numbers only. */
  readonly headerLine: number | undefined;
  /** Lines between the headers and the first row of data. */
  readonly skipped: number;
  readonly headers: readonly string[];
  /** Cells of the row below the headers when it holds units; else empty. */
  readonly unitRow: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Words that stand where numbers stand in other rows, and are no usual mark for "no value". */
  readonly marks: readonly string[];
  /** How the first row of a summary below the data begins. */
  readonly endsBefore: string | undefined;
}

const DELIMITERS = [";", "\t", "|", ","] as const;
const PLAIN = /^[+-]?(\d+([.,]\d+)?|[.,]\d+)(e[+-]?\d+)?$/i;
const TIME = /^\d{1,3}:\d{2}(:\d{2})?([.,]\d+)?$/;
const USUAL_MARKS = new Set(["", "-", "--", "na", "n/a", "nan", "null", "?", "#n/a"]);
const isValue = (cell: string) => PLAIN.test(cell) || TIME.test(cell);
const isDigits = (cell: string) => /^\d+$/.test(cell);
const isEmpty = (cell: string) => USUAL_MARKS.has(cell.toLowerCase());

/** Undefined when no table is found. */
export function sniff(bytes: Uint8Array): Sniffed | undefined {
  const strict = decodeStrictly(bytes);
  const encoding = "text" in strict ? undefined : strict.fault === "utf-16" ? "utf-16" : "latin-1";
  const text = decodeLeniently(bytes, encoding);
  const found = DELIMITERS.map((delimiter) => table(text, delimiter)).filter((t) => t !== undefined);
  const best = found.sort((a, b) => b.score - a.score)[0];
  if (best === undefined) return undefined;
  const { headerAt, firstData, rows, lines, delimiter } = best;
  const headers = headerAt === undefined ? [] : (rows[headerAt] ?? []);
  const between = headerAt === undefined ? [] : rows.slice(headerAt + 1, firstData);
  const { data, endsBefore } = withoutSummary(rows.slice(firstData).filter((row) => row.some((cell) => cell !== "")));
  return {
    text,
    encoding,
    delimiter,
    decimal: decimalOf(data, delimiter),
    headerLine: headerAt === undefined ? undefined : lines[headerAt],
    skipped: headerAt === undefined ? 0 : (lines[firstData] ?? 0) - (lines[headerAt] ?? 0) - 1,
    headers,
    unitRow: between.find((row) => row.length >= headers.length - 1 && row.some((cell) => cell !== "")) ?? [],
    rows: data,
    marks: marksIn(data),
    endsBefore,
  };
}

function withoutSummary(rows: readonly (readonly string[])[]) {
  const below = { beginning: (row: number) => beginningOf(rows[row] ?? []), first: 0, count: rows.length };
  const summary = summaryBelow(below, isEmpty);
  return { data: rows.slice(0, endOfData(below, summary)), endsBefore: summary[0] };
}

function table(text: string, delimiter: Sniffed["delimiter"]) {
  const { rows: raw, lines } = splitCsv(text, delimiter);
  const rows = raw.map((row) => row.map((cell) => cell.trim()));
  const width = commonest(rows.filter((row) => row.some((cell) => cell !== "")).map((row) => row.length));
  if (width === undefined) return undefined;
  const isData = (row: readonly string[] | undefined) =>
    row !== undefined &&
    row.length === width &&
    row.some(isValue) &&
    share(row, (cell) => isValue(cell) || isEmpty(cell)) >= 0.5;
  const firstData = rows.findIndex((row, i) => isData(row) && (isData(rows[i + 1]) || i === rows.length - 1));
  if (firstData < 0) return undefined;
  let headerAt: number | undefined;
  for (let i = firstData - 1; i >= 0; i--) {
    const row = rows[i] ?? [];
    const named = row.length === width && !row.some((cell) => PLAIN.test(cell));
    // The row of names is as wide as the data; a row of units below it may be half empty.
    if (named && share(row, (cell) => /\p{L}/u.test(cell)) >= 0.5) headerAt = i;
    else if (!named && (headerAt !== undefined || row.some((cell) => cell !== ""))) break;
  }
  const data = rows.slice(firstData).filter(isData);
  // A decimal comma taken for a delimiter cuts numbers into cells that look like numbers, or like nothing.
  if (delimiter === "," && width === 2 && headerAt === undefined && data.every((row) => row.every(isDigits)))
    return undefined;
  const sound = data.reduce((sum, row) => sum + share(row, (cell) => isValue(cell) || isEmpty(cell)), 0);
  return { headerAt, firstData, rows, lines, delimiter, score: sound * (width > 1 ? 2 + Math.min(width, 20) / 20 : 1) };
}

const share = (row: readonly string[], test: (cell: string) => boolean) => row.filter(test).length / row.length;

function commonest(numbers: readonly number[]): number | undefined {
  const counts = new Map<number, number>();
  for (const n of numbers) counts.set(n, (counts.get(n) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0];
}

/** The mark that stands in more numbers; where the comma parts the cells it cannot be the decimal mark. */
function decimalOf(rows: readonly (readonly string[])[], delimiter: string): "." | "," {
  if (delimiter === ",") return ".";
  let comma = 0;
  let point = 0;
  for (const cell of rows.flat()) {
    if (/^[+-]?\d*,\d+$/.test(cell)) comma++;
    else if (/^[+-]?\d*\.\d+$/.test(cell)) point++;
  }
  return comma > point ? "," : ".";
}

/** In columns of numbers, words that come again and again. A column of words is no column of numbers. */
function marksIn(rows: readonly (readonly string[])[]): string[] {
  const marks = new Set<string>();
  const width = rows[0]?.length ?? 0;
  for (let k = 0; k < width; k++) {
    const cells = rows.map((row) => row[k] ?? "");
    const odd = cells.filter((cell) => !isValue(cell) && !isEmpty(cell));
    if (odd.length > 0 && cells.filter(isValue).length > cells.length / 2 && new Set(odd).size <= 3)
      for (const cell of odd) marks.add(cell);
  }
  return [...marks].sort();
}
