/** Which day holds what: the long day, the harder ones as far from it as the week allows. A convention. */
import { avoids, type Settings } from "../settings.js";
import type { PlanWeek } from "../weeks/lay-out.js";
import type { Kind } from "./session.js";
import type { Means } from "./week-sessions.js";

/** The weekdays for endurance, rising: the long day, then those farthest from the days already taken. */
export function chosenDays(days: readonly number[], count: number, settings: Settings): readonly number[] {
  if (count === days.length) return days;
  const taken = [longDayOf(days, settings)];
  while (taken.length < count) taken.push(farthest(days, taken) as number);
  return taken.sort((a, b) => a - b);
}

const longDayOf = (days: readonly number[], settings: Settings): number =>
  days.includes(settings.longDay) ? settings.longDay : (days.at(-1) as number);

/** The day not taken that lies farthest from those taken, the earliest of equals; undefined where all are taken. */
function farthest(days: readonly number[], taken: readonly number[]): number | undefined {
  let best: number | undefined;
  let most = 0;
  for (const day of days) {
    const gap = gapTo(taken, day);
    if (gap <= most) continue;
    best = day;
    most = gap;
  }
  return best;
}

/** Days from a weekday to the nearest of those taken, round the week: 0 where it is one of them. */
export function gapTo(taken: readonly number[], day: number): number {
  let least = 7;
  for (const other of taken) {
    const apart = Math.abs(day - other);
    least = Math.min(least, apart, 7 - apart);
  }
  return least;
}

/** What each of the chosen days holds, in their order. */
export function kindsOf(days: readonly number[], week: PlanWeek, settings: Settings, means: Means): readonly Kind[] {
  const kinds: Kind[] = days.map(() => "easy");
  const long = longDayOf(days, settings);
  const light = (weekday: number) => settings.spared.has(week.monday + weekday);
  if (!light(long)) {
    const loaded = settings.loadBearing && carries(week) && !avoids(settings, "load carriage", week.monday + long);
    kinds[days.indexOf(long)] = loaded ? "loaded walk" : "long";
  }
  const free = days.some(light) ? days.filter((day) => !light(day)) : days;
  let taken = [long];
  for (const kind of harderKinds(days.length, week, settings, means)) {
    const day = farthest(free, taken);
    if (day === undefined) break;
    kinds[days.indexOf(day)] = kind;
    taken = [...taken, day];
  }
  return kinds;
}

/** Loaded walks two to four times a month (Orr and others, review): every other week at first, then weekly. */
const carries = (week: PlanWeek): boolean =>
  week.phase !== "taper" && !week.easier && (week.phase !== "foundation" || week.number % 2 === 0);

function harderKinds(days: number, week: PlanWeek, settings: Settings, means: Means): readonly Kind[] {
  if (!means.vigorous || days < 2 || week.number <= means.easyWeeks) return [];
  const hard: Kind = !means.intervals || avoids(settings, "hard intervals", week.monday) ? "steady" : "intervals";
  const second: Kind = week.phase === "specific" && days >= 5 ? hard : "steady";
  const known = (kind: Kind) => kind !== "steady" || means.steady;
  if (!known(hard)) return [];
  return days >= 4 && !week.easier && known(second) ? [hard, second] : [hard];
}
