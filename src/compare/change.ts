/**
 * One change: gate first, then error, then verdict.
 *
 * Everything is computed from the printed values, so that a reader can repeat it. Where the error is a share of the value
 * the sum is done on logarithms and carried back to the unit, which makes the interval longer upwards than downwards.
 */

import { quantityOf } from "../kernel/entries.js";
import type { Change } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import { roundTo } from "../kernel/rounding.js";
import { attempt } from "./attempt.js";
import { type Comparability, comparability } from "./comparable.js";
import { type Chances, chances } from "./error/chances.js";
import { changeInterval } from "./error/change-interval.js";
import { type ErrorModel, errorModelFor } from "./error-model.js";
import type { Known } from "./known.js";
import { averagingNote, expectedGainNote, learningNote, referenceNote, regressionNote } from "./notes.js";
import type { Pooled } from "./occasions.js";
import { spoken } from "./spoken.js";
import {
  errorNotKnown,
  type Facts,
  notComparable,
  sentence,
  type Verdict,
  verdictOn,
  type Weighed,
} from "./verdict.js";
import { spreadFor, type Worthwhile, worthwhileFor } from "./worthwhile.js";

/** One change as it is judged; told in words only where a reader sees it. */
export interface Judged {
  readonly was: Pooled;
  readonly is: Pooled;
  readonly change: number;
  readonly comparable: Comparability;
  readonly primary: boolean;
  readonly verdict: Verdict;
  /** Where there is an error to weigh the change against. */
  readonly weighed: Weighing | undefined;
}

export function judgeChange(was: Pooled, is: Pooled, known: Known): Judged {
  const comparable = comparability(is.measure, was.visit, is.visit);
  const stopped = comparable.differs.length > 0;
  const weighed = stopped ? undefined : weigh(was, is, known);
  return {
    was,
    is,
    change: roundTo(is.value - was.value, is.decimals),
    comparable,
    primary: known.primaryOutcomes.includes(is.measure),
    verdict: stopped
      ? "not comparable"
      : weighed === undefined
        ? "error not known"
        : // As printed: an interval that a reader sees beginning at 0.00 claims nothing.
          verdictOn(roundTo(weighed.low, is.decimals), roundTo(weighed.high, is.decimals), weighed.chances),
    weighed,
  };
}

/** The entry a judged change is written as. */
export function tellChange(id: string, judged: Judged, known: Known): Change {
  const { was, is, change, comparable, verdict, weighed } = judged;
  const tests = was.tests > 1 || is.tests > 1 ? { before: was.tests, now: is.tests } : undefined;
  const facts: Facts = {
    measure: is.measure,
    info: measureInfo(is.measure) ?? { title: is.measure, section: "change" },
    unit: is.unit,
    decimals: is.decimals,
    before: was.value,
    now: is.value,
    change,
    since: was.visit.date,
  };
  return {
    kind: "change",
    id,
    measure: is.measure,
    unit: is.unit,
    decimals: is.decimals,
    since: was.visit.date,
    before: was.value,
    now: is.value,
    change,
    ...(tests === undefined ? {} : { tests }),
    differs: comparable.differs,
    ...(comparable.unchecked.length === 0 ? {} : { unchecked: comparable.unchecked }),
    primary: judged.primary,
    ...(weighed === undefined ? {} : weighedKeys(was, is, weighed, known)),
    verdict,
    because:
      weighed !== undefined
        ? sentence(verdict, facts, weighed, tests)
        : verdict === "not comparable"
          ? notComparable(facts, comparable.differs)
          : errorNotKnown(facts),
  };
}

function weighedKeys(was: Pooled, is: Pooled, weighed: Weighing, known: Known): Partial<Change> {
  const { worthwhile, chances } = weighed;
  const notes = notesFor(was, is, weighed, known);
  return {
    low: weighed.low,
    high: weighed.high,
    typicalError: weighed.typical,
    errorFrom: weighed.model.from,
    detectable: weighed.detectable,
    ...(worthwhile === undefined ? {} : { worthwhile: worthwhile.value, worthwhileFrom: worthwhile.from }),
    ...(chances === undefined ? {} : { chances: inPercent(chances) }),
    ...(notes.length === 0 ? {} : { notes }),
  };
}

interface Weighing extends Weighed {
  readonly model: ErrorModel;
  readonly worthwhile: Worthwhile | undefined;
}

/** Undefined where no error is known, or where the error model or a logarithm does not reach. */
function weigh(before: Pooled, now: Pooled, known: Known): Weighing | undefined {
  const model = errorModelFor(now, now.visit, known);
  return model && attempt(() => weighBy(model, before, now, known));
}

/** Interval and chances of a change. Throws OutOfRange where the error model or a logarithm does not reach. */
function weighBy(
  model: ErrorModel,
  before: Pooled,
  now: Pooled,
  known: Pick<Known, "worthwhile" | "spreads">,
): Weighing {
  const log = model.scale === "log";
  const into = (value: number) => (log ? Math.log(value) : value);
  const back = (x: number) => (log ? before.value * Math.expm1(x) : x);
  const error = model.errorAt((before.value + now.value) / 2);
  const change = into(now.value) - into(before.value);
  const interval = changeInterval(change, error, model.df, before.tests, now.tests);
  const half = interval.high - change;
  const typical = log ? before.value * Math.expm1(error) : error;
  const worthwhile = worthwhileFor(before.measure, now.visit.sex, typical, model, known);
  // A worthwhile rise and fall of equal size in the unit are unequal in logarithms: each side has its own threshold.
  const side = (sign: 1 | -1, w: number) =>
    chances(
      change,
      error,
      model.df,
      Math.abs(into(before.value + sign * w) - into(before.value)),
      before.tests,
      now.tests,
    );
  const sides =
    worthwhile === undefined || (log && worthwhile.value >= before.value)
      ? undefined
      : { higher: side(1, worthwhile.value).higher, lower: side(-1, worthwhile.value).lower };
  return {
    model,
    typical,
    detectable: Math.abs(back(change < 0 ? -half : half)),
    low: back(interval.low),
    high: back(interval.high),
    worthwhile,
    chances: sides && { ...sides, trivial: Math.max(0, 1 - sides.higher - sides.lower) },
  };
}

/** Whole percent that add up to 100. */
function inPercent(c: Chances): { higher: number; trivial: number; lower: number } {
  const [higher, lower] = [roundTo(100 * c.higher, 0), roundTo(100 * c.lower, 0)];
  return { higher, trivial: Math.max(0, 100 - higher - lower), lower };
}

function notesFor(before: Pooled, now: Pooled, weighed: Weighing, known: Known): string[] {
  const { measure, visit } = before;
  const { model } = weighed;
  const [was, is] = [quantityOf(visit, measure), quantityOf(now.visit, measure)];
  const spread = spreadFor(measure, visit.sex, model, known.spreads ?? []);
  return [
    was && regressionNote(was, before.tests, model, spread),
    learningNote(visit.conditions, measureInfo(measure)?.section ?? "change"),
    expectedGainNote(measure, visit.ageYears, weighed.detectable),
    weighed.worthwhile &&
      averagingNote(weighed.typical, weighed.worthwhile.value, (x) => spoken(measure, x, now.decimals + 1, now.unit)),
    was && is && referenceNote(was, is),
  ].filter((note) => note !== undefined);
}
