/**
 * Progress towards a target with a date: on course, behind, or cannot tell yet.
 *
 * The straight line from baseline to target is where the client should be at a visit. What is asked is whether the true
 * value has reached that line, with the error of the baseline (which moves the line) and of this visit. From three
 * chances in four upwards the word is given, otherwise "cannot tell yet" (own rule).
 */
import { daysBetween } from "../kernel/days.js";
import type { Judgement } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import { attempt } from "./attempt.js";
import { comparability } from "./comparable.js";
import { chanceOfReaching } from "./error/chance-of-reaching.js";
import { errorModelFor } from "./error-model.js";
import type { Known, Target } from "./known.js";
import { anchorOf, type Occasion, pooled } from "./occasions.js";
import { spoken, spokenDate } from "./spoken.js";

const SURE = 0.75;

export function progress(
  target: Target,
  place: number,
  baseline: Occasion,
  now: Occasion,
  known: Known,
): Judgement | undefined {
  const measure = target.measure;
  const info = measureInfo(measure);
  const title = info?.title ?? measure;
  const bound = target.atLeast ?? target.atMost;
  if (bound === undefined) return undefined;
  const direction = target.atLeast === undefined ? -1 : 1;
  const id = `goal_${measure}_${place}`;
  const date = anchorOf(now).date;
  const is = pooled(now, measure);
  if (!is)
    return {
      kind: "judgement",
      id,
      verdict: "cannot tell yet",
      because: `${title} was not given on ${spokenDate(date)}.`,
    };
  const print = (value: number) => spoken(measure, value, is.decimals, is.unit);
  const aim = `The target for "${target.goal}" is ${direction > 0 ? "at least" : "at most"} ${print(bound)}${target.date ? ` by ${spokenDate(target.date)}` : ""}; now ${print(is.value)}.`;
  const judge = (verdict: string, why: string): Judgement => ({
    kind: "judgement",
    id,
    verdict,
    because: `${aim} ${why}`,
  });

  const model = errorModelFor(is, is.visit, known);
  if (!model) return judge("cannot tell yet", "How much this measure varies between tests is not known here.");
  const log = model.scale === "log";
  const into = (x: number) => (log ? Math.log(x) : x);
  const reach = (line: number, weight: number, testsBefore: number) =>
    attempt(() =>
      chanceOfReaching(
        direction * (into(is.value) - into(line)),
        model.errorAt(is.value),
        model.df,
        weight,
        testsBefore,
        is.tests,
      ),
    );
  const reached = reach(bound, 0, 1);
  if (reached === undefined) return judge("cannot tell yet", "The error of this measure is not known at this value.");
  if (reached >= SURE)
    return judge("reached", `The chance that the true value is there is about ${inHundred(reached)}.`);
  const short = `The chance that the true value is already there is about ${inHundred(reached)}.`;
  if (target.date === undefined)
    return judge("cannot tell yet", `${short} The target has no date to measure progress against.`);
  if (daysBetween(date, target.date) <= 0)
    return judge(reached <= 1 - SURE ? "not reached" : "cannot tell yet", `${short} The date has come.`);
  const was = pooled(baseline, measure);
  if (!was || was.visit === is.visit)
    return judge("cannot tell yet", `${short} This is the first value; progress shows at the next visit.`);
  const { differs } = comparability(measure, was.visit, is.visit);
  if (differs.length > 0)
    return judge("cannot tell yet", `${short} It cannot be compared with the baseline: ${differs.join("; ")}.`);
  if (direction * (bound - was.value) <= 0)
    return judge(
      "cannot tell yet",
      `${short} The baseline ${print(was.value)} was already there, so progress towards it has no line.`,
    );
  const share = daysBetween(was.visit.date, date) / daysBetween(was.visit.date, target.date);
  const line = was.value + share * (bound - was.value);
  const chance = reach(line, 1 - share, was.tests);
  if (chance === undefined) return judge("cannot tell yet", short);
  const where = `On a straight line from ${print(was.value)} on ${spokenDate(was.visit.date)} it would now be ${print(line)}; the chance of being there is about ${inHundred(chance)}.`;
  return judge(chance >= SURE ? "on course" : chance <= 1 - SURE ? "behind" : "cannot tell yet", where);
}

function inHundred(share: number): string {
  const n = Math.min(99, Math.max(1, Math.round(100 * share)));
  return `${n} in 100`;
}
