/** The conditions before a resting measurement, held one by one against the edition the laboratory chose. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";

export const EDITIONS = {
  "evidence-review-2015": {
    id: "resting-conditions-2015",
    revision: 1,
    name: "evidence review of 2015 (Fullmer and others, J Acad Nutr Diet 115:1417–1446)",
    fastHours: 7,
    nicotineHours: 140 / 60,
    nicotineText: "more than 140 min",
    exerciseHours: 12,
    exerciseText: "12 h or more after moderate or hard exercise, better 48 h",
  },
  "practitioner-instructions-2006": {
    id: "resting-conditions-2006",
    revision: 1,
    name: "practitioner instructions of 2006 (Evidence Analysis Library)",
    fastHours: 5,
    nicotineHours: 2,
    nicotineText: "2 h or more",
    exerciseHours: 2,
    exerciseText: "2 h or more after light exercise",
  },
} as const;

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
  book.table("resting_conditions", COLUMNS, rows, edition, [{ name: "edition", value: edition.name, unit: "" }]);

  const unmet = list.filter((c) => c.found !== undefined && !c.met).map((c) => c.name.toLowerCase());
  const unknown = list.filter((c) => c.found === undefined).map((c) => c.name.toLowerCase());
  const rule = `${edition.id} r${edition.revision}`;
  if (unmet.length > 0)
    book.judge("resting_conditions_met", "not met", `Outside the limits of the ${edition.name}: ${unmet.join(", ")}.`, {
      rule,
    });
  else if (unknown.length > 0)
    book.judge("resting_conditions_met", "not fully recorded", `Not recorded: ${unknown.join(", ")}.`, { rule });
  else book.judge("resting_conditions_met", "met", `All conditions of the ${edition.name} were met.`, { rule });
}

function conditions(visit: Visit): readonly Condition[] {
  const edition = EDITIONS[visit.choices.rest_conditions];
  const p = visit.session.preparation ?? {};
  const rest = visit.session.rest;
  const posture = rest?.posture ?? p.posture;
  const room = visit.session.room?.temperature_c;
  const atLeast = (
    name: string,
    found: number | undefined,
    least: number,
    limit: string,
    source: string,
    unit = "h",
  ) => ({
    name,
    found: found === undefined ? undefined : `${found} ${unit}`,
    limit,
    met: found !== undefined && found >= least,
    source,
  });
  const nicotine =
    p.nicotine === "never"
      ? { name: "Nicotine", found: "never", limit: edition.nicotineText, met: true, source: edition.name }
      : atLeast("Nicotine", p.hours_since_nicotine, edition.nicotineHours, edition.nicotineText, edition.name);
  return [
    atLeast("Fast", p.hours_since_food, edition.fastHours, `${edition.fastHours} h or more`, edition.name),
    atLeast("Caffeine", p.hours_since_caffeine, 4, "4 h or more, better overnight", "evidence review, page of 2014"),
    nicotine,
    atLeast("Alcohol", p.hours_since_alcohol, 2, "2 h or more", OLDER),
    atLeast("Exercise", p.hours_since_exercise, edition.exerciseHours, edition.exerciseText, edition.name),
    atLeast("Hard exercise", p.hours_since_hard_exercise, 24, "24 h or more, better 48 h", OLDER),
    atLeast(
      "Rest before the test",
      p.settling_min,
      20,
      "30 min; 20 min where 30 are not possible",
      "evidence review, page of 2014",
      "min",
    ),
    { name: "Posture", found: posture, limit: "supine", met: posture === "supine", source: edition.name },
    {
      name: "Room temperature",
      found: room === undefined ? undefined : `${room} °C`,
      limit: "22 to 25 °C, or a blanket",
      met: room !== undefined && room >= 22 && room <= 25,
      source: "evidence review, page of 2014",
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
