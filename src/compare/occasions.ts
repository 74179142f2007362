/**
 * Occasions: visits that stand for one point in time. Tests repeated within days, without training between them, are
 * averaged, because two tests on each side shrink the error of a change by √2.
 */

import { daysBetween } from "../kernel/days.js";
import { quantityOf } from "../kernel/entries.js";
import type { MeasurementError } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { roundTo } from "../kernel/rounding.js";
import { comparability } from "./comparable.js";

/** Visits of one occasion, oldest first. */
export type Occasion = readonly Results[];

const DAYS_OF_ONE_OCCASION = 7;

/** Groups visits of one client by date: within seven days of the first, and of one purpose or a reliability visit. */
export function occasionsOf(visits: readonly Results[]): readonly Occasion[] {
  const sorted = [...visits].sort((a, b) => compareText(a.date, b.date) || compareText(a.label ?? "", b.label ?? ""));
  const out: Results[][] = [];
  for (const visit of sorted) {
    const last = out.at(-1);
    const first = last?.[0];
    if (last && first && daysBetween(first.date, visit.date) <= DAYS_OF_ONE_OCCASION && belongs(first, visit))
      last.push(visit);
    else out.push([visit]);
  }
  return out;
}

const compareText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
const belongs = (first: Results, visit: Results) =>
  first.purpose === visit.purpose || first.purpose === "reliability" || visit.purpose === "reliability";

/** The occasion's own visit: the last one that is not a mere repeat. */
export function anchorOf(occasion: Occasion): Results {
  if (occasion.length === 1) return occasion[0] as Results;
  const own = occasion.filter((visit) => visit.purpose !== "reliability");
  return (own.at(-1) ?? occasion.at(-1)) as Results;
}

export interface Pooled {
  readonly measure: string;
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
  readonly tests: number;
  /** The error recorded with the value of `visit`. */
  readonly error: MeasurementError | undefined;
  /** The visit whose conditions stand for the occasion: the last that holds the measure. */
  readonly visit: Results;
}

/** The mean of a measure over the comparable visits of an occasion, rounded as printed; undefined where none holds it. */
export function pooled(occasion: Occasion, id: string): Pooled | undefined {
  const anchor = anchorOf(occasion);
  const visit =
    occasion.length === 1 || quantityOf(anchor, id) !== undefined
      ? anchor
      : occasion.findLast((one) => quantityOf(one, id) !== undefined);
  const entry = visit && quantityOf(visit, id);
  if (!visit || !entry) return undefined;
  const { unit, error } = entry;
  let sum = 0;
  let tests = 0;
  for (const other of occasion) {
    const value = other === visit ? entry.value : quantityOf(other, id)?.value;
    if (value === undefined || (other !== visit && comparability(id, other, visit).differs.length > 0)) continue;
    sum += value;
    tests++;
  }
  const decimals = measureInfo(id)?.decimals ?? entry.decimals;
  return { measure: id, value: roundTo(sum / tests, decimals), unit, decimals, tests, visit, error };
}
