/**
 * Rounds a visit's entries to their printed decimals, once, and puts them in the order of the report. From here on
 * everybody (comparison with other visits, charts, report, reader with a pencil) sees the same digits.
 */
import type { Cell, Entry, MeasurementError, NormPosition } from "../kernel/measure.js";
import { SECTIONS } from "../kernel/measure.js";
import { catalogue, measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { roundTo } from "../kernel/rounding.js";

/** Header facts of a visit, and its entries in any order and full precision. */
export const recordResults = (header: Omit<Results, "entries">, entries: readonly Entry[]): Results => ({
  ...header,
  ageYears: roundTo(header.ageYears, 1),
  entries: entries.map(rounded).sort(byReportOrder),
});

/** The same results with more entries (changes, programme) recorded after the measured ones. */
export const withEntries = (results: Results, more: readonly Entry[]): Results => ({
  ...results,
  entries: [...results.entries, ...more.map(rounded)].sort(byReportOrder),
});

export function rounded(entry: Entry): Entry {
  switch (entry.kind) {
    case "quantity": {
      const { value, decimals, error, norms } = entry;
      return {
        ...entry,
        value: roundTo(value, decimals),
        ...(error ? { error: roundedError(error, decimals) } : {}),
        ...(norms ? { norms: norms.map((norm) => roundedNorm(norm, decimals)) } : {}),
      };
    }
    case "table": {
      const places = entry.columns.map((column) => column.decimals);
      return { ...entry, rows: entry.rows.map((row) => roundedRow(row, places)) };
    }
    case "change": {
      const at = <K extends string>(key: K, value: number | undefined, decimals: number) =>
        (value === undefined ? {} : { [key]: roundTo(value, decimals) }) as { readonly [P in K]?: number };
      const d = entry.decimals;
      return {
        ...entry,
        before: roundTo(entry.before, d),
        now: roundTo(entry.now, d),
        change: roundTo(entry.change, d),
        ...at("low", entry.low, d),
        ...at("high", entry.high, d),
        ...at("typicalError", entry.typicalError, d + 1),
        ...at("detectable", entry.detectable, d),
        ...at("worthwhile", entry.worthwhile, d + 1),
        ...(entry.chances
          ? {
              chances: {
                higher: roundTo(entry.chances.higher, 0),
                trivial: roundTo(entry.chances.trivial, 0),
                lower: roundTo(entry.chances.lower, 0),
              },
            }
          : {}),
      };
    }
    default:
      return entry;
  }
}

/** A typical error keeps one digit more than the value; an interval is printed like the value. */
const roundedError = (error: MeasurementError, decimals: number): MeasurementError => ({
  ...error,
  ...(error.typical === undefined ? {} : { typical: roundTo(error.typical, decimals + 1) }),
  ...(error.low === undefined ? {} : { low: roundTo(error.low, decimals) }),
  ...(error.high === undefined ? {} : { high: roundTo(error.high, decimals) }),
});

/** Decimals of a norm position's numbers, for a value printed with `decimals`. */
export const normDecimals = (decimals: number) =>
  ({ percentile: 0, z: 2, predicted: decimals, percentPredicted: 0, lowerLimit: decimals, median: decimals }) as const;

const NORM_NUMBERS = ["percentile", "z", "predicted", "percentPredicted", "lowerLimit", "median"] as const;

function roundedNorm(norm: NormPosition, decimals: number): NormPosition {
  const digits = normDecimals(decimals);
  const out: { -readonly [K in keyof NormPosition]: NormPosition[K] } = { ...norm };
  for (const key of NORM_NUMBERS) {
    const value = norm[key];
    if (value !== undefined) out[key] = roundTo(value, digits[key]);
  }
  return out;
}

function roundedRow(row: readonly Cell[], places: readonly (number | undefined)[]): readonly Cell[] {
  const rounded = row.slice();
  for (let i = 0; i < row.length; i++) {
    const [cell, decimals] = [row[i], places[i]];
    if (typeof cell === "number" && decimals !== undefined) rounded[i] = roundTo(cell, decimals);
  }
  return rounded;
}

/** Section an entry is printed in: its catalogue row, or by kind for entries made from others. */
export function sectionOf(entry: Entry): (typeof SECTIONS)[number] {
  if (entry.kind === "remark") return "validity";
  return measureInfo(entry.id)?.section ?? "change";
}

/** Sections first, then the place in the catalogue; what is not in the catalogue comes last in its section. */
const byReportOrder = (a: Entry, b: Entry): number => placeOf(a) - placeOf(b);

const IDS = Object.keys(catalogue);
const FIRST_PLACES = Object.fromEntries(SECTIONS.map((section, i) => [section, i * (IDS.length + 1)])) as Readonly<
  Record<(typeof SECTIONS)[number], number>
>;
const PLACES = new Map(IDS.map((id, i) => [id, i]));
const placeOf = (entry: Entry): number => FIRST_PLACES[sectionOf(entry)] + (PLACES.get(entry.id) ?? IDS.length);
