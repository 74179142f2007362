/**
 * Done against planned: the client's log week by week beside the plan that was recorded at the visit before. Load by
 * session rating, monotony and strain; the training impulse where the log has heart rates.
 */

import { daysBetween, mondayOf } from "../../kernel/days.js";
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Results } from "../../kernel/results.js";
import type { LoggedSession } from "../../kernel/training-log.js";
import { tried } from "../intensity/write-domains.js";
import { sessionLoad, info as sessionLoadInfo } from "../load/session-load.js";
import { trainingImpulse } from "../load/training-impulse.js";
import { weeklyMonotony } from "../load/weekly-monotony.js";
import { weeklyStrain } from "../load/weekly-strain.js";
import { columnOf, numberOf, tableOf } from "../recorded.js";

export interface DoneWeek {
  readonly monday: string;
  readonly minutes: number;
  readonly sessions: number;
  readonly load: number | null;
  readonly monotony: number | null;
  readonly strain: number | null;
  readonly distance: number | null;
  readonly climb: number | null;
  readonly impulse: number | null;
}

/** One week from the rows of the log that fall into it. */
function weekOf(monday: string, rows: readonly LoggedSession[], from: Results): DoneWeek {
  const sum = (values: readonly (number | undefined)[]): number | null =>
    values.every((value) => value === undefined) ? null : values.reduce<number>((all, value) => all + (value ?? 0), 0);
  const complete = rows.every((one) => one.rating !== undefined);
  const daily = [0, 0, 0, 0, 0, 0, 0];
  for (const one of rows) {
    const weekday = daysBetween(monday, one.date);
    daily[weekday] = (daily[weekday] as number) + sessionLoad(one.rating ?? 0, one.minutes);
  }
  const [rest, peak] = [
    numberOf(from, "resting_heart_rate") ?? numberOf(from, "resting_pulse"),
    numberOf(from, "heart_rate_peak"),
  ];
  const impulses = rows.flatMap((one) =>
    one.heartRateBpm === undefined || rest === undefined || peak === undefined
      ? []
      : [tried(() => trainingImpulse(one.minutes, one.heartRateBpm as number, rest, peak, from.sex))],
  );
  return {
    monday,
    minutes: rows.reduce((all, one) => all + one.minutes, 0),
    sessions: rows.length,
    load: complete && rows.length > 0 ? daily.reduce((all, load) => all + load, 0) : null,
    monotony: complete ? (tried(() => weeklyMonotony(daily)) ?? null) : null,
    strain: complete ? (tried(() => weeklyStrain(daily)) ?? null) : null,
    distance: sum(rows.map((one) => one.distanceKm)),
    climb: sum(rows.map((one) => one.climbM)),
    impulse: sum(impulses),
  };
}

/** Rows of a log by the Monday of their week. */
function byWeek(log: readonly LoggedSession[]): ReadonlyMap<string, readonly LoggedSession[]> {
  const weeks = new Map<string, LoggedSession[]>();
  for (const one of log) {
    const monday = mondayOf(one.date);
    const rows = weeks.get(monday);
    if (rows === undefined) weeks.set(monday, [one]);
    else rows.push(one);
  }
  return weeks;
}

/** Whole weeks from the plan before up to this visit; undefined without a log or without a plan to hold it against. */
export function writeDone(
  book: Notebook,
  results: Results,
  previous: Results | undefined,
  log: readonly LoggedSession[] | undefined,
): readonly DoneWeek[] | undefined {
  if (log === undefined || log.length === 0) return undefined;
  const planned = previous && tableOf(previous, "programme_weeks");
  const thisMonday = mondayOf(results.date);
  const rowsOf = byWeek(log);
  const mondays = planned ? columnOf(planned, "monday").map(String) : [...rowsOf.keys()].sort();
  const weeks = mondays
    .filter((monday) => monday < thisMonday)
    .map((monday) => weekOf(monday, rowsOf.get(monday) ?? [], previous ?? results));
  if (weeks.length === 0) return undefined;
  const plannedOf = (key: string) => {
    const column = planned ? columnOf(planned, key) : [];
    return (i: number): number | null => (typeof column[i] === "number" ? column[i] : null);
  };
  const [minutesOf, loadOf] = [plannedOf("minutes"), plannedOf("load")];
  const rows = weeks.map((week, i): Cell[] => {
    const target = minutesOf(i);
    return [
      week.monday,
      target,
      week.minutes,
      target === null || target === 0 ? null : (100 * week.minutes) / target,
      week.sessions,
      loadOf(i),
      week.load,
      week.monotony,
      week.strain,
      week.distance,
      week.climb,
      week.impulse,
    ];
  });
  book.table(
    "done_against_planned",
    [
      { key: "monday", title: "Week from" },
      { key: "planned", title: "Planned", unit: "min", decimals: 0 },
      { key: "done", title: "Done", unit: "min", decimals: 0 },
      { key: "share", title: "Done of planned", unit: "%", decimals: 0 },
      { key: "sessions", title: "Sessions", decimals: 0 },
      { key: "load_planned", title: "Load planned", decimals: 0 },
      { key: "load_done", title: "Load done", decimals: 0 },
      { key: "monotony", title: "Monotony", decimals: 2 },
      { key: "strain", title: "Strain", decimals: 0 },
      { key: "distance", title: "Distance", unit: "km", decimals: 1 },
      { key: "climb", title: "Climb", unit: "m", decimals: 0 },
      { key: "impulse", title: "Training impulse", decimals: 0 },
    ],
    rows,
    sessionLoadInfo,
    [{ name: "sessions logged", value: log.length, unit: "" }],
    "Load is rating (0 to 10) times minutes, and stands only where every session of the week was rated. Monotony is the mean over the SD of seven days (n − 1); no alarm number is known that holds for everyone. The impulse is from mean heart rates and underrates intervals.",
  );
  const total = rows.reduce((sum, row) => sum + (typeof row[1] === "number" ? row[1] : 0), 0);
  const done = weeks.reduce((sum, week, i) => sum + (minutesOf(i) === null ? 0 : week.minutes), 0);
  if (total > 0)
    book.found("programme_compliance", (100 * done) / total, sessionLoadInfo, [
      { name: "minutes done", value: done, unit: "min" },
      { name: "minutes planned", value: total, unit: "min" },
    ]);
  else book.withhold("programme_compliance", "no plan was recorded at the visit before");
  return weeks;
}
