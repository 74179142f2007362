/** A birth date that tells no more than the years of age at each visit. */
import { dayOf, isoOf } from "../../kernel/days.js";

/** Days. */
const LONGEST_YEAR = 366;

/** Completed years, birthday to birthday. */
export function completedYears(birth: string, on: string): number {
  return Number(on.slice(0, 4)) - Number(birth.slice(0, 4)) - (on.slice(5) < birth.slice(5) ? 1 : 0);
}

/**
 * The middle of all days of birth with the same completed years at every visit as `birth` has. Dates are those of the
 * shifted visits; `birth` is shifted by as much.
 */
export function bandBirth(birth: string, visits: readonly string[]): string {
  const years = visits.map((visit) => completedYears(birth, visit));
  const fits = (day: string) => visits.every((visit, i) => completedYears(day, visit) === years[i]);
  const own = dayOf(birth);
  let [low, high] = [own, own];
  while (fits(isoOf(low - 1)) && own - low < LONGEST_YEAR) low--;
  while (fits(isoOf(high + 1)) && high - own < LONGEST_YEAR) high++;
  return isoOf(low + Math.floor((high - low) / 2));
}
