/** Where the weeks start from at a retest: what was done lately, else what was planned for the weeks just past. */

import { mondayOf } from "../../kernel/days.js";
import type { Results } from "../../kernel/results.js";
import { tableOf } from "../recorded.js";
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
      because:
        logged.length === 1
          ? "they start from the one week that was logged"
          : `they start from the ${logged.length} weeks logged last, on average`,
    };
  const planned = previous && tableOf(previous, "programme_weeks");
  if (planned === undefined) return undefined;
  const monday = mondayOf(results.date);
  const at = (key: string) => planned.columns.findIndex((column) => column.key === key);
  const [from, easier, minutes] = [at("monday"), at("easier"), at("minutes")];
  const last = planned.rows.findLast(
    (row) => String(row[from]) < monday && row[easier] === "" && typeof row[minutes] === "number",
  );
  return last === undefined
    ? undefined
    : {
        minutes: last[minutes] as number,
        because: "no log is there, so they start from the loading week planned last",
      };
}
