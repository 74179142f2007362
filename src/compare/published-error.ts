/** The published error that covers a visit: among tables the one with most degrees of freedom. */
import type { TypicalErrorRow, TypicalErrorScope, TypicalErrorTable } from "../kernel/generated/typical-error.js";
import type { Results } from "../kernel/results.js";
import { logErrorOfPercent } from "./error/typical-error-percent.js";
import type { ErrorModel } from "./error-model.js";

export function publishedError(
  measure: string,
  visit: Pick<Results, "sex" | "ageYears" | "conditions">,
  tables: readonly TypicalErrorTable[],
): ErrorModel | undefined {
  return modelsFor(visit, tables).get(measure);
}

type Models = ReadonlyMap<string, ErrorModel>;
/** The models that cover a visit by measure, found once: every measure of the visit asks. */
const known = new WeakMap<object, WeakMap<readonly TypicalErrorTable[], Models>>();

function modelsFor(
  visit: Pick<Results, "sex" | "ageYears" | "conditions">,
  tables: readonly TypicalErrorTable[],
): Models {
  const ofVisit = known.get(visit) ?? new WeakMap<readonly TypicalErrorTable[], Models>();
  known.set(visit, ofVisit);
  const models = ofVisit.get(tables) ?? bestOf(visit, tables);
  ofVisit.set(tables, models);
  return models;
}

/** For each measure the covering row with most degrees of freedom, the first of equals. */
function bestOf(visit: Pick<Results, "sex" | "ageYears" | "conditions">, tables: readonly TypicalErrorTable[]): Models {
  const best = new Map<string, ErrorModel>();
  for (const table of tables.filter(({ applies }) => covers(applies, visit)))
    for (const row of table.rows.filter(({ applies }) => covers(applies ?? {}, visit))) {
      const model = modelOf(table, row);
      for (const measure of row.measures) {
        const held = best.get(measure);
        if (held === undefined || model.df > held.df) best.set(measure, model);
      }
    }
  return best;
}

const degrees = (row: TypicalErrorRow): number => (row.df === "known" ? Number.POSITIVE_INFINITY : row.df);

/** Whether a table's limits take this visit in. A mode that was not recorded is not taken in. */
function covers(scope: TypicalErrorScope, visit: Pick<Results, "sex" | "ageYears" | "conditions">): boolean {
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
