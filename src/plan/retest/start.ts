/** Where the weeks start from at a retest: what was done lately, else what was planned for the weeks just past. */
import type { Results } from "../../kernel/results.js";
import { mondayOf } from "../days.js";
import { columnOf, tableOf } from "../recorded.js";
import type { DoneWeek } from "./done.js";

export interface Start {
  readonly minutes: number;
  readonly because: string;
}
/** Weeks looked back on; a convention. */
const BACK = 4;

export function startOf(
  results: Results,
  previous: Results | undefined,
  done: readonly DoneWeek[] | undefined,
): Start | undefined {
  const logged = done?.slice(-BACK).map((week) => week.minutes) ?? [];
  if (logged.length > 0)
    return {
      minutes: Math.round(logged.reduce((sum, minutes) => sum + minutes, 0) / logged.length),
      because: `they start from the ${logged.length} weeks logged last, on average`,
    };
  const planned = previous && tableOf(previous, "programme_weeks");
  if (planned === undefined) return undefined;
  const monday = mondayOf(results.date);
  const minutes = columnOf(planned, "minutes");
  const easier = columnOf(planned, "easier");
  const past = columnOf(planned, "monday").flatMap((day, i) =>
    String(day) < monday && easier[i] === "" && typeof minutes[i] === "number" ? [minutes[i] as number] : [],
  );
  const last = past.at(-1);
  return last === undefined
    ? undefined
    : { minutes: last, because: "no log is there, so they start from the loading week planned last" };
}
