/**
 * A raw CSV to a Series: the columns an instrument's mapping names, in the channels' own units, missing values as NaN.
 * Nothing is smoothed, filled or removed. Every fault of the file is found in one run, one message a column and kind,
 * with line, header and cell of the first occurrence.
 */
import { converter, isChannel, MEDIAN_RANGE, unitsOf, ZERO_IS_MISSING } from "../kernel/channel-units.js";
import type { Diagnostic, Severity } from "../kernel/diagnostic.js";
import { nearest } from "../kernel/near.js";
import { roundTo } from "../kernel/rounding.js";
import type { Channel, GasCondition, Series } from "../kernel/series.js";
import { median } from "../kernel/statistics.js";
import { type Rows, splitCsv, splitLines } from "./csv.js";
import { decodeLeniently, type Encoding } from "./decode.js";
import { readHours, readMinutes, readNumber } from "./number.js";
import { type Words, words } from "./words.js";

/** What of an instrument's entry in lab.yaml says how its files are written. */
export interface SeriesMapping {
  readonly columns?: Readonly<Partial<Record<Channel, MappedColumn>>>;
  readonly encoding?: Encoding;
  readonly delimiter?: "," | ";" | "tab" | "|";
  readonly decimal?: "." | ",";
  readonly header_row?: number;
  readonly skip_rows?: number;
  readonly missing?: readonly string[];
}
export interface MappedColumn {
  /** Header, or headers whose sum is the value. */
  readonly column: string | readonly string[];
  readonly unit: string;
  readonly condition?: GasCondition;
}
export interface SeriesReading {
  /** Absent when an error stands among the diagnostics. */
  readonly series?: Series;
  readonly diagnostics: readonly Diagnostic[];
}

export const CSV_LIMITS = { bytes: 20 * 1_048_576, columns: 500, lines: 500_000 } as const;
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
  const delimiter = delimiterOf(text, mapping, columns, headerRow);
  const split = splitCsv(text, delimiter);
  if (split.unclosed !== undefined) return refuse("csv-quote", words.csvQuote(), split.unclosed);
  if (split.rows.length > CSV_LIMITS.lines)
    return refuse("csv-limit", words.csvTooMany("lines", split.rows.length, CSV_LIMITS.lines));

  const headerAt = split.lines.indexOf(headerRow);
  const headers = (split.rows[headerAt] ?? []).map((h) => h.trim());
  if (headers.length > CSV_LIMITS.columns)
    return refuse("csv-limit", words.csvTooMany("columns", headers.length, CSV_LIMITS.columns), headerRow);
  const first = headerAt + 1 + (mapping.skip_rows ?? 0);
  const kept = dataRows(split, headerAt < 0 ? split.rows.length : first, headers.length, delimiter, faults);
  if (kept.length === 0 && faults.count() === 0) return refuse("csv-empty", words.csvEmpty(headerRow));

  const channels: Partial<Record<Channel, Float64Array>> = {};
  const conditions: Partial<Record<Channel, GasCondition>> = {};
  const missing: Partial<Record<Channel, number>> = {};
  const marks = new Set([...MISSING, ...(mapping.missing ?? [])]);
  for (const [channel, column] of columns) {
    const wanted = typeof column.column === "string" ? [column.column] : column.column;
    const at = wanted.map((header) => headerIndex(header, channel, headers, headerRow, faults));
    if (at.includes(-1)) continue;
    const values = new Float64Array(kept.length);
    const gaps = fillColumn(values, split, kept, at, wanted, channel, column, mapping.decimal ?? ".", marks, faults);
    if (gaps === undefined) continue;
    channels[channel] = values;
    if (column.condition !== undefined) conditions[channel] = column.condition;
    if (gaps > 0) missing[channel] = gaps;
  }
  checkTime(channels.time_s, split, kept, columns, headers, faults);
  if (faults.errors() > 0) return { diagnostics: faults.all() };
  addVentilation(channels, conditions);
  const lines = Int32Array.from(kept, (row) => split.lines[row] ?? 0);
  return {
    series: { file: name, length: kept.length, channels, conditions, lines, missing },
    diagnostics: faults.all(),
  };
}

/** The stated delimiter, or the one that splits the header line into the most mapped headers (then into most cells). */
function delimiterOf(
  text: string,
  mapping: SeriesMapping,
  columns: readonly [Channel, MappedColumn][],
  headerRow: number,
): string {
  if (mapping.delimiter !== undefined) return mapping.delimiter === "tab" ? "\t" : mapping.delimiter;
  const wanted = new Set(columns.flatMap(([, c]) => c.column));
  const header = splitLines(text.slice(0, 100_000))[headerRow - 1] ?? "";
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
function dataRows(split: Rows, first: number, width: number, delimiter: string, faults: FaultList): number[] {
  const kept: number[] = [];
  for (let r = first; r < split.rows.length; r++) {
    const row = split.rows[r] ?? [];
    if (row.length === 1 && (row[0] ?? "").trim() === "") continue;
    if (row.length === width || (row.length > width && row.slice(width).every((c) => c.trim() === ""))) {
      if (row.length > 1 && row.every((c) => c.trim() === "")) continue;
      kept.push(r);
    } else
      faults.add(
        "error",
        "csv-row-length",
        (more) => words.csvRowLength(row.length, width, more, delimiter === "," && row.length > width),
        { line: split.lines[r] ?? 0 },
      );
  }
  return kept;
}

function headerIndex(
  header: string,
  channel: string,
  headers: readonly string[],
  line: number,
  faults: FaultList,
): number {
  const at = headers.indexOf(header.trim());
  if (at < 0)
    faults.add(
      "error",
      "csv-header-missing",
      words.csvHeaderMissing(channel, header, headers, nearest(header, headers)),
      {
        line,
        key: channel + header,
      },
    );
  else if (headers.indexOf(header.trim(), at + 1) >= 0) {
    faults.add("error", "csv-header-twice", words.csvHeaderTwice(header), { line, header, key: header });
    return -1;
  }
  return at;
}

/** Fills one channel; returns how many values are missing, or undefined when the unit is not one of the channel's. */
function fillColumn(
  values: Float64Array,
  split: Rows,
  kept: readonly number[],
  at: readonly number[],
  headers: readonly string[],
  channel: Channel,
  column: MappedColumn,
  decimal: "." | ",",
  marks: ReadonlySet<string>,
  faults: FaultList,
): number | undefined {
  const convert = converter(channel, column.unit);
  if (convert === undefined) return undefined;
  const read =
    column.unit === "mm:ss"
      ? readMinutes
      : column.unit.startsWith("h:") || column.unit === "clock"
        ? readHours
        : readNumber;
  const zeroIsMissing = ZERO_IS_MISSING.has(channel);
  let gaps = 0;
  for (let i = 0; i < kept.length; i++) {
    const row = split.rows[kept[i] as number] as readonly string[];
    let sum = 0;
    for (let k = 0; k < at.length; k++) {
      const cell = (row[at[k] as number] as string).trim();
      const x = marks.has(cell) ? Number.NaN : read(cell, decimal);
      if (Number.isNaN(x) && !marks.has(cell))
        reportCell(cell, split.lines[kept[i] as number] ?? 0, headers[k] ?? "", kept[i] as number, at[k] as number);
      sum += x;
    }
    if (Number.isNaN(sum) || (sum === 0 && zeroIsMissing)) {
      values[i] = Number.NaN;
      gaps++;
    } else values[i] = convert(sum);
  }
  if (column.unit === "clock") sinceFirst(values);
  checkChannel(values, gaps, channel, column.unit, headers.join(" + "), faults, kept.length);
  return gaps;

  function reportCell(cell: string, line: number, header: string, row: number, k: number) {
    const comma = decimal === "." && !Number.isNaN(readNumber(cell, ","));
    const point = decimal === "," && !Number.isNaN(readNumber(cell, "."));
    faults.spoil(headers.join(" + "));
    faults.add("error", "csv-cell", (more) => words.csvCell(cell, column.unit, more, comma, point), {
      line,
      header,
      key: comma || point ? "decimal mark" : header,
      ...cellPlace(split, row, k),
    });
  }
}

/** Seconds since the first row; a clock that passes midnight goes on. */
function sinceFirst(values: Float64Array): void {
  const start = values.find((x) => !Number.isNaN(x)) ?? 0;
  let days = 0;
  let before = start;
  for (let i = 0; i < values.length; i++) {
    const now = values[i] as number;
    if (Number.isNaN(now)) continue;
    if (now < before - 43_200) days++;
    before = now;
    values[i] = now + days * 86_400 - start;
  }
}

/** A channel without any value, or with a median no client can have. */
function checkChannel(
  values: Float64Array,
  gaps: number,
  channel: Channel,
  unit: string,
  header: string,
  faults: FaultList,
  rows: number,
): void {
  if (faults.isSpoilt(header)) return;
  if (gaps === values.length) {
    if (rows > 0 && channel !== "time_s")
      faults.add("warning", "csv-channel-empty", words.csvChannelEmpty(rows), { header, key: header });
    return;
  }
  const range = MEDIAN_RANGE[channel];
  if (range === undefined) return;
  const [low, high] = range;
  const middle = median(values.filter((x) => !Number.isNaN(x)));
  if (middle >= low && middle <= high) return;
  const stated = converter(channel, unit);
  const looks = unitsOf(channel).find((other) => {
    const here = converter(channel, other);
    if (other === unit || here === undefined || stated === undefined) return false;
    // The median as written: found by trying, since conversions are monotone but not all of them linear.
    const written = inverse(stated, middle);
    return written !== undefined && here(written) >= low && here(written) <= high;
  });
  const shown = String(roundTo(middle, 3 - Math.floor(Math.log10(middle))));
  const own = unitsOf(channel)[0] ?? "";
  faults.add("error", "csv-unit", words.csvUnit(shown, own, low, high, looks), { header, key: header });
}

function inverse(convert: (x: number) => number, y: number): number | undefined {
  const one = convert(1);
  const two = convert(2);
  if (Math.abs(two - 2 * one) < 1e-9 * Math.abs(one)) return y / one; // y = a·x
  if (Math.abs(two - one / 2) < 1e-9 * Math.abs(one)) return one / y; // y = a / x
  return undefined;
}

function checkTime(
  time: Float64Array | undefined,
  split: Rows,
  kept: readonly number[],
  columns: readonly [Channel, MappedColumn][],
  headers: readonly string[],
  faults: FaultList,
): void {
  const mapped = columns.find(([channel]) => channel === "time_s")?.[1].column;
  if (time === undefined || mapped === undefined) return;
  const header = [mapped].flat().join(" + ");
  const index = typeof mapped === "string" ? headers.indexOf(mapped.trim()) : undefined;
  if (faults.isSpoilt(header)) return;
  let before = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < time.length; i++) {
    const now = time[i] as number;
    const at = {
      line: split.lines[kept[i] as number] ?? 0,
      header,
      ...(index === undefined ? {} : cellPlace(split, kept[i] as number, index)),
    };
    if (Number.isNaN(now)) {
      faults.add("error", "csv-time-missing", (more) => words.csvTimeMissing(more), at);
      continue;
    }
    const shown = (x: number) => `${roundTo(x, 3)} s`;
    const earlier = before;
    if (now < before) faults.add("error", "csv-time", (more) => words.csvTime(shown(now), shown(earlier), more), at);
    if (now === before) faults.add("warning", "csv-time-twice", (more) => words.csvTimeTwice(shown(now), more), at);
    before = now;
  }
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

/** Column and length of a cell on its line; unknown in a file with quoted cells, which may span lines. */
function cellPlace(split: Rows, row: number, index: number): Pick<FaultPlace, "column" | "length"> {
  const cells = split.rows[row] ?? [];
  const raw = cells[index] ?? "";
  if (split.quoted) return {};
  const before = cells.slice(0, index).reduce((sum, cell) => sum + cell.length + 1, 0);
  return { column: before + raw.length - raw.trimStart().length + 1, length: Math.max(1, raw.trim().length) };
}

interface FaultPlace {
  readonly line?: number;
  readonly column?: number;
  readonly length?: number;
  readonly header?: string;
  /** Faults of one code and key are one message; its words are told how many more there were. */
  readonly key?: string;
}
interface FaultList {
  add(severity: Severity, code: string, why: Words | ((more: number) => Words), at: FaultPlace): void;
  /** Marks a column whose values cannot be judged further. */
  spoil(header: string): void;
  isSpoilt(header: string): boolean;
  count(): number;
  errors(): number;
  all(): Diagnostic[];
}

function faultList(file: string): FaultList {
  const found = new Map<
    string,
    { severity: Severity; code: string; why: (more: number) => Words; at: FaultPlace; n: number }
  >();
  const spoilt = new Set<string>();
  return {
    add(severity, code, why, at) {
      const id = `${code} ${at.key ?? ""}`;
      const known = found.get(id);
      if (known) known.n++;
      else found.set(id, { severity, code, why: typeof why === "function" ? why : () => why, at, n: 1 });
    },
    spoil: (header) => spoilt.add(header),
    isSpoilt: (header) => spoilt.has(header),
    count: () => found.size,
    errors: () => [...found.values()].filter((f) => f.severity === "error").length,
    all: () =>
      [...found.values()].map(({ severity, code, why, at, n }) => ({
        code,
        severity,
        at: {
          file,
          ...(at.line === undefined ? {} : { line: at.line }),
          ...(at.column === undefined ? {} : { column: at.column, length: at.length ?? 1 }),
          ...(at.header === undefined ? {} : { header: at.header }),
        },
        ...why(n - 1),
      })),
  };
}
