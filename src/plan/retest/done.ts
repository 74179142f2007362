/**
 * Done against planned: the client's log week by week beside the plan that was recorded at the visit before. Load by
 * session rating, monotony and strain; the training impulse where the log has heart rates.
 */
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Results } from "../../kernel/results.js";
import type { LoggedSession } from "../../kernel/training-log.js";
import { addDays, mondayOf } from "../days.js";
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

export function weekOf(monday: string, log: readonly LoggedSession[], from: Results): DoneWeek {
  const rows = log.filter((one) => one.date >= monday && one.date < addDays(monday, 7));
  const sum = (values: readonly (number | undefined)[]): number | null =>
    values.every((value) => value === undefined) ? null : values.reduce<number>((all, value) => all + (value ?? 0), 0);
  const complete = rows.every((one) => one.rating !== undefined);
  const daily = Array.from({ length: 7 }, (_, i) =>
    rows
      .filter((one) => one.date === addDays(monday, i))
      .reduce((all, one) => all + sessionLoad(one.rating ?? 0, one.minutes), 0),
  );
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
  const mondays = planned
    ? columnOf(planned, "monday").map(String)
    : [...new Set(log.map((one) => mondayOf(one.date)))].sort();
  const weeks = mondays
    .filter((monday) => monday < thisMonday)
    .map((monday) => weekOf(monday, log, previous ?? results));
  if (weeks.length === 0) return undefined;
  const of = (key: string, i: number): number | null => {
    const cell = planned ? columnOf(planned, key)[i] : null;
    return typeof cell === "number" ? cell : null;
  };
  const rows = weeks.map((week, i): Cell[] => {
    const target = of("minutes", i);
    return [
      week.monday,
      target,
      week.minutes,
      target === null || target === 0 ? null : (100 * week.minutes) / target,
      week.sessions,
      of("load", i),
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
  const done = weeks.reduce((sum, week, i) => sum + (of("minutes", i) === null ? 0 : week.minutes), 0);
  if (total > 0)
    book.found("programme_compliance", (100 * done) / total, sessionLoadInfo, [
      { name: "minutes done", value: done, unit: "min" },
      { name: "minutes planned", value: total, unit: "min" },
    ]);
  else book.withhold("programme_compliance", "no plan was recorded at the visit before");
  return weeks;
}
