/** Finding the printed row, and the cell across it, that a person falls in. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import { roundTo } from "../kernel/rounding.js";
import { ageFor } from "./applies.js";
import { once } from "./once.js";
import type { Point } from "./percentile-linear.js";
import type { Person } from "./person.js";

export type Row = readonly (number | string | null)[];

export const rowsFor = (table: ReferenceTable, sex: Person["sex"]): readonly Row[] =>
  table.values?.[sex] ?? table.values?.all ?? [];

export const columnsOf = (table: ReferenceTable): readonly string[] => table.columns ?? [];

/** The cell of a named column, or undefined where the column is absent or nothing is printed. */
export function cell(table: ReferenceTable, row: Row, column: string): number | undefined {
  const found = row[columnsOf(table).indexOf(column)];
  return typeof found === "number" ? found : undefined;
}

export interface Band {
  readonly row: Row;
  readonly from: number;
  readonly to: number;
}

/** The rows of a banded table with their age bands, in completed years. */
export const bandsFor = (table: ReferenceTable, sex: Person["sex"]): readonly Band[] =>
  bandsOf(table, rowsFor(table, sex));

const bandsOf = once((table, rows: readonly Row[]): readonly Band[] =>
  rows.flatMap((row) => {
    const from = cell(table, row, "age_from");
    const to = cell(table, row, "age_to");
    return from === undefined || to === undefined ? [] : [{ row, from, to }];
  }),
);

export function bandOf(table: ReferenceTable, person: Person): Band | undefined {
  const age = ageFor(table, person);
  return bandsFor(table, person.sex).find((band) => age >= band.from && age <= band.to);
}

/** Columns named 160-164, in order. */
export const acrossBands = (table: ReferenceTable): readonly Across[] => acrossIn(table, columnsOf(table));

interface Across {
  readonly column: string;
  readonly from: number;
  readonly to: number;
}

const acrossIn = once((_table, columns: readonly string[]): readonly Across[] =>
  columns.flatMap((column) => {
    const match = /^(\d+)-(\d+)$/.exec(column);
    return match ? [{ column, from: Number(match[1]), to: Number(match[2]) }] : [];
  }),
);

/** The column a person falls in by the fact printed across the page, rounded to whole units as the bands are. */
export function acrossOf(table: ReferenceTable, person: Person): Across | undefined {
  if (table.across === undefined) return undefined;
  const fact = person.facts[table.across.fact];
  if (typeof fact !== "number") return undefined;
  const whole = roundTo(fact, 0);
  return acrossBands(table).find((band) => whole >= band.from && whole <= band.to);
}

/** Printed percentiles of a row, rising. */
export const pointsOf = (table: ReferenceTable, band: Band): readonly Point[] => pointsIn(table, band.row);

const pointsIn = once((table, row: Row): readonly Point[] =>
  columnsOf(table)
    .flatMap((column): Point[] => {
      const percentile = /^p(\d+(?:\.\d+)?)$/.exec(column)?.[1];
      const value = cell(table, row, column);
      return percentile === undefined || value === undefined ? [] : [[Number(percentile), value]];
    })
    .sort((a, b) => a[0] - b[0]),
);
