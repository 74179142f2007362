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
import { comparability } from "./comparable.js";
import { type Chances, chances } from "./error/chances.js";
import { changeInterval } from "./error/change-interval.js";
import { type ErrorModel, errorModelFor } from "./error-model.js";
import type { Known } from "./known.js";
import { averagingNote, expectedGainNote, learningNote, referenceNote, regressionNote } from "./notes.js";
import type { Pooled } from "./occasions.js";
import { spoken } from "./spoken.js";
import { errorNotKnown, type Facts, notComparable, sentence, verdictOn } from "./verdict.js";
import { spreadFor, type Worthwhile, worthwhileFor } from "./worthwhile.js";

export function changeBetween(id: string, measure: string, before: Pooled, now: Pooled, known: Known): Change {
  const info = measureInfo(measure) ?? { title: measure, section: "change" };
  const change = roundTo(now.value - before.value, now.decimals);
  const facts: Facts = {
    measure,
    info,
    unit: now.unit,
    decimals: now.decimals,
    before: before.value,
    now: now.value,
    change,
    since: before.visit.date,
  };
  const { differs, unchecked } = comparability(measure, before.visit, now.visit);
  const tests = before.tests > 1 || now.tests > 1 ? { before: before.tests, now: now.tests } : undefined;
  const base = {
    kind: "change",
    id,
    measure,
    unit: now.unit,
    decimals: now.decimals,
    since: before.visit.date,
    before: before.value,
    now: now.value,
    change,
    ...(tests === undefined ? {} : { tests }),
    differs,
    ...(unchecked.length === 0 ? {} : { unchecked }),
    primary: known.primaryOutcomes.includes(measure),
  } as const;
  if (differs.length > 0) return { ...base, verdict: "not comparable", because: notComparable(facts, differs) };

  const model = errorModelFor(now, now.visit, known);
  const weighed = model && attempt(() => weigh(before, now, model, known));
  if (model === undefined || weighed === undefined)
    return { ...base, verdict: "error not known", because: errorNotKnown(facts) };
  // As printed: an interval that a reader sees beginning at 0.00 claims nothing.
  const printed = (x: number) => roundTo(x, now.decimals);
  const verdict = verdictOn({
    ...weighed.evidence,
    change,
    low: printed(weighed.evidence.low),
    high: printed(weighed.evidence.high),
  });
  const { typical, detectable, worthwhile } = weighed;
  const { low, high } = weighed.evidence;
  const notes = notesFor(before, now, weighed, model, known);
  return {
    ...base,
    low,
    high,
    typicalError: typical,
    errorFrom: model.from,
    detectable,
    ...(worthwhile === undefined ? {} : { worthwhile: worthwhile.value, worthwhileFrom: worthwhile.from }),
    ...(weighed.evidence.chances === undefined ? {} : { chances: inPercent(weighed.evidence.chances) }),
    ...(notes.length === 0 ? {} : { notes }),
    verdict,
    because: sentence(verdict, {
      ...facts,
      typical,
      detectable,
      low,
      high,
      ...(tests === undefined ? {} : { tests }),
      ...(worthwhile === undefined ? {} : { worthwhile: worthwhile.value }),
      ...(weighed.evidence.chances === undefined ? {} : { chances: weighed.evidence.chances }),
    }),
  };
}

interface Weighing {
  /** In the measure's unit, at the earlier value. */
  readonly typical: number;
  readonly detectable: number;
  readonly worthwhile?: Worthwhile;
  readonly evidence: { readonly low: number; readonly high: number; readonly chances?: Chances };
}

/** Interval and chances of a change. Throws OutOfRange where the error model or a logarithm does not reach. */
export function weigh(
  before: Pooled,
  now: Pooled,
  model: ErrorModel,
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
  const judged =
    worthwhile === undefined || (log && worthwhile.value >= before.value)
      ? undefined
      : {
          higher: side(1, worthwhile.value).higher,
          lower: side(-1, worthwhile.value).lower,
        };
  return {
    typical,
    detectable: Math.abs(back(change < 0 ? -half : half)),
    ...(worthwhile === undefined ? {} : { worthwhile }),
    evidence: {
      low: back(interval.low),
      high: back(interval.high),
      ...(judged === undefined
        ? {}
        : { chances: { ...judged, trivial: Math.max(0, 1 - judged.higher - judged.lower) } }),
    },
  };
}

/** Whole percent that add up to 100. */
function inPercent(c: Chances): { higher: number; trivial: number; lower: number } {
  const [higher, lower] = [roundTo(100 * c.higher, 0), roundTo(100 * c.lower, 0)];
  return { higher, trivial: Math.max(0, 100 - higher - lower), lower };
}

function notesFor(before: Pooled, now: Pooled, weighed: Weighing, model: ErrorModel, known: Known): string[] {
  const { measure, visit } = before;
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
