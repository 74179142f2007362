/**
 * What a plan is laid out with: the client's own words from client.yaml, with what changed at a retest on top, and for
 * what was left out a convention that the plan names.
 */

import { dayOf, WEEKDAYS } from "../kernel/days.js";
import type { Goal, Injury as InjuryWords, Plan } from "../kernel/generated/client.js";
import type { EventProfile } from "../kernel/generated/event-profile.js";
import type { Visit } from "../kernel/visit.js";

/** What an injury keeps out, up to its last day (a day number; Infinity while no end is known). */
export interface Injury {
  readonly area: string;
  readonly avoid: InjuryWords["avoid"];
  readonly until: number;
}

/** Days are day numbers (days.ts) where nothing else is said. */
export interface Settings {
  /** ISO date. */
  readonly visitDate: string;
  /** The day after the visit. */
  readonly firstDay: number;
  /** The first day that is not trained for: arrival at altitude, or the goal. */
  readonly goalDay: number;
  readonly goal: Goal;
  readonly profile?: EventProfile;
  readonly daysPerWeek: number;
  readonly minutesAtMost: number;
  readonly minutesNow: number;
  /** 0 Monday to 6 Sunday, rising. */
  readonly days: readonly number[];
  readonly longDay: number;
  readonly modes: readonly string[];
  readonly equipment: readonly string[];
  readonly strengthLevel: "novice" | "intermediate" | "advanced";
  readonly injuries: readonly Injury[];
  readonly progression: number;
  readonly easierEvery: number;
  readonly easierShare: number;
  readonly taperReduction: number;
  readonly retests: readonly number[];
  /** The two days before a test or the goal: nothing hard stands there. */
  readonly spared: ReadonlySet<number>;
  readonly loadBearing: boolean;
  /** Where each choice comes from: "client.yaml" or "convention". */
  readonly from: readonly (readonly [what: string, value: string, source: string])[];
}

export type Week = Pick<
  Plan,
  | "days_per_week"
  | "hours_per_week"
  | "hours_now"
  | "training_days"
  | "long_day"
  | "modes"
  | "equipment"
  | "strength_level"
  | "injuries"
>;

/** Minutes a week to start from where the client did not say, by usual activity; a convention. */
const START = { inactive: 60, recreational: 180, trained: 360, "highly trained": 540 } as const;
const SPREAD: readonly (readonly number[])[] = [
  [],
  [5],
  [1, 5],
  [1, 3, 5],
  [1, 3, 5, 6],
  [0, 1, 3, 5, 6],
  [0, 1, 2, 4, 5, 6],
  [0, 1, 2, 3, 4, 5, 6],
];

/** A start below this is no training week to build on; a convention. */
const LEAST_START_MIN = 60;

/** Minutes a week at most where the client named none: half above the start, and no less than adults are advised; a convention. */
const MOST_OF_START = 1.5;
const ADVISED_MIN = 150; // minutes a week of moderate exercise (WHO guidelines 2020), from memory

function startSource(start: number | undefined, before: number | undefined, atMost: number): string {
  const source =
    before !== undefined
      ? "done or planned before this visit"
      : start === undefined
        ? "convention, by usual activity"
        : "client.yaml plan";
  if (start !== undefined && start < LEAST_START_MIN)
    return `${source}: ${start} min, raised to ${LEAST_START_MIN} min by convention`;
  return start !== undefined && start > atMost ? `${source}: ${start} min, more than the client now has` : source;
}

/** The plan's keys as they hold at a date: the first words, and every later change up to it. */
export function weekAt(plan: Plan, date: string): Week {
  const changes = [...(plan.adjusted ?? [])]
    .filter((change) => change.from_visit <= date)
    .sort((a, b) => (a.from_visit < b.from_visit ? -1 : 1));
  return Object.assign({}, plan, ...changes) as Week;
}

/** The goal a visit plans for: the first with a date after it. */
export const goalOf = (visit: Visit): Goal | undefined =>
  visit.client.goals?.find((goal) => (goal.arrival ?? goal.date ?? "") > visit.session.date);

export function settingsOf(
  visit: Visit,
  plan: Plan,
  goal: Goal,
  profile: EventProfile | undefined,
  minutesBefore: number | undefined,
): Settings {
  const week = weekAt(plan, visit.session.date);
  const from: [string, string, string][] = [];
  const say = <T>(what: string, given: T | undefined, convention: T, text: (value: T) => string): T => {
    const value = given ?? convention;
    from.push([what, text(value), given === undefined ? "convention" : "client.yaml plan"]);
    return value;
  };
  const daysPerWeek = say("Training days a week", week.days_per_week ?? week.training_days?.length, 3, String);
  const start = minutesBefore ?? (week.hours_now === undefined ? undefined : Math.round(week.hours_now * 60));
  const convention = START[visit.client.activity ?? "inactive"];
  const asked = week.hours_per_week === undefined ? undefined : Math.round(week.hours_per_week * 60);
  const minutesAtMost = say(
    "Minutes a week at most",
    asked,
    Math.max(ADVISED_MIN, Math.round((start ?? convention) * MOST_OF_START)),
    String,
  );
  const minutesNow = Math.min(Math.max(LEAST_START_MIN, start ?? convention), minutesAtMost);
  from.push(["Minutes a week to start from", String(minutesNow), startSource(start, minutesBefore, minutesAtMost)]);
  const given = week.training_days?.map((name) => WEEKDAYS.indexOf(name)).sort((a, b) => a - b);
  const days = given !== undefined && given.length === daysPerWeek ? given : (SPREAD[daysPerWeek] as readonly number[]);
  from.push([
    "Weekdays",
    days.map((day) => WEEKDAYS[day]).join(", "),
    given === undefined
      ? "convention"
      : given === days
        ? "client.yaml plan"
        : `convention: client.yaml names ${given.length} days, and ${daysPerWeek} a week`,
  ]);
  const longDay = week.long_day === undefined ? (days.at(-1) as number) : WEEKDAYS.indexOf(week.long_day);
  const injuries = (week.injuries ?? []).filter((one) => (one.until ?? "9999") > visit.session.date);
  const goalDate = goal.arrival ?? (goal.date as string);
  for (const one of injuries)
    from.push([
      `Because of ${one.area}`,
      `no ${one.avoid.join(", no ")}`,
      `client.yaml plan${one.until ? `, until ${one.until}` : ""}`,
    ]);
  const goalDay = dayOf(goalDate);
  const retests = (plan.retests ?? []).filter((day) => day > visit.session.date && day < goalDate).map(dayOf);
  for (const limit of plan.limits ?? []) from.push(["To keep in mind", limit, "client.yaml plan; not reckoned with"]);
  return {
    visitDate: visit.session.date,
    firstDay: dayOf(visit.session.date) + 1,
    goalDay,
    goal,
    ...(profile === undefined ? {} : { profile }),
    daysPerWeek,
    minutesAtMost,
    minutesNow,
    days,
    longDay: days.includes(longDay) ? longDay : (days.at(-1) as number),
    modes: week.modes ?? ["walk"],
    equipment: week.equipment ?? ["none"],
    strengthLevel: say("Experience of strength training", week.strength_level, "novice", String),
    injuries: injuries.map(({ area, avoid, until }) => ({
      area,
      avoid,
      until: until === undefined ? Number.POSITIVE_INFINITY : dayOf(until),
    })),
    progression: say("Rise over the hardest week before, at most, %", plan.progression_pct, 10, String) / 100,
    easierEvery: say("An easier week every, weeks", plan.easier_every, 4, String),
    easierShare: say("Minutes of an easier week, % of the week before", plan.easier_pct, 60, String) / 100,
    taperReduction: plan.taper_reduction_pct ?? 50,
    retests,
    spared: new Set([...retests, goalDay].flatMap((day) => [day - 2, day - 1])),
    loadBearing: profile?.load_bearing === true || (plan.walk?.load_kg ?? 0) > 0,
    from,
  };
}

/** Whether an injury keeps a kind of strain out on a day. */
export const avoids = (settings: Settings, strain: Injury["avoid"][number], day: number): boolean =>
  settings.injuries.some((one) => one.until >= day && one.avoid.includes(strain));
