/** Invented visits for the comparison tests. Nothing here is a person. */
import { readdirSync, readFileSync } from "node:fs";
import { parse } from "yaml";
import type { Known } from "../../src/compare/known.js";
import type { Choices } from "../../src/kernel/generated/choices.js";
import type { TypicalErrorTable } from "../../src/kernel/generated/typical-error.js";
import type { Change, Entry, Quantity } from "../../src/kernel/measure.js";
import { measureInfo } from "../../src/kernel/measures.js";
import type { Results } from "../../src/kernel/results.js";

const TABLES = "src/compare/tables";
export const publishedErrors: readonly TypicalErrorTable[] = readdirSync(TABLES)
  .sort()
  .map((file) => parse(readFileSync(`${TABLES}/${file}`, "utf8")) as TypicalErrorTable);

export const nothingKnown: Known = {
  laboratoryRetests: [],
  publishedErrors: [],
  primaryOutcomes: [],
  targets: [],
  worthwhile: {},
};
export const tablesKnown: Known = { ...nothingKnown, publishedErrors };

export function quantity(id: string, value: number, more: Partial<Quantity> = {}): Quantity {
  const info = measureInfo(id);
  if (info?.unit === undefined || info.decimals === undefined) throw new Error(`${id} is not in the catalogue`);
  return {
    kind: "quantity",
    id,
    value,
    unit: info.unit,
    decimals: info.decimals,
    origin: { kind: "key", key: "session.yaml" },
    ...more,
  };
}

export const CHOICES = {
  peak_window_s: 30,
  room_air: "0.2093/0.0003",
  energy_equation: "weir-1949",
  lactate_definition: "modified-dmax",
  rest_window_min: 5,
  hrv_window_s: 300,
  ventilatory_slope_range: "to-vt2",
  vvo2max_definition: "daniels",
  substrate_equation: "frayn-1983",
  rest_window_rule: "first-steady",
  resting_prediction: "mifflin-st-jeor",
  hrmax_equation: "tanaka-2001",
  vo2_reference: "vo2peak-by-mode",
  lung_reference: "gli-global-2022",
} as unknown as Choices;

/** Everything a gate can ask, recorded. */
export const CONDITIONS: Readonly<Record<string, string>> = {
  start_time: "09:00",
  mode: "cycle",
  ergometer: "cycle_one",
  protocol: "ramp 25",
  stage_length_s: "60",
  gas_analyser: "cart",
  handrail: "none",
  stop: "to the limit",
  end_exertion: "19 of 6-20",
  critical_mode: "cycle",
  critical_bouts: "3 at constant power",
  lactate_mode: "cycle",
  lactate_step_s: "240",
  lactate_site: "earlobe",
  lactate_analyser: "strip_reader",
  pressure_mmhg: "752",
  inspired_oxygen: "room air",
  rest_analyser: "cart",
  rest_collection: "hood",
  rest_posture: "supine",
  pressure_method: "oscillometric",
  pressure_device: "monitor",
  pressure_posture: "seated",
  dxa_scanner: "scanner_one",
  dxa_software: "1.0",
  dxa_positioning: "whole",
  dxa_fasted: "fasted",
  scales: "scales_one",
  spirometer: "spirometer_one",
  dynamometer: "grip_one",
  grip_posture: "seated-elbow-bent",
  body_mass_basis: "weighed at this visit",
  lungs_posture: "sitting",
  bronchodilator: "before",
  push_up_form: "standard",
  bench_press_machine: "free-weight",
  leg_press_machine: "seated-machine",
  pull_up_hold: "overhand",
  jump_method: "force-plate",
  jump_type: "countermovement",
  jump_arms: "on-hips",
  pull_force: "net",
  knee_degrees: "130",
  step_height_cm: "35",
  reach_zero_cm: "26",
  stance_eyes: "open",
  caliper: "caliper_one",
  measurer: "first",
  impedance_device: "impedance_one",
  corridor_m: "30",
  hrv_posture: "supine",
  hrv_breathing: "free",
  recovery_posture: "standing",
  food: "none for 3 h",
  caffeine: "none for 6 h",
  alcohol: "none for 24 h",
  exercise: "none for 24 h",
  illness: "none",
  medication: "none",
};

export function visit(date: string, entries: readonly Entry[], more: Partial<Results> = {}): Results {
  return {
    client: "c-001",
    sex: "female",
    date,
    purpose: "baseline",
    ageYears: 40,
    sources: [{ file: "session.yaml", sha256: "0".repeat(64) }],
    choices: CHOICES,
    conditions: CONDITIONS,
    entries,
    ...more,
  };
}

export const changeOf = (entries: readonly Entry[], id: string): Change => {
  const entry = entries.find((e) => e.id === id);
  if (entry?.kind !== "change") throw new Error(`no change ${id} among ${entries.map((e) => e.id).join(", ")}`);
  return entry;
};
