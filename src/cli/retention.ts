/** Whose records are past the time that lab.yaml sets. A list to decide by; nothing is deleted. */
import { readDate } from "../validate/calendar.js";
import type { ClientFolder } from "./practice.js";

export interface Kept {
  readonly client: string;
  /** Date of the last visit; undefined for a client without one. */
  readonly lastVisit: string | undefined;
  /** First day on which the record need no longer be kept. */
  readonly until: string | undefined;
  readonly isPast: boolean;
}

/** `on` is an ISO date. The time runs from the last visit, to the same day so many years later. */
export function retention(clients: readonly ClientFolder[], years: number, on: string): Kept[] {
  return clients.map(({ id, visits }) => {
    const dates = visits.map((visit) => visit.name.slice(0, 10)).filter((date) => readDate(date) !== undefined);
    const lastVisit = dates.sort().at(-1);
    const until = lastVisit === undefined ? undefined : yearsLater(lastVisit, years);
    return { client: id, lastVisit, until, isPast: until !== undefined && on >= until };
  });
}

/** 29 February goes to 1 March in a year without one. */
function yearsLater(date: string, years: number): string {
  const year = String(Number(date.slice(0, 4)) + years).padStart(4, "0");
  const same = `${year}${date.slice(4)}`;
  return readDate(same) === undefined ? `${year}-03-01` : same;
}
