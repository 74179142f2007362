/** How much strength work a week holds: days by experience, minutes that leave room for endurance. */
import { SESSION_RATING } from "../intensity/anchors.js";
import type { Session } from "../sessions/session.js";
import type { Settings } from "../settings.js";
import type { PlanWeek } from "../weeks/lay-out.js";

/** Days and minutes a session: two to three days a week for a novice (2009 position stand); more days are left to coaches of strength. */
const DOSE = {
  novice: { days: 2, minutes: 40 },
  intermediate: { days: 3, minutes: 45 },
  advanced: { days: 3, minutes: 50 },
} as const;
/** Largest share of a week's minutes; a convention. */
const MOST_SHARE = 0.35;
const LEAST_MIN = 20;

/** Strength sessions of a week, not yet placed on a day. */
export interface StrengthDose {
  readonly days: number;
  /** Minutes of each session. */
  readonly minutes: number;
  /** One set fewer, in an easier week and in a taper. */
  readonly easing: boolean;
}

/** Undefined where a week has no room for it, and in the week of the goal after a taper. */
export function strengthDose(week: PlanWeek, settings: Settings): StrengthDose | undefined {
  const wanted = DOSE[settings.strengthLevel];
  const easing = week.easier || week.phase === "taper";
  if (week.phase === "taper" && week.goal) return undefined;
  for (let days = Math.min(easing ? Math.min(2, wanted.days) : wanted.days, week.days.length); days > 0; days--) {
    const room = Math.floor((week.minutes * MOST_SHARE) / days / 5) * 5;
    const minutes = Math.min(easing ? 30 : wanted.minutes, room);
    if (minutes >= LEAST_MIN) return { days, minutes, easing };
  }
  return undefined;
}

export const strengthSession = (day: number, { minutes, easing }: StrengthDose): Session => ({
  day,
  kind: "strength",
  minutes,
  easy: 0,
  steady: 0,
  hard: 0,
  rating: SESSION_RATING.strength,
  what: `strength work as in its table${easing ? ", one set fewer, loads kept" : ""}; the last 10 min for mobility`,
  source: "ACSM position stand 2009 (Ratamess and others), Med Sci Sports Exerc 41:687–708",
});
