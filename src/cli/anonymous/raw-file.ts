/** A raw file with the mapped columns and their numbers only: what an instrument writes around them may name a person. */
import { splitCsv } from "../../read/csv.js";
import { decodeLeniently } from "../../read/decode.js";
import { beginningOf, endOfData } from "../../read/end-of-data.js";
import type { SeriesMapping } from "../../read/series.js";

const NUMBER = /^[+-]?[\d.,]*(e[+-]?\d+)?$/i;
const TIME = /^\d{1,5}:\d{2}(:\d{2})?([.,]\d+)?$/;
/** Between cells of the new file; no number holds one. */
const DELIMITER = ";";

/** The mapping that reads the new files of an instrument: headers on the first line, data from the second. */
export function plainMapping(mapping: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const { header_row: _, skip_rows: __, ends_before: ___, encoding: ____, delimiter: _____, ...rest } = mapping;
  return { ...rest, delimiter: DELIMITER };
}

export function plainFile(bytes: Uint8Array, mapping: SeriesMapping, delimiter: string): string {
  const { rows, lines } = splitCsv(decodeLeniently(bytes, mapping.encoding), delimiter);
  const headerAt = lines.indexOf(mapping.header_row ?? 1);
  const headers = (rows[headerAt] ?? []).map((cell) => cell.trim());
  const wanted = Object.values(mapping.columns ?? {}).flatMap((column) => (column ? [column.column].flat() : []));
  const kept = headers.flatMap((header, k) => (wanted.includes(header) ? [k] : []));
  const marks = new Set(mapping.missing ?? []);
  const clean = (cell: string) =>
    NUMBER.test(cell) || TIME.test(cell) || (marks.has(cell) && cell.length <= 5) ? cell : "";
  const first = headerAt + 1 + (mapping.skip_rows ?? 0);
  const below = { beginning: (row: number) => beginningOf(rows[row] ?? []), first, count: rows.length };
  const data = rows
    .slice(first, endOfData(below, mapping.ends_before ?? []))
    .filter((row) => row.some((cell) => cell.trim() !== ""))
    .map((row) => kept.map((k) => clean((row[k] ?? "").trim())).join(DELIMITER));
  return `${[kept.map((k) => headers[k]).join(DELIMITER), ...data].join("\n")}\n`;
}
