/** Which day holds what: the long day, the harder ones as far from it as the week allows. A convention. */
import { daysBetween, weekdayOf } from "../days.js";
import { avoids, type Settings } from "../settings.js";
import type { PlanWeek } from "../weeks/lay-out.js";
import type { Kind } from "./session.js";
import type { Means } from "./week-sessions.js";

/** The days for endurance: the long day, then those farthest from the days already taken. */
export function chosenDays(days: readonly string[], count: number, settings: Settings): string[] {
  const long = days.find((day) => weekdayOf(day) === settings.longDay) ?? (days.at(-1) as string);
  const taken = [long];
  while (taken.length < count) {
    const rest = days.filter((day) => !taken.includes(day));
    const gap = (day: string) => Math.min(...taken.map((other) => ring(day, other)));
    taken.push(rest.reduce((best, day) => (gap(day) > gap(best) ? day : best)));
  }
  return taken.sort();
}
/** Days between two weekdays, round the week. */
export const ring = (a: string, b: string): number => {
  const apart = Math.abs(weekdayOf(a) - weekdayOf(b));
  return Math.min(apart, 7 - apart);
};

export function kindsOf(days: readonly string[], week: PlanWeek, settings: Settings, means: Means): Kind[] {
  const kinds = new Map<string, Kind>(days.map((day) => [day, "easy"]));
  const long = days.find((day) => weekdayOf(day) === settings.longDay) ?? (days.at(-1) as string);
  const loaded = settings.loadBearing && !avoids(settings, "load carriage", long) && carries(week);
  if (!beforeTest(long, settings)) kinds.set(long, loaded ? "loaded walk" : "long");
  const harder = harderKinds(days.length, week, settings, means);
  const taken = [long];
  for (const kind of harder) {
    const free = days.filter((day) => !taken.includes(day) && !beforeTest(day, settings));
    if (free.length === 0) break;
    const gap = (day: string) => Math.min(...taken.map((other) => ring(day, other)));
    const day = free.reduce((best, one) => (gap(one) > gap(best) ? one : best));
    kinds.set(day, kind);
    taken.push(day);
  }
  return days.map((day) => kinds.get(day) as Kind);
}

/** Nothing hard on the two days before a test or the goal. */
const beforeTest = (day: string, settings: Settings): boolean =>
  [...settings.retests, settings.goalDate].some((test) => {
    const days = daysBetween(day, test);
    return days > 0 && days <= 2;
  });

/** Loaded walks two to four times a month (Orr and others, review): every other week at first, then weekly. */
const carries = (week: PlanWeek): boolean =>
  week.phase !== "taper" && !week.easier && (week.phase !== "foundation" || week.number % 2 === 0);

function harderKinds(days: number, week: PlanWeek, settings: Settings, means: Means): Kind[] {
  if (!means.vigorous || days < 2 || week.number <= means.easyWeeks) return [];
  const hard: Kind = !means.intervals || avoids(settings, "hard intervals", week.monday) ? "steady" : "intervals";
  const steady: Kind[] = means.steady ? ["steady"] : [];
  const wanted: Kind[] =
    week.phase === "foundation"
      ? days >= 4 && !week.easier
        ? [hard, ...steady]
        : [hard]
      : week.phase === "specific" && days >= 5 && !week.easier
        ? [hard, hard]
        : days >= 4 && !week.easier
          ? [hard, ...steady]
          : [hard];
  return wanted.filter((kind) => kind !== "steady" || means.steady);
}
