/** Fills one channel of a series from its column, or the sum of its columns, and looks at the whole. */
import { converter, MEDIAN_RANGE, same, unitsOf, ZERO_IS_MISSING } from "../kernel/channel-units.js";
import { roundTo } from "../kernel/rounding.js";
import type { Channel } from "../kernel/series.js";
import { median } from "../kernel/statistics.js";
import { type Cells, textOf } from "./cells.js";
import { cellPlace, type FaultList } from "./csv-faults.js";
import { readHours, readMinutes, readNumber } from "./number.js";
import type { MappedColumn } from "./series-mapping.js";
import { words } from "./words.js";

/** How a file writes its numbers and its gaps. */
export interface Writing {
  readonly decimal: "." | ",";
  /** Texts that stand for a missing value. */
  readonly marks: ReadonlySet<string>;
}

/** Fills one channel; returns how many values are missing, or undefined when the unit is not one of the channel's. */
export function fillColumn(
  values: Float64Array,
  cells: Cells,
  kept: readonly number[],
  at: readonly number[],
  headers: readonly string[],
  channel: Channel,
  column: MappedColumn,
  { decimal, marks }: Writing,
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
  const plain = read === readNumber;
  const { numbers, rows } = cells;
  // A mark may itself be a number (0, -99).
  const markNumbers = [...marks].map((mark) => read(mark, decimal)).filter((x) => !Number.isNaN(x));
  const zeroIsMissing = ZERO_IS_MISSING.has(channel);
  let gaps = 0;
  for (let i = 0; i < kept.length; i++) {
    const row = kept[i] as number;
    let sum = 0;
    for (let k = 0; k < at.length; k++) {
      const index = at[k] as number;
      const cell = (rows[row] as number) + index;
      let x = plain ? (numbers[cell] as number) : Number.NaN;
      if (Number.isNaN(x) || (markNumbers.length > 0 && markNumbers.includes(x))) {
        const text = textOf(cells, row, index).trim();
        x = marks.has(text) ? Number.NaN : read(text, decimal);
        if (Number.isNaN(x) && !marks.has(text)) reportCell(text, headers[k] ?? "", row, index);
      }
      sum += x;
    }
    if (Number.isNaN(sum) || (sum === 0 && zeroIsMissing)) {
      values[i] = Number.NaN;
      gaps++;
    } else values[i] = sum;
  }
  if (convert !== same) for (let i = 0; i < values.length; i++) values[i] = convert(values[i] as number);
  if (column.unit === "clock") sinceFirst(values);
  checkChannel(values, gaps, channel, column.unit, headers.join(" + "), faults, kept.length);
  return gaps;

  function reportCell(cell: string, header: string, row: number, index: number) {
    const comma = decimal === "." && !Number.isNaN(readNumber(cell, ","));
    const point = decimal === "," && !Number.isNaN(readNumber(cell, "."));
    faults.spoil(headers.join(" + "));
    faults.add("error", "csv-cell", (more) => words.csvCell(cell, column.unit, more, comma, point), {
      line: cells.lines[row] ?? 0,
      header,
      key: comma || point ? "decimal mark" : header,
      ...cellPlace(cells, row, index),
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
  let below = 0;
  let above = 0;
  for (let i = 0; i < values.length; i++) {
    if ((values[i] as number) < low) below++;
    else if ((values[i] as number) > high) above++;
  }
  const half = (values.length - gaps) / 2;
  if (below < half && above < half) return; // so the median lies inside, without sorting
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
