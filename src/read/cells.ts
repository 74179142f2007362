/**
 * The cells of a raw file as places in its bytes. Most are numbers and are read in passing; none becomes a string before
 * somebody asks for it.
 */
import { type Rows, splitCsv } from "./csv.js";

export interface Cells {
  /** UTF-8. */
  readonly bytes: Uint8Array;
  /** First byte of each cell, and the first that is no longer its own. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** A cell of up to nine digits and one mark, without sign or exponent; NaN for every other, whose text must be read. */
  readonly numbers: Float64Array;
  /** First cell of each row; the last entry is the number of cells. */
  readonly rows: readonly number[];
  /** Line of the file each row begins on, 1-based. */
  readonly lines: readonly number[];
  /** Whether any cell was quoted. */
  readonly quoted: boolean;
  /** Line of a quotation mark that is never closed. */
  readonly unclosed?: number;
}

const encoder = new TextEncoder();
const decoder = new TextDecoder("utf-8", { ignoreBOM: true });

/** Cuts a text as splitCsv() does. Delimiter and decimal mark are one ASCII character each. */
export function cutCsv(text: string, delimiter: string, decimal: string): Cells {
  return text.includes('"') ? fromRows(splitCsv(text, delimiter)) : cutPlain(encoder.encode(text), delimiter, decimal);
}

function cutPlain(bytes: Uint8Array, delimiter: string, decimal: string): Cells {
  const end = delimiter.charCodeAt(0);
  const mark = decimal.charCodeAt(0);
  const most = 1 + separators(bytes, end);
  const from = new Int32Array(most);
  const to = new Int32Array(most);
  const numbers = new Float64Array(most);
  const rows: number[] = [0];
  const lines: number[] = [];
  let cell = 0;
  for (let at = 0, more = false; at < bytes.length || more; at++) {
    from[cell] = at;
    let byte = LF;
    let whole = 0;
    let marks = 0;
    let places = 0;
    let plain = true;
    for (; at < bytes.length; at++) {
      byte = bytes[at] as number;
      if (byte >= ZERO && byte <= NINE) {
        whole = (10 * whole + byte - ZERO) | 0;
        places += marks;
      } else if (byte === end || byte === LF || byte === CR) break;
      else if (byte === mark && marks === 0) marks = 1;
      else plain = false;
    }
    more = at < bytes.length && byte === end;
    to[cell] = at;
    const digits = at - (from[cell] as number) - marks;
    // A whole number over a power of ten is the double that the text names: both are exact, and a division rounds once.
    numbers[cell++] = plain && digits > 0 && digits <= DIGITS ? whole / (TENS[places] as number) : Number.NaN;
    if (more) continue;
    rows.push(cell);
    lines.push(rows.length - 1);
    if (byte === CR && bytes[at + 1] === LF) at++;
  }
  return { bytes, from, to, numbers, rows, lines, quoted: false };
}

function separators(bytes: Uint8Array, end: number): number {
  let count = 0;
  for (let at = 0; at < bytes.length; at++) {
    const byte = bytes[at];
    if (byte === end || byte === LF || byte === CR) count++;
  }
  return count;
}

const ZERO = 48;
const NINE = 57;
/** As many as a whole number of 32 bits holds. */
const DIGITS = 9;
const TENS = [1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9];
const LF = 10;
const CR = 13;

function fromRows({ rows: texts, lines, quoted, unclosed }: Rows): Cells {
  const encoded = texts.flat().map((text) => encoder.encode(text));
  const from = new Int32Array(encoded.length);
  const to = new Int32Array(encoded.length);
  const bytes = new Uint8Array(encoded.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  encoded.forEach((cell, k) => {
    bytes.set(cell, at);
    from[k] = at;
    at += cell.length;
    to[k] = at;
  });
  const rows = [0];
  for (const row of texts) rows.push((rows.at(-1) ?? 0) + row.length);
  const numbers = new Float64Array(encoded.length).fill(Number.NaN);
  return { bytes, from, to, numbers, rows, lines, quoted, ...(unclosed === undefined ? {} : { unclosed }) };
}

export const rowCount = (cells: Cells): number => cells.rows.length - 1;
export const widthOf = ({ rows }: Cells, row: number): number => (rows[row + 1] as number) - (rows[row] as number);

/** A cell as it stands, not trimmed. */
export function textOf({ bytes, from, to, rows }: Cells, row: number, index: number): string {
  const cell = (rows[row] as number) + index;
  return decoder.decode(bytes.subarray(from[cell], to[cell]));
}

export const rowOf = (cells: Cells, row: number): string[] =>
  Array.from({ length: widthOf(cells, row) }, (_, index) => textOf(cells, row, index));

/** Nothing but white space. */
export function isBlank(cells: Cells, row: number, index: number): boolean {
  const cell = (cells.rows[row] as number) + index;
  const first = cells.bytes[cells.from[cell] as number] as number;
  const empty = cells.from[cell] === cells.to[cell];
  if (empty || (first > 32 && first < 128)) return empty;
  return textOf(cells, row, index).trim() === "";
}
