/**
 * Whether two exercise tests were carried equally far. A value from a test that stopped early is not a lower peak.
 *
 * Own rule: a claim about a peak stops where either test ended before the limit, where peak heart rate differs by more than
 * ten beats a minute, or perceived exertion at the end by two steps or more. Where a maximum was confirmed at one visit only,
 * it stops too unless heart rate shows equal effort. Secondary signs only ever stop a claim; they never make one.
 */

import { entryOf, quantityOf } from "../kernel/entries.js";
import type { Results } from "../kernel/results.js";
import { toDecimals } from "../kernel/rounding.js";
import type { Comparability } from "./comparable.js";
import { spokenDate } from "./spoken.js";

const HEART_RATE_APART = 10;
const EXERTION_APART = 2;
const PEAK = /peak/;

export const dependsOnEffort = (id: string, section: string): boolean =>
  PEAK.test(id) && (section === "incremental" || section === "thresholds");

/** `byRate` is whether peak heart rate may vouch for the measure in question. */
export function effortOf(byRate: boolean, before: Results, now: Results): Comparability {
  const differs = [before, now].flatMap((visit) => {
    const stop = visit.conditions.stop;
    return stop?.startsWith("before the limit")
      ? [`how far the test went (${stop}, on ${spokenDate(visit.date)})`]
      : [];
  });
  const rates = [before, now].map((visit) => quantityOf(visit, "heart_rate_peak")?.value);
  const [was, is] = rates;
  const rateKnown = byRate && was !== undefined && is !== undefined;
  const rateAlike = rateKnown && Math.abs(is - was) <= HEART_RATE_APART;
  if (rateKnown && !rateAlike)
    differs.push(`effort by peak heart rate (${toDecimals(was, 0)}, now ${toDecimals(is, 0)} beats/min)`);
  const [felt, feels] = [before.conditions.end_exertion, now.conditions.end_exertion];
  if (felt !== undefined && feels !== undefined && !exertionAlike(felt, feels))
    differs.push(`effort by perceived exertion (${felt}, now ${feels})`);
  const [first, second] = [verdictOf(before), verdictOf(now)];
  if (first === "VO2max" && second === "VO2max") return { differs, unchecked: [] };
  const confirmed = [first, second].filter((word) => word === "VO2max").length;
  if (confirmed === 0) return { differs, unchecked: ["whether a maximum was reached (confirmed at neither visit)"] };
  if (rateAlike)
    return {
      differs,
      unchecked: ["whether a maximum was reached (confirmed at one visit only; peak heart rates agree)"],
    };
  return {
    differs: [...differs, `whether a maximum was confirmed (${first ?? "not judged"}, now ${second ?? "not judged"})`],
    unchecked: [],
  };
}

/** "19 of 6-20" against "15 of 6-20". */
function exertionAlike(a: string, b: string): boolean {
  const [x, y] = [a, b].map((text) => ({ value: Number(text.split(" ")[0]), scale: text.split(" of ")[1] }));
  return x?.scale === y?.scale && Math.abs((x?.value ?? 0) - (y?.value ?? 0)) < EXERTION_APART;
}

/** "VO2max" where a maximum was confirmed, else "VO2peak"; undefined where it was not judged. */
function verdictOf(results: Results): string | undefined {
  const entry = entryOf(results, "maximality");
  return entry?.kind === "judgement" ? entry.verdict : undefined;
}
