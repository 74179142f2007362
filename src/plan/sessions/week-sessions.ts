/**
 * The sessions of one week: a long one, one or two harder ones as far as they are allowed, easy ones on the other days,
 * strength work beside the easy ones. Which day holds what is a convention; the sum is the week's minutes exactly.
 */

import { dayOf } from "../../kernel/days.js";
import type { LoadedWalk, SessionOverride } from "../../kernel/generated/client.js";
import { SESSION_RATING } from "../intensity/anchors.js";
import { avoids, type Settings } from "../settings.js";
import { strengthDose, strengthSession } from "../strength/dose.js";
import type { PlanWeek } from "../weeks/lay-out.js";
import { intervalsFor } from "./intervals.js";
import { chosenDays, gapTo, kindsOf } from "./kinds.js";
import { loadedWalkOf } from "./loaded.js";
import type { Kind, Session } from "./session.js";

export interface Means {
  readonly vigorous: boolean;
  /** False until a test to the client's limit without signs is recorded. */
  readonly intervals: boolean;
  /** Weeks at the start without steady or hard sessions. */
  readonly easyWeeks: number;
  /** False where a drug makes heart rates no guide. */
  readonly heartRate: boolean;
  /** False where the middle domain is merged or unknown. */
  readonly steady: boolean;
  readonly walk?: LoadedWalk;
  /** Body mass in kg, for the share of a load. */
  readonly massKg?: number;
}

/** An easier week has fewer sessions rather than ones too short for an effort: effort stays, minutes fall. */
const LEAST_MIN = 20;
const LEAST_EASIER_MIN = 30;
const WEIGHT: Readonly<Record<Exclude<Kind, "rest" | "strength">, number>> = {
  long: 1.6,
  "loaded walk": 1.6,
  intervals: 1.1,
  steady: 1,
  easy: 1,
};
const weightOf = (kind: Kind): number => WEIGHT[kind as keyof typeof WEIGHT];
const CONVENTION = "convention";

/** In the order of their days. A session set by hand takes its day whole; on a day of rest set by hand stands none. */
export function weekSessions(
  week: PlanWeek,
  settings: Settings,
  means: Means,
  overrides: readonly Session[],
): readonly Session[] {
  const laid = laidOut(week, settings, means);
  const own = overrides.filter(({ day }) => day >= week.monday && day < week.monday + 7);
  if (own.length === 0) return laid;
  const days = new Set(own.map(({ day }) => day));
  return [...laid.filter(({ day }) => !days.has(day)), ...own.filter(({ kind }) => kind !== "rest")].sort(
    (a, b) => a.day - b.day,
  );
}

/** The sessions set by hand that may stand, rest among them. */
export const setByHand = (overrides: readonly SessionOverride[], means: Means): readonly Session[] =>
  overrides.filter((one) => allowedByHand(one, means)).map(byHand);

/** A limit of the plan may be broken by hand; a missing clearance or test may not. */
export const allowedByHand = (one: SessionOverride, may: Pick<Means, "vigorous" | "intervals">): boolean =>
  one.kind === "intervals" ? may.vigorous && may.intervals : one.kind !== "steady" || may.vigorous;

function laidOut(week: PlanWeek, settings: Settings, means: Means): Session[] {
  if (week.days.length === 0 || week.minutes < 10) return [];
  const strength = strengthDose(week, settings);
  const endurance = strength === undefined ? week.minutes : week.minutes - strength.days * strength.minutes;
  const least = week.easier ? LEAST_EASIER_MIN : LEAST_MIN;
  const count = Math.max(1, Math.min(week.days.length, Math.floor(endurance / least)));
  const days = chosenDays(week.days, count, settings);
  const kinds = kindsOf(days, week, settings, means);
  const minutes = share(endurance, kinds);
  const spots = strength === undefined ? [] : strengthDays(days, kinds, week.days, strength.days);
  const sessions: Session[] = [];
  for (const weekday of week.days) {
    const day = week.monday + weekday;
    const at = days.indexOf(weekday);
    if (at >= 0) sessions.push(build(day, kinds[at] as Kind, minutes[at] as number, week, settings, means));
    if (strength !== undefined && spots.includes(weekday)) sessions.push(strengthSession(day, strength));
  }
  return sessions;
}

/** Minutes by weight, in fives, the rest to the longest; together exactly the total. */
function share(total: number, kinds: readonly Kind[]): number[] {
  let all = 0;
  for (const kind of kinds) all += weightOf(kind);
  const minutes = kinds.map((kind) => Math.floor((total * weightOf(kind)) / all / 5) * 5);
  let rest = total;
  for (const one of minutes) rest -= one;
  const longest = Math.max(0, kinds.findIndex(isLongest));
  minutes[longest] = (minutes[longest] as number) + rest;
  return minutes;
}

/** Beside easy days first, then beside the harder ones, the long day last. */
function strengthDays(
  days: readonly number[],
  kinds: readonly Kind[],
  all: readonly number[],
  count: number,
): readonly number[] {
  const ranks = all.map((day) => {
    const at = days.indexOf(day);
    return at < 0 ? 0 : rankOf(kinds[at] as Kind);
  });
  const taken: number[] = [];
  while (taken.length < Math.min(count, all.length)) {
    let best = 0;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < all.length; i++) {
      const day = all[i] as number;
      const gap = taken.length === 0 ? 1 : gapTo(taken, day);
      const cost = (ranks[i] as number) - (gap > 1 ? 1.5 : 0);
      if (gap === 0 || cost >= least) continue;
      best = day;
      least = cost;
    }
    taken.push(best);
  }
  return taken;
}

const isLongest = (kind: Kind): boolean => kind === "long" || kind === "loaded walk";
const rankOf = (kind: Kind): number => (kind === "easy" ? 1 : isLongest(kind) ? 3 : 2);

function build(day: number, kind: Kind, minutes: number, week: PlanWeek, settings: Settings, means: Means): Session {
  if (kind === "loaded walk") return loadedWalkOf(day, minutes, week, settings, means);
  const mode = settings.modes.find((one) => allowed(settings, one, day)) ?? "walk";
  if (kind === "intervals") {
    const most = week.easier || week.phase === "taper" ? 3 : Math.min(4, 1 + Math.ceil(week.number / 2));
    const found = intervalsFor(minutes, most, means.heartRate);
    if (found)
      return {
        day,
        kind,
        minutes,
        easy: minutes - found.hardMinutes,
        steady: 0,
        hard: found.hardMinutes,
        rating: SESSION_RATING.intervals,
        what: `${mode}: ${found.what}`,
        source: found.format.source,
      };
    return easySession(day, "easy", minutes, mode);
  }
  if (kind === "steady") {
    const most = week.easier ? 15 : week.phase === "foundation" ? 20 : 40;
    const steady = Math.min(most, Math.max(0, minutes - 15));
    if (steady < 5) return easySession(day, "easy", minutes, mode);
    return {
      day,
      kind,
      minutes,
      easy: minutes - steady,
      steady,
      hard: 0,
      rating: SESSION_RATING.steady,
      what: `${mode}: 10 min easy, ${steady} min steady, easy to the end of ${minutes} min`,
      source: `${CONVENTION}; Festa 2020, Front Sports Act Living 1:70 for steady work`,
    };
  }
  return easySession(day, kind as "easy" | "long", minutes, mode);
}

const STRAIN = { cycle: "cycling", row: "rowing", run: "running" } as const;
const allowed = (settings: Settings, mode: string, day: number): boolean => {
  const strain = STRAIN[mode as keyof typeof STRAIN];
  return strain === undefined || !avoids(settings, strain, day);
};

const easySession = (day: number, kind: "easy" | "long", minutes: number, mode: string): Session => ({
  day,
  kind,
  minutes,
  easy: minutes,
  steady: 0,
  hard: 0,
  rating: SESSION_RATING[kind],
  what: `${mode}: ${minutes} min easy${kind === "long" ? ", the longest of the week" : ""}`,
  source: "convention; most minutes easy as observed in endurance athletes (Seiler and Kjerland 2006)",
});

function byHand(one: SessionOverride): Session {
  const { kind } = one;
  const hard = kind === "intervals" ? Math.min(16, one.minutes) : 0;
  const steady = kind === "steady" ? Math.max(0, one.minutes - 15) : 0;
  return {
    day: dayOf(one.date),
    kind,
    minutes: one.minutes,
    easy: kind === "strength" ? 0 : one.minutes - hard - steady,
    steady,
    hard,
    rating: kind === "rest" ? 0 : SESSION_RATING[kind],
    what: one.what ?? `${kind}, ${one.minutes} min`,
    source: "set by the practitioner",
    byHand: one.because,
  };
}
