/**
 * Which measurement error holds for a measure of this client: the laboratory's own retests first, then a published
 * table, else none, and then no verdict is given.
 *
 * Ten pairs of its own make a laboratory's error usable (common practice); with three to nine it is used only where
 * nothing is published. Among published tables the one with most degrees of freedom is taken.
 */
import { OutOfRange } from "../kernel/formula.js";
import type { TypicalErrorRow, TypicalErrorScope, TypicalErrorTable } from "../kernel/generated/typical-error.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { toDecimals } from "../kernel/rounding.js";
import { sampleSd } from "../kernel/statistics.js";
import { intraclassConsistency } from "./error/intraclass-consistency.js";
import { typicalError } from "./error/typical-error.js";
import { logError, logErrorOfPercent, percentOfLogError } from "./error/typical-error-percent.js";
import type { Known, RetestSet, Spread } from "./known.js";

export interface ErrorModel {
  /** log: the error is a share of the value, and computing is done on natural logarithms. */
  readonly scale: "raw" | "log";
  /** Error of one test near this value: in the measure's unit (raw) or in log units. Throws OutOfRange where a source ends. */
  readonly errorAt: (value: number) => number;
  /** Infinity where the error is taken as known. */
  readonly df: number;
  /** "laboratory retests, 12 pairs, …" or the published source with n and days. */
  readonly from: string;
  /** Of the laboratory's retest sample: reliability and spread between people. */
  readonly reliability?: () => number | undefined;
  readonly spread?: Spread;
}

const ENOUGH_PAIRS = 10;
const FEWEST_PAIRS = 3;
/** Units in which error grows with the value, so that a strong and a weak client share a percentage (own rule). */
const GROWING = [
  "L/min",
  "mL/min",
  "mL/kg/min",
  "W",
  "W/kg",
  "kcal/d",
  "kcal/day",
  "kg/kg",
  "N",
  "N/kg",
  "m",
  "L",
  "mL/beat",
];
const growsWithValue = (unit: string, id: string) =>
  GROWING.includes(unit) || (unit === "kg" && /grip|press|strength/.test(id));

/**
 * A value per kilogram varies as the uptake it is made of: the laboratory's retests of the one, as a percentage, serve for
 * the other where it has none. Body mass adds little (some tenths of a percent beside several), and nothing is published for it.
 */
const SAME_TEST: Readonly<Record<string, string>> = {
  vo2_peak_per_mass: "vo2_peak",
  vt1_vo2_per_mass: "vt1_vo2",
  vt2_vo2_per_mass: "vt2_vo2",
};

const ownSet = (
  id: string,
  visit: Pick<Results, "conditions">,
  known: Pick<Known, "laboratoryRetests">,
): RetestSet | undefined =>
  known.laboratoryRetests
    .filter((set) => set.measure === id && set.pairs.length >= FEWEST_PAIRS && agrees(set, visit.conditions))
    .sort((a, b) => b.pairs.length - a.pairs.length)[0];

export function errorModelFor(
  measure: { readonly id: string; readonly unit: string },
  visit: Pick<Results, "sex" | "ageYears" | "conditions">,
  known: Pick<Known, "laboratoryRetests" | "publishedErrors">,
): ErrorModel | undefined {
  const own = ownSet(measure.id, visit, known) ?? ownSet(SAME_TEST[measure.id] ?? "", visit, known);
  const fromOwn = own && attempt(() => laboratoryError(own, measure));
  if (own && fromOwn && own.pairs.length >= ENOUGH_PAIRS) return fromOwn;
  return publishedError(measure.id, visit, known.publishedErrors) ?? fromOwn;
}

const agrees = (set: RetestSet, conditions: Results["conditions"]): boolean =>
  Object.entries(set.conditions ?? {}).every(
    ([name, word]) => conditions[name] === undefined || conditions[name] === word,
  );

function laboratoryError(set: RetestSet, measure: { readonly id: string; readonly unit: string }): ErrorModel {
  const other = set.measure !== measure.id;
  const log = growsWithValue(measure.unit, measure.id) && set.pairs.flat().every((value) => value > 0);
  const error = log ? logError(set.pairs) : typicalError(set.pairs);
  const n = set.pairs.length;
  const size = log ? `, CV ${toDecimals(percentOfLogError(error), 1)} %` : "";
  const days = set.daysBetween === undefined ? "" : `, ${set.daysBetween} days apart`;
  const few = n < ENOUGH_PAIRS ? ", fewer than ten pairs" : "";
  return {
    scale: log ? "log" : "raw",
    errorAt: () => error,
    df: n - 1,
    from: `laboratory retests${other ? ` of ${measureInfo(set.measure)?.title.toLowerCase() ?? set.measure}` : ""}, ${n} pairs${days}${size}${few} (${set.from})`,
    ...(other
      ? {}
      : {
          reliability: () => attempt(() => intraclassConsistency(set.pairs).value),
          spread: {
            measure: set.measure,
            sd: sampleSd(set.pairs.map(([first]) => first)),
            mean: set.pairs.reduce((sum, [first]) => sum + first, 0) / n,
            from: `the ${n} people of the laboratory's retests`,
          },
        }),
  };
}

function publishedError(
  measure: string,
  visit: Pick<Results, "sex" | "ageYears" | "conditions">,
  tables: readonly TypicalErrorTable[],
): ErrorModel | undefined {
  const rows = tables
    .filter((table) => covers(table.applies, visit))
    .flatMap((table) => table.rows.filter((row) => covers(row.applies ?? {}, visit)).map((row) => ({ table, row })))
    .filter(({ row }) => row.measures.includes(measure))
    .sort((a, b) => degrees(b.row) - degrees(a.row));
  const best = rows[0];
  return best && modelOf(best.table, best.row);
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

/** The model a printed row stands for. */
export function modelOf(table: TypicalErrorTable, row: TypicalErrorRow): ErrorModel {
  const { value = 0, intercept = 0, slope = 0 } = row;
  const size =
    row.statistic === "percent" ? `CV ${value} %` : row.statistic === "unit" ? `${value} ${row.unit}` : "by value";
  const people = table.n === undefined ? `${table.studies ?? "several"} studies` : `n ${table.n}`;
  const days = table.days_between === undefined ? "days between tests not stated" : `${table.days_between} days apart`;
  const memory = table.verified === "memory" ? "; from memory, to be checked against the source" : "";
  const { authors, year, journal } = table.source;
  return {
    scale: row.statistic === "percent" ? "log" : "raw",
    errorAt:
      row.statistic === "uptake-line"
        ? (at) => Math.exp(intercept + slope * at)
        : () => (row.statistic === "percent" ? logErrorOfPercent(value) : value),
    df: degrees(row),
    from: `${size}, ${people}, ${days}: ${authors}${year === null ? "" : ` ${year}`}${journal ? `, ${journal}` : ""}${memory}`,
  };
}

/** undefined where a formula refuses its input. */
export function attempt<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}
