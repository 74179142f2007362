/** The weeks and the coming sessions as tables: everything a week strip or a calendar needs. */

import { isoOf, shortDay } from "../../kernel/days.js";
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Intensities } from "../intensity/domains.js";
import { tried } from "../intensity/write-domains.js";
import { weeklyMonotony } from "../load/weekly-monotony.js";
import { weeklyStrain } from "../load/weekly-strain.js";
import { loadOf, type Session } from "../sessions/session.js";
import type { Settings } from "../settings.js";
import type { LaidWeek, PlanWeek } from "./lay-out.js";
import { info as progressionInfo } from "./progression.js";
import { info as taperInfo } from "./taper.js";

/** Sessions are written out for this many weeks; later ones follow from the next test. */
const SESSION_WEEKS = 4;

export function writeWeeks(book: Notebook, laid: readonly LaidWeek[], settings: Settings): void {
  book.table(
    "programme_weeks",
    [
      { key: "week", title: "Week", decimals: 0 },
      { key: "monday", title: "From Monday" },
      { key: "phase", title: "Phase" },
      { key: "minutes", title: "Minutes", unit: "min", decimals: 0 },
      { key: "easy", title: "Easy", unit: "min", decimals: 0 },
      { key: "steady", title: "Steady", unit: "min", decimals: 0 },
      { key: "hard", title: "Hard", unit: "min", decimals: 0 },
      { key: "strength", title: "Strength", unit: "min", decimals: 0 },
      { key: "sessions", title: "Sessions", decimals: 0 },
      { key: "days", title: "Days", decimals: 0 },
      { key: "easier", title: "Easier week" },
      { key: "load", title: "Load", decimals: 0 },
      { key: "monotony", title: "Monotony", decimals: 2 },
      { key: "strain", title: "Strain", decimals: 0 },
      { key: "climb", title: "Climb", unit: "m", decimals: 0 },
      { key: "mark", title: "Mark" },
      { key: "source", title: "Source" },
    ],
    laid.map((one) => weekRow(one, settings)),
    progressionInfo,
    [
      { name: "minutes to start from", value: settings.minutesNow, unit: "min" },
      { name: "minutes at most", value: settings.minutesAtMost, unit: "min" },
      { name: "rise", value: settings.progression * 100, unit: "%" },
    ],
    "Load is planned: a rating from 0 to 10 for each kind of session, a convention, times its minutes. Monotony and strain stand for whole weeks.",
  );
}

function weekRow({ week, sessions }: LaidWeek, settings: Settings): Cell[] {
  const daily = [0, 0, 0, 0, 0, 0, 0];
  const sum = { minutes: 0, easy: 0, steady: 0, hard: 0, strength: 0, climb: 0 };
  let days = 0;
  let last: number | undefined;
  for (const session of sessions) {
    if (session.day !== last) days++;
    last = session.day;
    daily[session.day - week.monday] = (daily[session.day - week.monday] as number) + loadOf(session);
    sum.minutes += session.minutes;
    sum.easy += session.easy;
    sum.steady += session.steady;
    sum.hard += session.hard;
    sum.strength += session.kind === "strength" ? session.minutes : 0;
    sum.climb += session.climb ?? 0;
  }
  const whole = week.monday >= settings.firstDay && !week.goal;
  const monotony = whole ? tried(() => weeklyMonotony(daily)) : undefined;
  return [
    week.number,
    isoOf(week.monday),
    week.phase,
    sum.minutes,
    sum.easy,
    sum.steady,
    sum.hard,
    sum.strength,
    sessions.length,
    days,
    week.easier ? "easier" : "",
    daily.reduce((all, load) => all + load, 0),
    monotony ?? null,
    monotony === undefined ? null : weeklyStrain(daily),
    sum.climb === 0 ? null : sum.climb,
    markOf(week, settings),
    sourceOf(week),
  ];
}

function markOf(week: PlanWeek, settings: Settings): string {
  const marks = week.retests.map((day) => `test on ${isoOf(day)}`);
  if (week.proposed) marks.push("test proposed");
  if (week.goal)
    marks.push(`${settings.goal.arrival === undefined ? "goal" : "arrival"} on ${isoOf(settings.goalDay)}`);
  if (week.override) marks.push("set by the practitioner");
  return marks.join("; ");
}

const sourceOf = (week: PlanWeek): string =>
  week.override
    ? `practitioner: ${week.override.because}`
    : week.phase === "taper"
      ? `Bosquet ${taperInfo.source.year}`
      : "convention";

export function writeSessions(book: Notebook, laid: readonly LaidWeek[], intensities: Intensities): void {
  const rows = laid
    .slice(0, SESSION_WEEKS)
    .flatMap(({ sessions }) => sessions.map((one) => sessionRow(one, intensities)));
  if (rows.length === 0) return;
  book.table(
    "programme_sessions",
    [
      { key: "date", title: "Date" },
      { key: "day", title: "Day" },
      { key: "kind", title: "Session" },
      { key: "minutes", title: "Minutes", unit: "min", decimals: 0 },
      { key: "intensity", title: "Effort" },
      { key: "heart_rate", title: "Heart rate", unit: "1/min" },
      { key: "load", title: "Carried", unit: "kg", decimals: 1 },
      { key: "prescription", title: "What to do" },
      { key: "source", title: "Source" },
    ],
    rows,
    progressionInfo,
    [],
    `The next ${Math.min(SESSION_WEEKS, laid.length)} weeks. A session that is missed is left out, not added to the next.`,
  );
}

const INTENSITY: Readonly<Record<Session["kind"], string>> = {
  easy: "easy",
  long: "easy",
  "loaded walk": "easy",
  steady: "steady",
  intervals: "hard",
  strength: "",
  rest: "",
};

function sessionRow(session: Session, intensities: Intensities): Cell[] {
  const word = INTENSITY[session.kind];
  return [
    isoOf(session.day),
    shortDay(session.day),
    session.kind,
    session.minutes,
    word === "" ? null : word,
    heartRateText(word, intensities),
    session.loadKg ?? null,
    session.byHand === undefined ? session.what : `${session.what} (set by the practitioner: ${session.byHand})`,
    session.source,
  ];
}

/** "up to 132", "133 to 157", "from 158": the limits of the domain, their interval stands in its table. */
function heartRateText(word: string, intensities: Intensities): string | null {
  const domain =
    intensities.domains.find((one) => one.word === word) ??
    (word === "" || word === "easy" ? undefined : intensities.domains.find((one) => one.word === "steady to hard"));
  const from = domain?.from?.heartRate?.value;
  const to = domain?.to?.heartRate?.value;
  if (from === undefined && to === undefined) return null;
  if (from === undefined) return `up to ${Math.round(to as number)}`;
  return to === undefined ? `from ${Math.round(from)}` : `${Math.round(from)} to ${Math.round(to)}`;
}
