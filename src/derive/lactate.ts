/** Step test with blood lactate: every definition of the threshold, their spread, and the one that is followed. */

import type { Cell, Column } from "../kernel/measure.js";
import type { MeasureId } from "../kernel/measures.js";
import type { Notebook, Ref } from "../kernel/notebook.js";
import { toDecimals } from "../kernel/rounding.js";
import type { Visit } from "../kernel/visit.js";
import * as proRata from "./incremental/peak-load.js";
import type { Point } from "./lactate/curve.js";
import * as spread from "./lactate/definition-spread.js";
import { everyDefinition } from "./lactate/definitions.js";
import { between, type Step, type StepTest, stepTest } from "./lactate/steps.js";

const AT_THRESHOLD = ["lactate", "heart_rate", "vo2", "rpe"] as const;
const PICK: Readonly<Record<(typeof AT_THRESHOLD)[number], (step: Step) => number | undefined>> = {
  lactate: (s) => s.lactate,
  heart_rate: (s) => s.heartRate,
  vo2: (s) => s.vo2,
  rpe: (s) => s.rpe,
};

export function deriveLactate(book: Notebook, visit: Visit): void {
  if (visit.session.lactate === undefined) return;
  const test = stepTest(visit);
  if (typeof test === "string") {
    for (const id of ["lactate_steps", "lactate_definitions", "lactate_threshold_power"] as const)
      book.withhold(id, test);
    return;
  }
  const points = test.steps.flatMap((s): Point[] => (s.lactate === undefined ? [] : [[s.load, s.lactate]]));
  const found = everyDefinition(points);
  writeSteps(book, test, visit);
  writeDefinitions(book, test, found);

  const chosen = found.find(({ definition }) => definition.id === visit.choices.lactate_definition);
  if (chosen === undefined) throw new Error(`no lactate definition ${visit.choices.lactate_definition}`);
  const id: MeasureId = test.axis === "power" ? "lactate_threshold_power" : "lactate_threshold_speed";
  const ids = AT_THRESHOLD.map((name) => [name, `lactate_threshold_${name}` as const] as const);
  if (chosen.outcome.because !== undefined) {
    const because = `${chosen.definition.id} is not identified: ${chosen.outcome.because}`;
    book.withhold(id, because);
    for (const [, other] of ids) book.withhold(other, because);
    return;
  }
  const load = chosen.outcome.value;
  const inputs: Ref[] = [
    { name: "definition", value: chosen.definition.id, unit: "" },
    { name: "steps with lactate", value: points.length, unit: "" },
  ];
  book.found(id, load, chosen.definition.info, inputs, { note: chosen.definition.wording });
  for (const [name, other] of ids) {
    const value = between(test.steps, load, PICK[name]);
    if (value === undefined) book.withhold(other, "it was not measured in both steps around the threshold");
    else
      book.found(other, value, chosen.definition.info, [id, ...inputs], {
        note: "straight between the steps around it",
      });
  }
}

function writeSteps(book: Notebook, test: StepTest, visit: Visit): void {
  const columns: Column[] = [
    { key: "step", title: "Step", decimals: 0 },
    loadColumn(test),
    { key: "lactate_mmol_l", title: "Lactate", unit: "mmol/L", decimals: 2 },
    { key: "heart_rate_bpm", title: "Heart rate", unit: "1/min", decimals: 0 },
    { key: "vo2_l_min", title: "VO2", unit: "L/min", decimals: 2 },
    { key: "rpe", title: "Perceived exertion", unit: "6-20", decimals: 0 },
  ];
  const rows = test.steps.map((s, i): Cell[] => [
    i + 1,
    s.load,
    s.lactate ?? null,
    s.heartRate ?? null,
    s.vo2 ?? null,
    s.rpe ?? null,
  ]);
  const from =
    visit.session.lactate?.steps === undefined ? (visit.session.lactate?.series ?? "") : `${visit.file} lactate.steps`;
  const origin: Ref[] = [{ name: "from", value: from, unit: "" }];
  book.table("lactate_steps", columns, rows, proRata.info, origin, test.notes.join("; ") || undefined);
  const highest = test.steps.reduce<number | undefined>(
    (top, s) => (s.lactate !== undefined && (top === undefined || s.lactate > top) ? s.lactate : top),
    undefined,
  );
  if (highest === undefined) book.withhold("lactate_highest", "no step holds a lactate");
  else book.record("lactate_highest", highest, from);
}

function writeDefinitions(book: Notebook, test: StepTest, found: ReturnType<typeof everyDefinition>): void {
  const columns: Column[] = [
    { key: "definition", title: "Definition" },
    { key: "wording", title: "Exactly" },
    loadColumn(test),
    { key: "lactate_mmol_l", title: "Lactate", unit: "mmol/L", decimals: 2 },
    { key: "heart_rate_bpm", title: "Heart rate", unit: "1/min", decimals: 0 },
    { key: "vo2_l_min", title: "VO2", unit: "L/min", decimals: 2 },
    { key: "because", title: "Not given because" },
  ];
  const rows = found.map(({ definition, outcome }): Cell[] => {
    if (outcome.because !== undefined)
      return [definition.id, definition.wording, null, null, null, null, outcome.because];
    const read = (name: keyof typeof PICK) => between(test.steps, outcome.value, PICK[name]) ?? null;
    return [definition.id, definition.wording, outcome.value, read("lactate"), read("heart_rate"), read("vo2"), null];
  });
  const loads = found.flatMap(({ outcome }) => (outcome.because === undefined ? [outcome.value] : []));
  const inputs: Ref[] = [{ name: "definitions given", value: `${loads.length} of ${found.length}`, unit: "" }];
  book.table("lactate_definitions", columns, rows, spread.info, inputs);
  if (loads.length < 2) book.withhold("lactate_definition_spread", "fewer than two definitions gave a threshold");
  else
    book.found("lactate_definition_spread", spread.definitionSpread(loads), spread.info, inputs, {
      note: `from ${toDecimals(Math.min(...loads), 1)} to ${toDecimals(Math.max(...loads), 1)} ${test.unit}: compare one definition with itself only`,
    });
}

const loadColumn = (test: StepTest): Column =>
  test.axis === "power"
    ? { key: "power_w", title: "Power", unit: "W", decimals: 0 }
    : { key: "speed_km_h", title: "Speed", unit: "km/h", decimals: 1 };
