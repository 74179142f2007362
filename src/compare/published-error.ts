/** The published error that covers a visit: among tables the one with most degrees of freedom. */
import type { TypicalErrorRow, TypicalErrorScope, TypicalErrorTable } from "../kernel/generated/typical-error.js";
import type { Results } from "../kernel/results.js";
import { logErrorOfPercent } from "./error/typical-error-percent.js";
import type { ErrorModel } from "./error-model.js";

type Person = Pick<Results, "sex" | "ageYears" | "conditions">;

export const publishedError = (
  measure: string,
  visit: Person,
  tables: readonly TypicalErrorTable[],
): ErrorModel | undefined =>
  printedIn(tables)
    .get(measure)
    ?.find(({ table, row }) => covers(table.applies, visit) && covers(row.applies ?? {}, visit))?.model;

interface Printed {
  readonly table: TypicalErrorTable;
  readonly row: TypicalErrorRow;
  readonly model: ErrorModel;
}
/** The rows of a list of tables by measure, read once: most degrees of freedom first, equals as they stand. */
const known = new WeakMap<readonly TypicalErrorTable[], ReadonlyMap<string, readonly Printed[]>>();

function printedIn(tables: readonly TypicalErrorTable[]): ReadonlyMap<string, readonly Printed[]> {
  const read = known.get(tables);
  if (read !== undefined) return read;
  const rows = tables.flatMap((table) => table.rows.map((row) => ({ table, row, model: modelOf(table, row) })));
  rows.sort((a, b) => Number(b.model.df > a.model.df) - Number(b.model.df < a.model.df));
  const byMeasure = new Map<string, Printed[]>();
  for (const printed of rows)
    for (const measure of printed.row.measures) {
      const held = byMeasure.get(measure);
      if (held === undefined) byMeasure.set(measure, [printed]);
      else held.push(printed);
    }
  known.set(tables, byMeasure);
  return byMeasure;
}

const degrees = (row: TypicalErrorRow): number => (row.df === "known" ? Number.POSITIVE_INFINITY : row.df);

/** Whether a table's limits take this visit in. A mode that was not recorded is not taken in. */
function covers(scope: TypicalErrorScope, visit: Person): boolean {
  const mode = visit.conditions.mode;
  if (scope.mode && (mode === undefined || !scope.mode.includes(mode))) return false;
  if (scope.sex && !scope.sex.includes(visit.sex)) return false;
  const [low, high] = scope.age_years ?? [0, Number.POSITIVE_INFINITY];
  return visit.ageYears >= (low as number) && visit.ageYears < (high as number) + 1;
}

function daysApart(days: string | undefined): string {
  if (days === undefined) return "days between tests not stated";
  if (days === "0") return "on one day";
  return days.startsWith("within") ? `${days} days` : days === "1" ? "1 day apart" : `${days} days apart`;
}

/** The model a printed row stands for. */
export function modelOf(table: TypicalErrorTable, row: TypicalErrorRow): ErrorModel {
  const { value = 0, intercept = 0, slope = 0 } = row;
  const size =
    row.statistic === "percent" ? `CV ${value} %` : row.statistic === "unit" ? `${value} ${row.unit}` : "by value";
  const people =
    table.n !== undefined
      ? `n ${table.n}`
      : table.studies !== undefined
        ? `${table.studies} studies`
        : table.population;
  const note = row.note === undefined ? "" : `. ${row.note}`;
  const days = daysApart(table.days_between);
  const memory = table.verified === "memory" ? "; from memory, to be checked against the source" : "";
  const { authors, year, journal } = table.source;
  return {
    scale: row.statistic === "percent" ? "log" : "raw",
    errorAt:
      row.statistic === "uptake-line"
        ? (at) => Math.exp(intercept + slope * at)
        : () => (row.statistic === "percent" ? logErrorOfPercent(value) : value),
    df: degrees(row),
    from: `${size}, ${people}, ${days}: ${authors}${year === null ? "" : ` ${year}`}${journal ? `, ${journal}` : ""}${memory}${note}`,
  };
}
