/** The conditions before a resting measurement, held one by one against the edition the laboratory chose. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";
import { type Edition, type HoursOf, hoursCondition, info, LEAST_HOURS } from "./hours-condition.js";

const EDITIONS: Readonly<
  Record<Edition, { readonly name: string; readonly nicotine: string; readonly exercise: string }>
> = {
  "evidence-review-2015": {
    name: "evidence review of 2015 (Fullmer and others, J Acad Nutr Diet 115:1417–1446)",
    nicotine: "more than 140 min",
    exercise: "12 h or more after moderate or hard exercise, better 48 h",
  },
  "practitioner-instructions-2006": {
    name: "practitioner instructions of 2006 (Evidence Analysis Library)",
    nicotine: "2 h or more",
    exercise: "2 h or more after light exercise",
  },
};

const OLDER = EDITIONS["practitioner-instructions-2006"].name;
const COLUMNS: readonly Column[] = [
  { key: "condition", title: "Condition" },
  { key: "found", title: "Found" },
  { key: "limit", title: "Limit" },
  { key: "outcome", title: "Outcome" },
  { key: "source", title: "Source" },
];

interface Condition {
  readonly name: string;
  /** Undefined = not recorded. */
  readonly found: string | undefined;
  readonly limit: string;
  readonly met: boolean;
  readonly source: string;
}

/** Writes the checklist and a judgement over it. */
export function restingConditions(book: Notebook, visit: Visit): void {
  const edition = EDITIONS[visit.choices.rest_conditions];
  const list = conditions(visit);
  const outcome = (c: Condition) => (c.found === undefined ? "not recorded" : c.met ? "met" : "not met");
  const rows = list.map((c): Cell[] => [c.name, c.found ?? null, c.limit, outcome(c), c.source]);
  book.table("resting_conditions", COLUMNS, rows, info, [{ name: "edition", value: edition.name, unit: "" }]);

  const unmet = list.filter((c) => c.found !== undefined && !c.met).map((c) => c.name.toLowerCase());
  const unknown = list.filter((c) => c.found === undefined).map((c) => c.name.toLowerCase());
  const rule = `${info.id} r${info.revision}`;
  if (unmet.length > 0)
    book.judge("resting_conditions_met", "not met", `Outside the limits of the ${edition.name}: ${unmet.join(", ")}.`, {
      rule,
    });
  else if (unknown.length > 0)
    book.judge("resting_conditions_met", "not fully recorded", `Not recorded: ${unknown.join(", ")}.`, { rule });
  else book.judge("resting_conditions_met", "met", `All conditions of the ${edition.name} were met.`, { rule });
}

function conditions(visit: Visit): readonly Condition[] {
  const chosen = visit.choices.rest_conditions;
  const edition = EDITIONS[chosen];
  const p = visit.session.preparation ?? {};
  const rest = visit.session.rest;
  const posture = rest?.posture ?? p.posture;
  const room = visit.session.room?.temperature_c;
  const page = "evidence review, page of 2014";
  const hours = (name: string, of: HoursOf, found: number | undefined, limit: string, source: string): Condition => ({
    name,
    found: found === undefined ? undefined : `${found} h`,
    limit,
    met: found !== undefined && hoursCondition(of, found, chosen),
    source,
  });
  return [
    hours("Fast", "food", p.hours_since_food, `${LEAST_HOURS[chosen].food} h or more`, edition.name),
    hours("Caffeine", "caffeine", p.hours_since_caffeine, "4 h or more, better overnight", page),
    p.nicotine === "never"
      ? { name: "Nicotine", found: "never", limit: edition.nicotine, met: true, source: edition.name }
      : hours("Nicotine", "nicotine", p.hours_since_nicotine, edition.nicotine, edition.name),
    hours("Alcohol", "alcohol", p.hours_since_alcohol, "2 h or more", OLDER),
    hours("Exercise", "exercise", p.hours_since_exercise, edition.exercise, edition.name),
    hours("Hard exercise", "hard exercise", p.hours_since_hard_exercise, "24 h or more, better 48 h", OLDER),
    {
      name: "Rest before the test",
      found: p.settling_min === undefined ? undefined : `${p.settling_min} min`,
      limit: "30 min; 20 min where 30 are not possible",
      met: p.settling_min !== undefined && p.settling_min >= 20,
      source: page,
    },
    { name: "Posture", found: posture, limit: "supine", met: posture === "supine", source: edition.name },
    {
      name: "Room temperature",
      found: room === undefined ? undefined : `${room} °C`,
      limit: "22 to 25 °C, or a blanket",
      met: room !== undefined && room >= 22 && room <= 25,
      source: page,
    },
    {
      name: "Quiet and awake",
      found: rest?.behaviour,
      limit: "quiet and awake",
      met: rest?.behaviour === "quiet and awake",
      source: edition.name,
    },
  ];
}
