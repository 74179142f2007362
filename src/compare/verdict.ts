/**
 * The verdict on one change, and the sentence that says why.
 *
 * A change is claimed only when its 95 % interval leaves out zero; with no true change that happens in one of twenty
 * comparisons. Chances are printed beside it and never turn a change inside error into a claim. Words are this
 * project's own and the same in every edition.
 */
import type { MeasureInfo } from "../kernel/measure.js";
import { toDecimals } from "../kernel/rounding.js";
import type { Chances } from "./error/chances.js";
import { spoken, spokenDate } from "./spoken.js";

export const VERDICTS = [
  "higher, beyond error",
  "lower, beyond error",
  "no clear change",
  "cannot tell",
  "error not known",
  "not comparable",
] as const;
export type Verdict = (typeof VERDICTS)[number];

const MOSTLY = 0.75; // "likely" in the usual scale of chances (Hopkins, from memory)

/** From the 95 % interval of a change and, where a worthwhile change is known, its chances. */
export function verdictOn(low: number, high: number, chances: Chances | undefined): Verdict {
  if (low > 0) return "higher, beyond error";
  if (high < 0) return "lower, beyond error";
  if (chances === undefined || chances.trivial >= MOSTLY) return "no clear change";
  return "cannot tell";
}

/** Numbers of a change as the sentence prints them. */
export interface Facts {
  readonly measure: string;
  readonly info: MeasureInfo;
  readonly unit: string;
  readonly decimals: number;
  readonly before: number;
  readonly now: number;
  readonly change: number;
  readonly since: string;
}

const withUnit = (value: number, facts: Facts) => spoken(facts.measure, value, facts.decimals, facts.unit);
/** A difference: between percentages it is one in percentage points, not a share of anything. */
const apart = (value: number, decimals: number, facts: Facts) =>
  spoken(facts.measure, value, decimals, facts.unit === "%" ? "percentage points" : facts.unit);
/** One digit more than the measure, but not where that would be a fourth. */
const finer = (value: number, facts: Facts) => apart(value, facts.decimals + (Math.abs(value) < 100 ? 1 : 0), facts);
const signed = (value: number, facts: Facts) => {
  const text = toDecimals(Math.abs(value), facts.decimals);
  return value > 0 ? `+${text}` : value < 0 ? `−${text}` : text;
};
const name = (facts: Facts) => facts.info.title;

export const course = (facts: Facts): string =>
  `${name(facts)} went from ${withUnit(facts.before, facts)} on ${spokenDate(facts.since)} to ${withUnit(facts.now, facts)} (change ${signed(facts.change, facts)}).`;

export const notComparable = (facts: Facts, differs: readonly string[]): string =>
  `${course(facts)} The two values cannot be compared, so nothing is claimed. What differs: ${differs.join("; ")}.`;

export const errorNotKnown = (facts: Facts): string =>
  `${course(facts)} How much this measure varies between tests is not known here, so no verdict is given.`;

/** What weighing a change against its error found, in the measure's unit. */
export interface Weighed {
  /** At the earlier value. */
  readonly typical: number;
  readonly detectable: number;
  /** 95 % interval of the change. */
  readonly low: number;
  readonly high: number;
  readonly worthwhile: { readonly value: number } | undefined;
  readonly chances: Chances | undefined;
}
/** Tests averaged on each side, where either is more than one. */
type Tests = { readonly before: number; readonly now: number } | undefined;

export function sentence(verdict: Verdict, facts: Facts, weighed: Weighed, tests: Tests): string {
  const { chances, worthwhile } = weighed;
  const better = facts.info.better;
  const up = facts.change > 0;
  const wanted =
    better === undefined ? "" : (better === "higher") === up ? ", the direction wanted" : ", not the direction wanted";
  const typical = finer(weighed.typical, facts);
  const parts = [
    course(facts),
    `A single test varies by about ${typical} when nothing has changed${averaged(tests)}; a change of less than ${apart(weighed.detectable, facts.decimals, facts)} could be chance alone.`,
    `The true change lies, with 95 % confidence, between ${signed(weighed.low, facts)} and ${signed(weighed.high, facts)}.`,
  ];
  if (verdict === "higher, beyond error") parts.push(`It has risen by more than error explains${wanted}.`);
  if (verdict === "lower, beyond error") parts.push(`It has fallen by more than error explains${wanted}.`);
  if (verdict === "no clear change")
    parts.push(chances ? "Any change is probably too small to matter." : "No clear change is seen.");
  if (worthwhile && chances) parts.push(chanceSentence(worthwhile.value, chances, facts));
  if (verdict === "cannot tell") parts.push(leaning(chances));
  return parts.join(" ");
}

const averaged = (tests: Tests): string =>
  tests === undefined ? "" : ` (averaged here: ${tests.before} before, ${tests.now} now)`;

function chanceSentence(worthwhile: number, chances: Chances, facts: Facts): string {
  const size = finer(worthwhile, facts);
  return `Chance of a rise of at least ${size}: ${inHundred(chances.higher)}; of a fall of that size: ${inHundred(chances.lower)}.`;
}

/** Whole numbers out of 100; the ends are never called certain. */
function inHundred(share: number): string {
  if (share > 0.99) return "more than 99 in 100";
  if (share < 0.01) return "less than 1 in 100";
  return `about ${toDecimals(100 * share, 0)} in 100`;
}

function leaning(chances: Chances | undefined): string {
  if (chances && chances.higher >= MOSTLY && chances.lower < 0.05)
    return "A true rise is more likely than not, but one pair of tests cannot show it; a second test would help to settle it.";
  if (chances && chances.lower >= MOSTLY && chances.higher < 0.05)
    return "A true fall is more likely than not, but one pair of tests cannot show it; a second test would help to settle it.";
  return "We cannot tell yet whether it has changed.";
}
