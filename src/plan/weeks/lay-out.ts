/**
 * The weeks from the day after a visit to the goal: phase, easier weeks, taper, tests, and the minutes each may hold.
 * Everything but the taper is a convention of the trade and is printed as one.
 */

import { dayOf, weekdayOf } from "../../kernel/days.js";
import type { WeekOverride } from "../../kernel/generated/client.js";
import { minutesIn, type Session } from "../sessions/session.js";
import type { Settings } from "../settings.js";
import { progression } from "./progression.js";
import { taperMinutes } from "./taper-minutes.js";

export type Phase = "foundation" | "build" | "specific" | "taper";
/** Days are day numbers (days.ts) where nothing else is said. */
export interface PlanWeek {
  /** 1 for the week of the day after the visit. */
  readonly number: number;
  readonly monday: number;
  readonly phase: Phase;
  /** Weeks before the taper, this plan's whole loading. */
  readonly ofLoading: number;
  readonly easier: boolean;
  /** Minutes to place; strength work included. */
  readonly minutes: number;
  /** Weekdays that can be trained on, 0 Monday to 6 Sunday, rising. */
  readonly days: readonly number[];
  /** Tests with a date in this week. */
  readonly retests: readonly number[];
  /** True where a test is proposed in this week, without a date. */
  readonly proposed: boolean;
  readonly goal: boolean;
  readonly override: WeekOverride | undefined;
  /** In a taper: minutes of the loading week it is reckoned from. */
  readonly levelBefore: number | undefined;
  /** Set where an override rises above the limit. */
  readonly remark: string | undefined;
}

/** A week with its sessions, in the order of their days. */
export interface LaidWeek {
  readonly week: PlanWeek;
  readonly sessions: readonly Session[];
}

/** Shortest time to the goal, in days, for which the last of it is a taper. */
const TAPER_FROM_DAYS = 28;

/** `sessionsOf` gives what a week really holds, sessions set by hand included: the cap looks back on their minutes. */
export function layOut(
  settings: Settings,
  overrides: readonly WeekOverride[],
  sessionsOf: (week: PlanWeek) => readonly Session[],
): readonly LaidWeek[] {
  const frames = framesOf(settings);
  const taper = taperLength(settings);
  const taperStart = settings.goalDay - taper;
  const ownOf = overrideOf(overrides);
  const loading = frames.filter((frame) => taper === 0 || frame.monday < taperStart);
  const easier = easierWeeks(loading, settings);
  const proposals = proposedTests(loading, easier, settings);
  const laid: LaidWeek[] = [];
  const start = settings.minutesNow;
  const rising = loading.filter((frame) => !easier.has(frame.number)).length;
  const growth = Math.min(settings.progression, (settings.minutesAtMost / start) ** (1 / Math.max(1, rising - 1)) - 1);
  let hardest = start;
  let before = start;
  let level = before;
  let risen = false;
  for (const frame of loading) {
    const own = ownOf(frame);
    const isEasier = own?.easier ?? easier.has(frame.number);
    const cap = progression(hardest, settings.progression, settings.minutesAtMost);
    if (!isEasier) {
      if (risen) level *= 1 + Math.max(0, growth);
      risen ||= frame.share === 1;
    }
    const full = isEasier ? floor5(before * settings.easierShare) : Math.min(floor5(level), cap);
    const minutes = own?.minutes ?? floor5(full * frame.share);
    if (!isEasier && frame.share === 1) before = minutes;
    const above = own?.minutes !== undefined && minutes > hardest * (1 + settings.progression) + 1e-9;
    const week: PlanWeek = {
      number: frame.number,
      monday: frame.monday,
      phase: phaseOf(frame.number, loading.length),
      ofLoading: loading.length,
      easier: isEasier,
      minutes,
      days: frame.days,
      retests: frame.retests,
      proposed: proposals.has(frame.number),
      goal: frame.goal,
      override: own,
      levelBefore: undefined,
      remark: above ? `${minutes} min is more than ${cap} min, the limit over the hardest week before` : undefined,
    };
    const sessions = sessionsOf(week);
    laid.push({ week, sessions });
    hardest = Math.max(hardest, minutesIn(sessions));
  }
  const tapering = frames.slice(loading.length);
  for (const week of taperWeeks(tapering, before, taper, taperStart, settings, ownOf))
    laid.push({ week, sessions: sessionsOf(week) });
  return laid;
}

interface Frame extends Pick<PlanWeek, "number" | "monday" | "days" | "retests" | "goal"> {
  /** Training days left of those agreed, 0 to 1. */
  readonly share: number;
}

/** The week set by hand for a frame, if any. */
type OwnOf = (frame: Frame) => WeekOverride | undefined;
function overrideOf(overrides: readonly WeekOverride[]): OwnOf {
  const mondays = overrides.map((one) => dayOf(one.monday));
  return (frame) => {
    const at = mondays.indexOf(frame.monday);
    return at < 0 ? undefined : overrides[at];
  };
}

function framesOf({ firstDay, goalDay, ...settings }: Settings): Frame[] {
  const start = mondayOf(firstDay);
  const count = Math.floor((goalDay - start) / 7) + 1;
  return Array.from({ length: count }, (_, i) => {
    const monday = start + 7 * i;
    const inWeek = (day: number) => day >= monday && day < monday + 7;
    const retests = settings.retests.filter(inWeek);
    const whole = monday >= firstDay && monday + 7 <= goalDay && retests.length === 0;
    const open = (day: number) => day >= firstDay && day < goalDay && !retests.includes(day);
    const days = whole ? settings.days : settings.days.filter((weekday) => open(monday + weekday));
    const share = Math.min(1, days.length / settings.daysPerWeek);
    return { number: i + 1, monday, days, share, retests, goal: inWeek(goalDay) };
  });
}
const mondayOf = (day: number): number => day - weekdayOf(day);

/** Days of the taper: the week of the goal up to it and the whole week before, 8 to 14 days; none when time is short. */
function taperLength({ firstDay, goalDay }: Settings): number {
  if (goalDay - firstDay < TAPER_FROM_DAYS) return 0;
  const intoWeek = weekdayOf(goalDay);
  return intoWeek === 0 ? 14 : 7 + intoWeek;
}

/** A test is met fresh: the week of the third day before it is an easier one. A convention. */
const EASY_BEFORE_TEST_DAYS = 3;

/** Weeks before a test, and one in every so many counted back from the taper, never beside another or at the start. */
function easierWeeks(loading: readonly Frame[], settings: Settings): ReadonlySet<number> {
  const eased = settings.retests.map((day) => mondayOf(day - EASY_BEFORE_TEST_DAYS));
  const tests = new Set(loading.filter((frame) => eased.includes(frame.monday)).map((frame) => frame.number));
  const easier = new Set(tests);
  const last = loading.length;
  const ends = loading.at(-1);
  if (ends?.goal && last > 1) easier.add(ends.number); // time is too short for a taper: at least the last week is easier
  for (let back = settings.easierEvery; back < last - 1; back += settings.easierEvery) {
    const number = last - back + 1;
    if (number > 2 && ![-1, 0, 1].some((step) => tests.has(number + step))) easier.add(number);
  }
  return easier;
}

/** Where no test has a date: easier weeks 8 weeks or more after the last test, and 4 or more before the goal. */
function proposedTests(
  loading: readonly Frame[],
  easier: ReadonlySet<number>,
  settings: Settings,
): ReadonlySet<number> {
  const proposed = new Set<number>();
  if (settings.retests.length > 0) return proposed;
  let last = 0;
  for (const frame of loading) {
    const left = (settings.goalDay - frame.monday) / 7;
    if (!easier.has(frame.number) || frame.number - last < 8 || left < 4) continue;
    proposed.add(frame.number);
    last = frame.number;
  }
  return proposed;
}

function phaseOf(number: number, loading: number): Phase {
  const share = (number - 1) / loading;
  return share < 0.4 ? "foundation" : share < 0.75 ? "build" : "specific";
}

function taperWeeks(
  frames: readonly Frame[],
  before: number,
  length: number,
  start: number,
  settings: Settings,
  ownOf: OwnOf,
): PlanWeek[] {
  if (frames.length === 0) return [];
  const days = frames.map((frame) => frame.days.map((weekday) => frame.monday + weekday - start));
  const minutes = taperMinutes(before, length, settings.taperReduction / 100, days);
  return frames.map((frame, i) => {
    const own = ownOf(frame);
    return {
      number: frame.number,
      monday: frame.monday,
      phase: "taper",
      ofLoading: (frames[0] as Frame).number - 1,
      easier: false,
      minutes: own?.minutes ?? (minutes[i] as number),
      days: frame.days,
      retests: frame.retests,
      proposed: false,
      goal: frame.goal,
      override: own,
      levelBefore: before,
      remark: undefined,
    };
  });
}

const floor5 = (minutes: number): number => Math.floor(minutes / 5 + 1e-9) * 5;
