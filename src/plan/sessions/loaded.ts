/** Walks with a load for goals that carry one: the load rises to that of the goal by the last loading week. */
import { SESSION_RATING } from "../intensity/anchors.js";
import type { Settings } from "../settings.js";
import type { PlanWeek } from "../weeks/lay-out.js";
import type { Session } from "./session.js";
import type { Means } from "./week-sessions.js";

const FROM_SHARE = 0.5;
/** No load above this share of body mass is laid out; heavier goals need someone who teaches carrying. */
const MOST_OF_MASS = 0.3;

export function loadedWalkOf(day: number, minutes: number, week: PlanWeek, settings: Settings, means: Means): Session {
  const goalKg = means.walk?.load_kg ?? settings.profile?.walk?.load_kg ?? 0;
  const way = week.ofLoading <= 1 ? 1 : Math.min(1, (week.number - 1) / (week.ofLoading - 1));
  const most = means.massKg === undefined ? goalKg : MOST_OF_MASS * means.massKg;
  const wanted = goalKg * (FROM_SHARE + (1 - FROM_SHARE) * way);
  const loadKg = Math.floor(Math.min(wanted, most) * 2) / 2;
  const walk = means.walk ?? settings.profile?.walk;
  const climb = walk?.grade_pct === undefined ? undefined : climbOf(minutes, walk.speed_km_h, walk.grade_pct);
  const held = wanted > most ? `; the load is held at ${Math.round(100 * MOST_OF_MASS)} % of body mass` : "";
  return {
    day,
    kind: "loaded walk",
    minutes,
    easy: minutes,
    steady: 0,
    hard: 0,
    loadKg,
    ...(climb === undefined || climb === 0 ? {} : { climb }),
    rating: SESSION_RATING["loaded walk"],
    what: `walk with ${loadKg} kg for ${minutes} min, uphill and down, easy${held}`,
    source:
      "strength with endurance and rising loads: 1.7 SD better carrying (Knapik 2012, J Strength Cond Res 26:585–597); two to four carries a month (Orr and others, J Mil Veterans Health 18); the load's rise is a convention",
  };
}

/** Metres climbed when half of the time goes up at the goal's speed and grade, in tens. */
const climbOf = (minutes: number, speedKmH: number, gradePct: number): number =>
  Math.round(((minutes / 2 / 60) * speedKmH * 1000 * gradePct) / 100 / 10) * 10;
