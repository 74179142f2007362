/** What the practitioner set by hand: kept as written, shown, and checked. A broken limit is a remark, never a refusal. */

import { dayOf, isoOf } from "../kernel/days.js";
import type { Plan } from "../kernel/generated/client.js";
import type { Cell } from "../kernel/measure.js";
import type { Notebook } from "../kernel/notebook.js";
import { minutesIn } from "./sessions/session.js";
import { allowedByHand, type Means } from "./sessions/week-sessions.js";
import type { Settings } from "./settings.js";
import type { LaidWeek } from "./weeks/lay-out.js";

export function writeOverrides(
  book: Notebook,
  plan: Plan,
  laid: readonly LaidWeek[],
  settings: Settings,
  may: Pick<Means, "vigorous" | "intervals">,
): void {
  const rows: Cell[][] = [];
  for (const { week, sessions } of laid) {
    const byHand = sessions.filter((session) => session.byHand !== undefined);
    if (week.override === undefined && byHand.length === 0) continue;
    const minutes = minutesIn(sessions);
    const days = new Set(sessions.map((session) => session.day)).size;
    if (week.override) {
      const remarks = [
        week.remark,
        minutes > settings.minutesAtMost ? `more than the ${settings.minutesAtMost} min the client has` : undefined,
      ];
      rows.push([`week from ${isoOf(week.monday)}`, `${week.minutes} min`, week.override.because, said(remarks)]);
    }
    for (const session of byHand) {
      const remarks = [
        days > settings.daysPerWeek ? `${days} days in the week, ${settings.daysPerWeek} agreed` : undefined,
        minutes > settings.minutesAtMost
          ? `the week then holds ${minutes} min of ${settings.minutesAtMost}`
          : undefined,
      ];
      rows.push([isoOf(session.day), `${session.kind}, ${session.minutes} min`, session.byHand ?? "", said(remarks)]);
    }
  }
  for (const one of (plan.sessions ?? []).filter((own) => !allowedByHand(own, may)))
    rows.push([
      one.date,
      `${one.kind}, ${one.minutes} min`,
      one.because,
      may.vigorous
        ? "left out: hard intervals wait for a test to the limit without signs"
        : "left out: vigorous exercise waits until clearance is recorded",
    ]);
  const outside = [
    ...(plan.weeks ?? []).map((one) => one.monday),
    ...(plan.sessions ?? []).map((one) => one.date),
  ].filter((day) => dayOf(day) >= settings.goalDay);
  rows.push(...outside.map((day): Cell[] => [day, "", "", "lies after the goal, so no plan holds it"]));
  if (rows.length === 0) return;
  book.table(
    "programme_overrides",
    [
      { key: "when", title: "When" },
      { key: "what", title: "Set to" },
      { key: "because", title: "Why" },
      { key: "remark", title: "Remark" },
    ],
    rows,
    { id: "plan-overrides", revision: 1 },
    [],
  );
}

const said = (remarks: readonly (string | undefined)[]): string =>
  remarks.filter((remark) => remark !== undefined).join("; ") || "inside the limits";
