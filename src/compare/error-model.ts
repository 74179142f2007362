/**
 * Which measurement error holds for a measure of this client: the laboratory's own retests first, then a published
 * table, else none, and then no verdict is given.
 *
 * Ten pairs of its own make a laboratory's error usable (common practice); with three to nine it is used only where
 * nothing is published. Among published tables the one with most degrees of freedom is taken.
 */
import type { MeasurementError } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { toDecimals } from "../kernel/rounding.js";
import { mean, sampleSd } from "../kernel/statistics.js";
import { attempt } from "./attempt.js";
import { intraclassConsistency } from "./error/intraclass-consistency.js";
import { typicalError } from "./error/typical-error.js";
import { logError, percentOfLogError } from "./error/typical-error-percent.js";
import type { Known, RetestSet, Spread } from "./known.js";
import { publishedError } from "./published-error.js";

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
  readonly reliability?: number | undefined;
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
const SAME_TEST: ReadonlyMap<string, string> = new Map([
  ["vo2_peak_per_mass", "vo2_peak"],
  ["vt1_vo2_per_mass", "vt1_vo2"],
  ["vt2_vo2_per_mass", "vt2_vo2"],
]);

/** The largest set of a measure that agrees with the visit; the first of equals. */
function ownSet(
  id: string | undefined,
  visit: Pick<Results, "conditions">,
  known: Pick<Known, "laboratoryRetests">,
): RetestSet | undefined {
  let best: RetestSet | undefined;
  for (const set of known.laboratoryRetests) {
    if (set.measure !== id || set.pairs.length < FEWEST_PAIRS || !agrees(set, visit.conditions)) continue;
    if (best === undefined || set.pairs.length > best.pairs.length) best = set;
  }
  return best;
}

/** What a measure is to its error: id, unit, and the error that was recorded with the value. */
export interface Measured {
  readonly measure: string;
  readonly unit: string;
  readonly error?: MeasurementError | undefined;
}

export function errorModelFor(
  measured: Measured,
  visit: Pick<Results, "sex" | "ageYears" | "conditions">,
  known: Pick<Known, "laboratoryRetests" | "publishedErrors">,
): ErrorModel | undefined {
  const id = measured.measure;
  const own = ownSet(id, visit, known) ?? ownSet(SAME_TEST.get(id), visit, known);
  const fromOwn = own && fromSet(own, measured);
  if (own && fromOwn && own.pairs.length >= ENOUGH_PAIRS) return fromOwn;
  return precisionStudy(measured.error) ?? publishedError(id, visit, known.publishedErrors) ?? fromOwn;
}

/**
 * The laboratory's own precision study, where it was recorded with the value (densitometry). Its degrees of freedom are not
 * recorded, so the error is taken as known. Other errors recorded with a value are those of an equation, not of a retest.
 */
function precisionStudy(error: MeasurementError | undefined): ErrorModel | undefined {
  const typical = error?.typical;
  if (error === undefined || typical === undefined || !error.from.startsWith("the laboratory's own precision study"))
    return undefined;
  return { scale: "raw", errorAt: () => typical, df: Number.POSITIVE_INFINITY, from: error.from };
}

const agrees = (set: RetestSet, conditions: Results["conditions"]): boolean =>
  Object.entries(set.conditions ?? {}).every(
    ([name, word]) => conditions[name] === undefined || conditions[name] === word,
  );

/** Found before, by set, measure and unit: the pairs are the same for every visit. */
const models = new WeakMap<RetestSet, Map<string, ErrorModel | undefined>>();

function fromSet(set: RetestSet, measured: Measured): ErrorModel | undefined {
  const ofSet = models.get(set) ?? new Map<string, ErrorModel | undefined>();
  models.set(set, ofSet);
  const key = `${measured.measure} ${measured.unit}`;
  if (!ofSet.has(key))
    ofSet.set(
      key,
      attempt(() => laboratoryError(set, measured)),
    );
  return ofSet.get(key);
}

function laboratoryError(set: RetestSet, measured: Measured): ErrorModel {
  const other = set.measure !== measured.measure;
  const log = growsWithValue(measured.unit, measured.measure) && set.pairs.flat().every((value) => value > 0);
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
    ...(other ? {} : { reliability: attempt(() => intraclassConsistency(set.pairs).value), ...spreadOf(set) }),
  };
}

/** How much the people of a retest sample differ; of few people, or of people all alike, nothing is concluded. */
function spreadOf({ measure, pairs }: RetestSet): { readonly spread?: Spread } {
  const firsts = pairs.map(([first]) => first);
  const sd = sampleSd(firsts);
  if (pairs.length < ENOUGH_PAIRS || !(sd > 0)) return {};
  const from = `the ${pairs.length} people of the laboratory's retests`;
  return { spread: { measure, sd, mean: mean(firsts), from } };
}
