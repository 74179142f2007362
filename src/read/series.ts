/**
 * A raw CSV to a Series: the columns an instrument's mapping names, in the channels' own units, missing values as NaN.
 * Nothing is smoothed, filled or removed. Every fault of the file is found in one run, one message a column and kind,
 * with line, header and cell of the first occurrence.
 */
import { isChannel } from "../kernel/channel-units.js";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Channel, GasCondition, Series } from "../kernel/series.js";
import { cutCsv, rowCount, rowOf } from "./cells.js";
import { faultList } from "./csv-faults.js";
import { dataRows, delimiterOf, headerPositions, isUnitRow } from "./csv-table.js";
import { decodeLeniently } from "./decode.js";
import { beginningOf, endOfData, summaryBelow } from "./end-of-data.js";
import { fillColumn } from "./series-column.js";
import type { MappedColumn, SeriesMapping } from "./series-mapping.js";
import { checkTime } from "./series-time.js";
import { type Words, words } from "./words.js";

export type { SeriesMapping } from "./series-mapping.js";

export interface SeriesReading {
  /** Absent when an error stands among the diagnostics. */
  readonly series?: Series;
  readonly diagnostics: readonly Diagnostic[];
}

const CSV_LIMITS = { bytes: 20 * 1_048_576, columns: 500, lines: 500_000 } as const;
const MISSING = ["", "-", "--", "NA", "N/A", "n/a", "NaN", "nan", "null", "?", "#N/A"];

/** `name` is the file as the session writes it, `path` the file in the practice folder, for messages. */
export function readSeries(
  name: string,
  content: string | Uint8Array,
  mapping: SeriesMapping,
  path = name,
): SeriesReading {
  const faults = faultList(path);
  const refuse = (code: string, why: Words, line?: number): SeriesReading => {
    faults.add("error", code, why, line === undefined ? {} : { line });
    return { diagnostics: faults.all() };
  };
  if (content.length > CSV_LIMITS.bytes)
    return refuse("csv-limit", words.csvTooLarge(content.length, CSV_LIMITS.bytes));
  const decoded = typeof content === "string" ? content : decodeLeniently(content, mapping.encoding);
  const text = decoded.startsWith("\uFEFF") ? decoded.slice(1) : decoded;
  const columns = Object.entries(mapping.columns ?? {}).filter((c): c is [Channel, MappedColumn] => isChannel(c[0]));
  const headerRow = mapping.header_row ?? 1;
  if (text.length >= CSV_LIMITS.lines && lineCount(text) > CSV_LIMITS.lines)
    return refuse("csv-limit", words.csvTooMany("lines", lineCount(text), CSV_LIMITS.lines));
  const delimiter = delimiterOf(text, mapping, columns, headerRow);
  const decimal = mapping.decimal ?? ".";
  const cells = cutCsv(text, delimiter, decimal);
  if (cells.unclosed !== undefined) return refuse("csv-quote", words.csvQuote(), cells.unclosed);

  const headerAt = cells.lines.indexOf(headerRow);
  const headers = headerAt < 0 ? [] : rowOf(cells, headerAt).map((h) => h.trim());
  if (headers.length > CSV_LIMITS.columns)
    return refuse("csv-limit", words.csvTooMany("columns", headers.length, CSV_LIMITS.columns), headerRow);
  const positions =
    headerAt < 0 ? new Map<string, number>() : headerPositions(columns, headers, headerRow, cells, faults);
  if (headerAt >= 0 && columns.length > 0 && [...positions.values()].every((at) => at < 0))
    return { diagnostics: faults.all() };
  let first = headerAt + 1 + (mapping.skip_rows ?? 0);
  if (headerAt >= 0 && mapping.skip_rows === undefined && first < rowCount(cells) && isUnitRow(cells, first, decimal)) {
    faults.add("error", "csv-cell", words.csvUnitRow(rowOf(cells, first)), { line: cells.lines[first] ?? 0 });
    first++;
  }
  const marks = new Set([...MISSING, ...(mapping.missing ?? [])]);
  const below = { beginning: (row: number) => beginningOf(rowOf(cells, row)), first, count: rowCount(cells) };
  const summary =
    mapping.ends_before === undefined && headerAt >= 0 ? summaryBelow(below, (text) => marks.has(text)) : [];
  const end = headerAt < 0 ? first : endOfData(below, mapping.ends_before ?? summary);
  if (summary.length > 0) {
    faults.add("error", "csv-cell", words.csvSummary(summary), { line: cells.lines[end] ?? 0 });
  }
  const kept = dataRows(cells, { first, end }, headers.length, delimiter, faults);
  if (kept.length === 0 && faults.count() === 0) return refuse("csv-empty", words.csvEmpty(headerRow));

  const channels: Partial<Record<Channel, Float64Array>> = {};
  const conditions: Partial<Record<Channel, GasCondition>> = {};
  const missing: Partial<Record<Channel, number>> = {};
  const writing = { decimal, marks };
  for (const [channel, column] of columns) {
    const wanted = typeof column.column === "string" ? [column.column] : column.column;
    const at = wanted.map((header) => positions.get(header) ?? -1);
    if (at.includes(-1)) continue;
    const values = new Float64Array(kept.length);
    const gaps = fillColumn(values, cells, kept, at, wanted, channel, column, writing, faults);
    if (gaps === undefined) continue;
    channels[channel] = values;
    if (column.condition !== undefined) conditions[channel] = column.condition;
    if (gaps > 0) missing[channel] = gaps;
  }
  checkTime(channels.time_s, cells, kept, columns, headers, faults);
  if (faults.errors() > 0) return { diagnostics: faults.all() };
  addVentilation(channels, conditions);
  const lines = new Int32Array(kept.length);
  for (let i = 0; i < lines.length; i++) lines[i] = cells.lines[kept[i] as number] as number;
  return {
    series: { file: name, length: kept.length, channels, conditions, lines, missing },
    diagnostics: faults.all(),
  };
}

/** Ventilation is tidal volume times frequency by definition; it takes over the tidal volume's gas condition. */
function addVentilation(
  channels: Partial<Record<Channel, Float64Array>>,
  conditions: Partial<Record<Channel, GasCondition>>,
): void {
  const { tidal_volume_l: volume, breathing_frequency_per_min: frequency } = channels;
  if (channels.ventilation_l_min !== undefined || volume === undefined || frequency === undefined) return;
  channels.ventilation_l_min = volume.map((v, i) => v * (frequency[i] as number));
  if (conditions.tidal_volume_l !== undefined) conditions.ventilation_l_min = conditions.tidal_volume_l;
}

function lineCount(text: string): number {
  let count = 1;
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) count++;
  return count;
}
