/** At a retest: which inputs of the plan changed since the visit before, what that changes in the plan, and why. */
import type { Plan } from "../../kernel/generated/client.js";
import type { Cell, Change } from "../../kernel/measure.js";
import { type MeasureId, measureInfo } from "../../kernel/measures.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Results } from "../../kernel/results.js";
import { toDecimals } from "../../kernel/rounding.js";
import { judgementOf, quantityOf, tableOf } from "../recorded.js";
import { type Settings, weekAt } from "../settings.js";
import type { LaidWeek } from "../weeks/lay-out.js";

/** Measures a plan is made from, and what each moves. */
const MOVES: readonly (readonly [MeasureId, string])[] = [
  ["vt1_heart_rate", "upper limit of easy"],
  ["vt1_power", "upper limit of easy"],
  ["vt1_speed", "upper limit of easy"],
  ["vt1_grade", "upper limit of easy, as grade"],
  ["vt2_heart_rate", "lower limit of hard"],
  ["vt2_power", "lower limit of hard"],
  ["vt2_speed", "lower limit of hard"],
  ["vt2_grade", "lower limit of hard, as grade"],
  ["lactate_threshold_power", "limit where no second ventilatory threshold is given"],
  ["heart_rate_peak", "limits by reserve, where no threshold is given"],
  ["resting_heart_rate", "limits by reserve, where no threshold is given"],
  ["body_mass", "speed by load, share of body mass carried"],
  ["bench_press_1rm", "load of the press"],
  ["leg_press_1rm", "load of the leg press"],
];

export function writeChanges(
  book: Notebook,
  results: Results,
  previous: Results,
  plan: Plan,
  settings: Settings,
  laid: readonly LaidWeek[],
  startFrom: string,
): void {
  const rows: Cell[][] = [];
  for (const [id, moves] of MOVES) {
    const [was, is] = [quantityOf(previous, id), quantityOf(results, id)];
    const title = measureInfo(id)?.title ?? id;
    if (was === undefined && is === undefined) continue;
    const text = (one: typeof was) =>
      one === undefined ? "not given" : `${toDecimals(one.value, one.decimals)} ${one.unit}`;
    if (was !== undefined && is !== undefined && was.value === is.value) continue;
    rows.push([
      title,
      text(was),
      text(is),
      moves,
      is === undefined ? "not given at this visit: the plan falls back on what is" : whyOf(results, id, previous.date),
    ]);
  }
  for (const [id, title, moves] of [
    ["intensity_basis", "What the intensities rest on", "all intensities"],
    ["vigorous_sessions", "Vigorous sessions", "steady and hard sessions"],
  ] as const) {
    const [was, is] = [judgementOf(previous, id)?.verdict, book.entry(id)];
    if (was !== undefined && is?.kind === "judgement" && was !== is.verdict)
      rows.push([title, was, is.verdict, moves, is.because]);
  }
  rows.push(...ownWords(plan, previous.date, settings));
  const before = tableOf(previous, "programme_weeks");
  rows.push([
    "Weeks to the goal",
    before === undefined ? "no plan" : String(before.rows.length),
    String(laid.length),
    "the remaining weeks are laid out anew from this visit",
    startFrom,
  ]);
  book.table(
    "programme_changes",
    [
      { key: "input", title: "What the plan is made from" },
      { key: "before", title: `On ${previous.date}` },
      { key: "now", title: "Now" },
      { key: "moves", title: "What it moves" },
      { key: "because", title: "Why" },
    ],
    rows,
    { id: "plan-changes", revision: 1 },
    [{ name: "visit before", value: previous.date, unit: "" }],
  );
}

/** The verdict of the comparison, where there is one: a plan follows the newest test, and says how sure the change is. */
function whyOf(results: Results, id: string, since: string): string {
  const change = results.entries.find(
    (e): e is Change => e.kind === "change" && e.measure === id && (e.since === since || e.id === `change_${id}`),
  );
  const sure = change === undefined ? "no verdict on the change" : `change: ${change.verdict}`;
  return `measured anew; ${sure}. The newest values are used`;
}

/** What the client or the practitioner changed in words (plan.adjusted). */
function ownWords(plan: Plan, since: string, settings: Settings): Cell[][] {
  const [was, is] = [weekAt(plan, since), weekAt(plan, settings.visitDate)];
  const why = (plan.adjusted ?? [])
    .filter((one) => one.from_visit > since && one.from_visit <= settings.visitDate)
    .map((one) => one.because)
    .join("; ");
  const keys = [
    "days_per_week",
    "hours_per_week",
    "training_days",
    "long_day",
    "modes",
    "equipment",
    "strength_level",
  ] as const;
  const text = (value: unknown) =>
    value === undefined ? "not stated" : Array.isArray(value) ? value.join(", ") : String(value);
  const injuries = (week: typeof was) => (week.injuries ?? []).map((one) => one.area).join(", ") || "none";
  return [
    ...keys
      .filter((key) => text(was[key]) !== text(is[key]))
      .map((key): Cell[] => [
        key.replaceAll("_", " "),
        text(was[key]),
        text(is[key]),
        "days, minutes, kinds of session",
        why,
      ]),
    ...(injuries(was) === injuries(is) ? [] : [["injuries", injuries(was), injuries(is), "what is left out", why]]),
  ];
}
