/** Speed at VO2max by every definition, and the one that is followed. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";
import { attempt, type Outcome } from "../found-or-withheld.js";
import * as proRata from "../incremental/peak-load.js";
import { readTable } from "./read-table.js";
import * as speed from "./speed-at-vo2max.js";
import type { SteadyStage } from "./steady-stages.js";

const COLUMNS: readonly Column[] = [
  { key: "definition", title: "Definition" },
  { key: "speed_km_h", title: "Speed", unit: "km/h", decimals: 1 },
  { key: "because", title: "Not given because" },
];

/** `steady`: stages of the test that are steady. Uses vo2_peak_per_mass and, for the last two definitions, incremental_stages. */
export function writeSpeedAtVo2max(book: Notebook, visit: Visit, steady: readonly SteadyStage[]): void {
  const mass = book.value("body_mass");
  const peak = book.value("vo2_peak_per_mass");
  const grades = new Set(steady.map((s) => s.grade ?? 0));
  const runs = steady.flatMap((s): speed.SteadySpeed[] =>
    s.speed === undefined || s.speed < 6 || mass === undefined ? [] : [{ speed: s.speed, vo2: (1000 * s.vo2) / mass }],
  );
  const fitted = (definition: speed.SpeedDefinition): Outcome<number> => {
    if (peak === undefined) return { because: "peak oxygen uptake per kilogram is not given" };
    if (grades.size > 1) return { because: "the steady stages were run at different grades" };
    return attempt(() => speed.speedAtVo2max(definition, runs, peak));
  };
  const outcomes: Record<Visit["choices"]["vvo2max_definition"], Outcome<number>> = {
    daniels: fitted("daniels"),
    lacour: fitted("lacour"),
    "di-prampero": fitted("di-prampero"),
    ...stageSpeeds(book),
  };
  const rows = Object.entries(outcomes).map(([id, o]): Cell[] =>
    o.because === undefined ? [id, o.value, null] : [id, null, o.because],
  );
  const inputs: Ref[] = [
    ...(peak === undefined ? [] : (["vo2_peak_per_mass"] as const)),
    { name: "steady stages", value: runs.length, unit: "" },
  ];
  book.table("speed_at_vo2max_definitions", COLUMNS, rows, speed.info, inputs);
  const chosen = visit.choices.vvo2max_definition;
  const outcome = outcomes[chosen];
  if (outcome.because !== undefined) book.withhold("speed_at_vo2max", outcome.because);
  else
    book.found(
      "speed_at_vo2max",
      outcome.value,
      chosen === "pro-rata" ? proRata.info : speed.info,
      [...inputs, { name: "definition", value: chosen, unit: "" }],
      {
        note: `definition: ${chosen}`,
      },
    );
}

function stageSpeeds(book: Notebook): { "completed-stage": Outcome<number>; "pro-rata": Outcome<number> } {
  const stages = readTable(book, "incremental_stages").filter(
    (row) => /^\d+$/.test(row.text("stage") ?? "") && row.number("speed_km_h") !== undefined,
  );
  const completed = stages.filter((row) => row.text("complete") === "yes");
  const before = completed[completed.length - 1];
  const last = stages[stages.length - 1];
  const done = before?.number("speed_km_h");
  if (before === undefined || done === undefined) {
    const because = "no stage with a speed was completed";
    return { "completed-stage": { because }, "pro-rata": { because } };
  }
  if (last === before || last === undefined) return { "completed-stage": { value: done }, "pro-rata": { value: done } };
  const [from, to, stageFrom, stageTo] = [
    last.number("from_s"),
    last.number("to_s"),
    before.number("from_s"),
    before.number("to_s"),
  ];
  if (from === undefined || to === undefined || stageFrom === undefined || stageTo === undefined)
    return {
      "completed-stage": { value: done },
      "pro-rata": { because: "the time spent in the last stage is not known" },
    };
  return {
    "completed-stage": { value: done },
    "pro-rata": attempt(() =>
      proRata.peakLoad(done, last.number("speed_km_h") ?? done, to - from, stageTo - stageFrom),
    ),
  };
}
