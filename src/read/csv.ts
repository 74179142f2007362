/**
 * CSV text to rows of cells, each with the line it stands on. Quoted cells may hold delimiters, doubled quotes and
 * line breaks (RFC 4180). Text without any quotation mark, which is nearly every export of an instrument, is split
 * directly: a test of 500 breaths takes well under a millisecond.
 */
export interface Rows {
  readonly rows: readonly (readonly string[])[];
  /** Line of the file each row begins on, 1-based. */
  readonly lines: readonly number[];
  /** Whether any cell was quoted. */
  readonly quoted: boolean;
  /** Line of a quotation mark that is never closed. */
  readonly unclosed?: number;
}

/** Splits text at line ends (LF, CRLF or CR) and at the delimiter, one character. Cells are not trimmed. */
export function splitCsv(text: string, delimiter: string): Rows {
  return text.includes('"') ? splitQuoted(text, delimiter) : splitPlain(text, delimiter);
}

function splitPlain(text: string, delimiter: string): Rows {
  const rows = splitLines(text).map((line) => line.split(delimiter));
  return { rows, lines: rows.map((_, i) => i + 1), quoted: false };
}

/** Lines of a text without their ends, or the first `most` of them; a final line end makes no further line. */
export function splitLines(text: string, most?: number): string[] {
  const lines = text.split(text.includes("\r") ? /\r\n|\r|\n/ : "\n", most);
  if (lines[lines.length - 1] === "") lines.pop();
  return lines;
}

function splitQuoted(text: string, delimiter: string): Rows {
  const rows: string[][] = [];
  const lines: number[] = [];
  let row: string[] = [];
  let line = 1;
  let rowLine = 1;
  let at = 0;
  const endRow = () => {
    rows.push(row);
    lines.push(rowLine);
    row = [];
    rowLine = line;
  };
  while (at < text.length) {
    if (text[at] === '"') {
      const openedOn = line;
      let cell = "";
      at++;
      for (;;) {
        const close = text.indexOf('"', at);
        if (close < 0) return { rows, lines, quoted: true, unclosed: openedOn };
        cell += text.slice(at, close);
        at = close + 1;
        if (text[at] !== '"') break;
        cell += '"';
        at++;
      }
      line += lineEnds(cell);
      // Anything between the closing quote and the delimiter stays with the cell, as it would be seen.
      const end = cellEnd(text, at, delimiter);
      row.push(cell + text.slice(at, end));
      at = end;
    } else {
      const end = cellEnd(text, at, delimiter);
      row.push(text.slice(at, end));
      at = end;
    }
    const mark = text[at];
    if (mark === delimiter) {
      at++;
      if (at === text.length) row.push("");
      continue;
    }
    if (mark === undefined) break;
    at += mark === "\r" && text[at + 1] === "\n" ? 2 : 1;
    line++;
    endRow();
  }
  if (row.length > 0) endRow();
  return { rows, lines, quoted: true };
}

const lineEnds = (text: string) => text.match(/\r\n|\r|\n/g)?.length ?? 0;

function cellEnd(text: string, from: number, delimiter: string): number {
  let at = from;
  while (at < text.length) {
    const c = text[at];
    if (c === delimiter || c === "\n" || c === "\r") return at;
    at++;
  }
  return at;
}
