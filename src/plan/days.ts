/** Days as ISO texts. Every sum goes through universal time, so that no time zone can move a session to another day. */
const DAY_MS = 86_400_000;
export const WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"] as const;
export type Weekday = (typeof WEEKDAYS)[number];

/** Days asked for before, both ways: a programme asks for the same few hundred over and over. */
const texts = new Map<number, string>();
const instants = new Map<string, number>();
const MOST_KEPT = 4000;

function instantOf(iso: string): number {
  const at = instants.get(iso) ?? Date.parse(iso);
  if (instants.size >= MOST_KEPT) instants.clear();
  instants.set(iso, at);
  return at;
}

/** The day `days` later (earlier when negative). */
export function addDays(iso: string, days: number): string {
  const at = instantOf(iso) + days * DAY_MS;
  const text = texts.get(at) ?? new Date(at).toISOString().slice(0, 10);
  if (texts.size >= MOST_KEPT) texts.clear();
  texts.set(at, text);
  return text;
}

/** Whole days from one ISO date to another; negative when the second is earlier. */
export const daysBetween = (from: string, to: string): number => Math.round((instantOf(to) - instantOf(from)) / DAY_MS);

/** 0 for Monday to 6 for Sunday. 1970-01-01 was a Thursday. */
export const weekdayOf = (iso: string): number => {
  const days = Math.floor(instantOf(iso) / DAY_MS) + 3;
  return ((days % 7) + 7) % 7;
};

/** The Monday of the week that holds the day. */
export const mondayOf = (iso: string): string => addDays(iso, -weekdayOf(iso));

const SHORT = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;
/** "Mon", "Tue" … of an ISO date. */
export const shortDay = (iso: string): string => SHORT[weekdayOf(iso)] as string;
