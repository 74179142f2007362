/**
 * Days. A day is its number, counted from 1970-01-01, so that sums and weekdays are whole-number arithmetic and no time
 * zone can move a visit or a session to another day; ISO texts stand at the edges.
 */
const DAY_MS = 86_400_000;
export const WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"] as const;

/** Day number of an ISO date; NaN for a text that names no day. */
export const dayOf = (iso: string): number => Math.floor(Date.parse(iso) / DAY_MS);
/** Written before: visit after visit plans for the same Mondays, and a date is slow to write. */
const written = new Map<number, string>();
const MOST_KEPT = 10_000;

/** ISO date of a day number. */
export function isoOf(day: number): string {
  const known = written.get(day);
  if (known !== undefined) return known;
  const iso = new Date(day * DAY_MS).toISOString().slice(0, 10);
  if (written.size >= MOST_KEPT) written.clear();
  written.set(day, iso);
  return iso;
}

/** 0 for Monday to 6 for Sunday. 1970-01-01 was a Thursday. */
export const weekdayOf = (day: number): number => (((day + 3) % 7) + 7) % 7;

/** The ISO date `days` later (earlier when negative). */
export const addDays = (iso: string, days: number): string => isoOf(dayOf(iso) + days);

/** Whole days from one ISO date to another; negative when the second is earlier. */
export const daysBetween = (from: string, to: string): number => dayOf(to) - dayOf(from);

/** The Monday of the week that holds the ISO date. */
export const mondayOf = (iso: string): string => addDays(iso, -weekdayOf(dayOf(iso)));

/** What is older is "older than 12 months": no year is longer. */
export const DAYS_OF_12_MONTHS = 366;

const SHORT = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;
/** "Mon", "Tue" … of a day number. */
export const shortDay = (day: number): string => SHORT[weekdayOf(day)] as string;
