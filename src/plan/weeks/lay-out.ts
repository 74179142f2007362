/**
 * The weeks from the day after a visit to the goal: phase, easier weeks, taper, tests, and the minutes each may hold.
 * Everything but the taper is a convention of the trade and is printed as one.
 */
import type { WeekOverride } from "../../kernel/generated/client.js";
import { addDays, daysBetween, mondayOf, weekdayOf } from "../days.js";
import type { Settings } from "../settings.js";
import { progression } from "./progression.js";
import { taperMinutes } from "./taper-minutes.js";

export type Phase = "foundation" | "build" | "specific" | "taper";
export interface PlanWeek {
  /** 1 for the week of the day after the visit. */
  readonly number: number;
  readonly monday: string;
  readonly phase: Phase;
  /** Weeks before the taper, this plan's whole loading. */
  readonly ofLoading: number;
  readonly easier: boolean;
  /** Minutes to place; strength work included. */
  readonly minutes: number;
  /** Days of the week that can be trained on, as ISO dates. */
  readonly days: readonly string[];
  /** Tests with a date in this week. */
  readonly retests: readonly string[];
  /** True where a test is proposed in this week, without a date. */
  readonly proposed: boolean;
  readonly goal: boolean;
  readonly override?: WeekOverride;
  /** In a taper: minutes of the loading week it is reckoned from. */
  readonly levelBefore?: number;
  /** Set where an override rises above the limit. */
  readonly remark?: string;
}

/** Shortest time to the goal, in days, for which the last of it is a taper. */
export const TAPER_FROM_DAYS = 28;

/** `minutesOf` gives what a week really holds, sessions set by hand included: the cap looks back on that. */
export function layOut(
  settings: Settings,
  overrides: readonly WeekOverride[],
  minutesOf: (week: PlanWeek) => number,
): readonly PlanWeek[] {
  const first = addDays(settings.visitDate, 1);
  const frames = framesOf(settings, first);
  const taper = taperLength(first, settings.goalDate);
  const taperStart = addDays(settings.goalDate, -taper);
  const loading = frames.filter((frame) => taper === 0 || frame.monday < taperStart);
  const easier = easierWeeks(loading, settings);
  const proposals = proposedTests(loading, easier, settings);
  const weeks: PlanWeek[] = [];
  const start = settings.minutesNow;
  const rising = loading.filter((frame) => !easier.has(frame.number)).length;
  const growth = Math.min(settings.progression, (settings.minutesAtMost / start) ** (1 / Math.max(1, rising - 1)) - 1);
  let hardest = start;
  let before = start;
  let level = before;
  let risen = false;
  for (const frame of loading) {
    const own = overrides.find((one) => one.monday === frame.monday);
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
      ...bare(frame),
      phase: phaseOf(frame.number, loading.length),
      ofLoading: loading.length,
      easier: isEasier,
      minutes,
      proposed: proposals.has(frame.number),
      ...(own ? { override: own } : {}),
      ...(above ? { remark: `${minutes} min is more than ${cap} min, the limit over the hardest week before` } : {}),
    };
    weeks.push(week);
    hardest = Math.max(hardest, minutesOf(week));
  }
  return [...weeks, ...taperWeeks(frames.slice(loading.length), before, taper, taperStart, settings, overrides)];
}

interface Frame {
  readonly number: number;
  readonly monday: string;
  readonly days: readonly string[];
  readonly share: number;
  readonly retests: readonly string[];
  readonly goal: boolean;
}
const bare = ({ share: _, ...rest }: Frame): Omit<Frame, "share"> => rest;

function framesOf(settings: Settings, first: string): Frame[] {
  const monday = mondayOf(first);
  const count = Math.floor(daysBetween(monday, settings.goalDate) / 7) + 1;
  return Array.from({ length: count }, (_, i) => {
    const start = addDays(monday, 7 * i);
    const end = addDays(start, 6);
    const retests = settings.retests.filter((day) => day >= start && day <= end);
    const days = settings.days
      .map((weekday) => addDays(start, weekday))
      .filter((day) => day >= first && day < settings.goalDate && !retests.includes(day));
    return {
      number: i + 1,
      monday: start,
      days,
      share: Math.min(1, days.length / settings.daysPerWeek),
      retests,
      goal: settings.goalDate >= start && settings.goalDate <= end,
    };
  });
}

/** Days of the taper: the week of the goal up to it and the whole week before, 8 to 14 days; none when time is short. */
export function taperLength(first: string, goalDate: string): number {
  if (daysBetween(first, goalDate) < TAPER_FROM_DAYS) return 0;
  const intoWeek = weekdayOf(goalDate);
  return intoWeek === 0 ? 14 : 7 + intoWeek;
}

/** A test is met fresh: the week of the third day before it is an easier one. A convention. */
const EASY_BEFORE_TEST_DAYS = 3;

/** Weeks before a test, and one in every so many counted back from the taper, never beside another or at the start. */
function easierWeeks(loading: readonly Frame[], settings: Settings): ReadonlySet<number> {
  const eased = settings.retests.map((day) => mondayOf(addDays(day, -EASY_BEFORE_TEST_DAYS)));
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
    const left = daysBetween(frame.monday, settings.goalDate) / 7;
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
  start: string,
  settings: Settings,
  overrides: readonly WeekOverride[],
): PlanWeek[] {
  if (frames.length === 0) return [];
  const days = frames.map((frame) => frame.days.map((day) => daysBetween(start, day)));
  const minutes = taperMinutes(before, length, settings.taperReduction / 100, days);
  return frames.map((frame, i) => {
    const own = overrides.find((one) => one.monday === frame.monday);
    return {
      ...bare(frame),
      phase: "taper",
      ofLoading: (frames[0] as Frame).number - 1,
      easier: false,
      minutes: own?.minutes ?? (minutes[i] as number),
      proposed: false,
      levelBefore: before,
      ...(own ? { override: own } : {}),
    };
  });
}

const floor5 = (minutes: number): number => Math.floor(minutes / 5 + 1e-9) * 5;
