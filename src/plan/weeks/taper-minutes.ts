/** Minutes of the taper's weeks: together 1 − reduction of the level before, spread by the days that are trained on. */
import { taperDays } from "./taper.js";

/** Shorter than this is no session: it goes to the other week. */
const LEAST_MIN = 15;

/**
 * `before` minutes a week before the taper, its length in days, the reduction (0.41 to 0.6), and for each of its weeks the
 * days that can be trained on, counted from 0 at the taper's first day. No week holds more than `before`.
 */
export function taperMinutes(
  before: number,
  length: number,
  reduction: number,
  weeks: readonly (readonly number[])[],
): readonly number[] {
  const shares = taperDays(reduction, length);
  const weights = weeks.map((days) => days.reduce((sum, day) => sum + (shares[day] ?? 0), 0));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  if (all === 0) return weeks.map(() => 0);
  const { total, step } = totalOf((before * length) / 7, reduction);
  const minutes = weights.map((weight) => Math.round((total * weight) / all / step) * step);
  const most = minutes.indexOf(Math.max(...minutes));
  const others = minutes.reduce((sum, one, i) => (i === most ? sum : sum + (one < LEAST_MIN ? 0 : one)), 0);
  return minutes.map((one, i) => (i === most ? Math.min(total - others, before) : one < LEAST_MIN ? 0 : one));
}

/** Steps of five minutes; whole minutes where fives would leave the published range. */
function totalOf(whole: number, reduction: number): { readonly total: number; readonly step: number } {
  const wanted = whole * (1 - reduction);
  const fives = Math.round(wanted / 5) * 5;
  if (1 - fives / whole >= 0.41 && 1 - fives / whole <= 0.6) return { total: fives, step: 5 };
  const total = Math.min(Math.floor(whole * 0.59), Math.max(Math.ceil(whole * 0.4), Math.round(wanted)));
  return { total, step: 1 };
}
