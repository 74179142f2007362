/**
 * Test-retest pairs out of visits: each visit with purpose reliability, paired with the client's nearest other visit within
 * fourteen days and with nothing that differs. One set a measure and kind of exercise, over all clients.
 */

import { daysBetween } from "../kernel/days.js";
import { quantityOf } from "../kernel/entries.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { comparability } from "./comparable.js";
import type { Pair } from "./error/pairs.js";
import type { RetestSet } from "./known.js";

const MOST_DAYS = 14;
/** Sections whose values belong to one kind of exercise. */
const BY_MODE = ["incremental", "thresholds", "economy"];

/** Visits of any clients in any order. A visit serves in one pair only. */
export function retestPairs(visits: readonly Results[]): readonly RetestSet[] {
  const sets = new Map<string, { measure: string; mode?: string; pairs: Pair[]; days: number[] }>();
  const used = new Set<Results>();
  for (const repeat of visits.filter((visit) => visit.purpose === "reliability")) {
    if (used.has(repeat)) continue;
    const partner = nearest(repeat, visits, used);
    if (partner === undefined) continue;
    used.add(repeat).add(partner);
    const [first, second] = inOrder(partner, repeat);
    for (const entry of second.entries) {
      const test = quantityOf(first, entry.id);
      const info = measureInfo(entry.id);
      if (entry.kind !== "quantity" || !test || !info) continue;
      if (comparability(entry.id, first, second).differs.length > 0) continue;
      const mode = BY_MODE.includes(info.section) ? second.conditions.mode : undefined;
      const key = `${entry.id} ${mode ?? ""}`;
      const set = sets.get(key) ?? { measure: entry.id, ...(mode === undefined ? {} : { mode }), pairs: [], days: [] };
      set.pairs.push([test.value, entry.value]);
      set.days.push(daysBetween(first.date, second.date));
      sets.set(key, set);
    }
  }
  return [...sets.values()].map(({ measure, mode, pairs, days }) => ({
    measure,
    pairs,
    daysBetween: range(days),
    from: "visits repeated to learn the laboratory's own error",
    ...(mode === undefined ? {} : { conditions: { mode } }),
  }));
}

function nearest(repeat: Results, visits: readonly Results[], used: ReadonlySet<Results>): Results | undefined {
  const apart = (other: Results) => Math.abs(daysBetween(other.date, repeat.date));
  return visits
    .filter(
      (other) => other !== repeat && other.client === repeat.client && !used.has(other) && apart(other) <= MOST_DAYS,
    )
    .sort((a, b) => apart(a) - apart(b) || (a.date < b.date ? -1 : 1))[0];
}

const inOrder = (a: Results, b: Results): readonly [Results, Results] => (a.date <= b.date ? [a, b] : [b, a]);
const range = (days: readonly number[]) => {
  const [low, high] = [Math.min(...days), Math.max(...days)];
  return low === high ? `${low}` : `${low} to ${high}`;
};
