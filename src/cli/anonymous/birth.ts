/** A birth date that tells no more than the years of age at each visit. */
const DAY = 86_400_000;
const iso = (time: number) => new Date(time).toISOString().slice(0, 10);

/** The day `days` later; dates are days here, without a clock. */
export const shifted = (date: string, days: number): string => iso(Date.parse(date) + days * DAY);

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
  let [low, high] = [Date.parse(birth), Date.parse(birth)];
  while (fits(iso(low - DAY)) && Date.parse(birth) - low < 366 * DAY) low -= DAY;
  while (fits(iso(high + DAY)) && high - Date.parse(birth) < 366 * DAY) high += DAY;
  return iso(low + Math.floor((high - low) / DAY / 2) * DAY);
}
