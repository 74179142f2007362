/**
 * The comparability gate: what must be the same at both visits before a difference may be called a change.
 *
 * A gate looks at one recorded condition and concerns the measures of some sections or instruments. Where the condition
 * differs, or was recorded at one visit only, it is named and no claim is made. Where neither visit recorded it, a `must`
 * gate stops the claim too, and any other is listed as unchecked.
 *
 * Source: the order of decisions is this project's own, built from rules of the trade: same mode, ergometer, protocol,
 * averaging, analyser, time of day within three hours, preparation and medication (common practice).
 */
import type { Instrument, MeasureInfo, Section } from "../kernel/measure.js";

export interface Gate {
  /** Name in Results.conditions, or in Results.choices where `choice` is set. */
  readonly condition: string;
  /** As a report names it: "kind of exercise". */
  readonly name: string;
  readonly choice?: true;
  /** Not recorded at either visit: the claim stops. */
  readonly must?: true;
  /** Not recorded at either visit: nothing is said, because many tests do not have it. */
  readonly quiet?: true;
  readonly sections?: readonly Section[];
  readonly instruments?: readonly Instrument[];
  /** Further limit by id. */
  readonly ids?: RegExp;
  /** Measures of those sections that come from a test of their own. */
  readonly not?: RegExp;
  /** Whether two recorded words count as the same; equal text by default. */
  readonly same?: (a: string, b: string) => boolean;
}

/** Critical power and speed come from bouts of their own, not from the incremental test. */
const bouts = /^(critical_|work_above_critical|distance_above_critical)/;
const exercise: readonly Section[] = ["incremental", "thresholds", "economy"];
const hard: readonly Section[] = [...exercise, "lactate", "submaximal", "field", "strength"];
const quiet: readonly Section[] = ["rest", "blood_pressure", "heart_rate_variability"];

/** Clock times within three hours of each other, around midnight too. */
export function withinThreeHours(a: string, b: string): boolean {
  const minutes = (clock: string) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));
  const apart = Math.abs(minutes(a) - minutes(b));
  return Math.min(apart, 1440 - apart) <= 180;
}

const within = (limit: number) => (a: string, b: string) => Math.abs(Number(a) - Number(b)) <= limit;

export const GATES: readonly Gate[] = [
  { condition: "mode", name: "kind of exercise", must: true, sections: exercise, not: bouts },
  { condition: "ergometer", name: "ergometer", sections: exercise, not: bouts },
  { condition: "protocol", name: "protocol", must: true, sections: exercise, not: bouts },
  { condition: "stage_length_s", name: "stage length", quiet: true, sections: exercise, not: bouts },
  { condition: "gas_analyser", name: "gas analyser", sections: exercise, instruments: ["gas analyser", "flow sensor"] },
  { condition: "handrail", name: "use of the handrail", quiet: true, sections: exercise, not: bouts },
  { condition: "peak_window_s", name: "averaging window", choice: true, must: true, ids: /peak/ },
  { condition: "critical_mode", name: "kind of exercise of the bouts", must: true, ids: bouts },
  { condition: "critical_bouts", name: "number or distances of the bouts", must: true, ids: bouts },
  { condition: "critical_power_model", name: "model of critical power", choice: true, ids: bouts },
  { condition: "lactate_mode", name: "kind of exercise of the lactate test", must: true, sections: ["lactate"] },
  { condition: "lactate_step_s", name: "step length of the lactate test", must: true, sections: ["lactate"] },
  { condition: "lactate_site", name: "site of blood sampling", sections: ["lactate"] },
  { condition: "lactate_analyser", name: "lactate analyser", sections: ["lactate"] },
  {
    condition: "lactate_definition",
    name: "definition of the lactate threshold",
    choice: true,
    ids: /^lactate_threshold/,
  },
  { condition: "room_air", name: "fractions taken for room air", choice: true, instruments: ["gas analyser"] },
  { condition: "inspired_oxygen", name: "inspired gas", instruments: ["gas analyser"] },
  {
    condition: "pressure_mmhg",
    name: "air pressure (more than 25 mmHg apart)",
    instruments: ["gas analyser"],
    same: within(25),
  },
  { condition: "energy_equation", name: "equation for energy expenditure", choice: true, ids: /^resting_energy_/ },
  { condition: "rest_window_min", name: "length of the resting window", choice: true, sections: ["rest"] },
  { condition: "rest_window_rule", name: "rule of the resting window", choice: true, sections: ["rest"] },
  { condition: "rest_collection", name: "hood, mask or mouthpiece", sections: ["rest"] },
  { condition: "rest_analyser", name: "gas analyser at rest", sections: ["rest"] },
  { condition: "rest_posture", name: "posture at rest", sections: ["rest"] },
  { condition: "pressure_posture", name: "posture of the pressure reading", sections: ["blood_pressure"] },
  { condition: "pressure_method", name: "method of the pressure reading", sections: ["blood_pressure"] },
  { condition: "pressure_device", name: "pressure monitor", sections: ["blood_pressure"] },
  { condition: "dxa_scanner", name: "scanner", must: true, instruments: ["dxa"] },
  { condition: "dxa_software", name: "software of the scanner", instruments: ["dxa"] },
  { condition: "dxa_positioning", name: "positioning in the scanner", instruments: ["dxa"] },
  { condition: "dxa_fasted", name: "meal state at the scan", instruments: ["dxa"] },
  { condition: "scales", name: "scales", instruments: ["scales"] },
  { condition: "spirometer", name: "spirometer", sections: ["lungs"] },
  { condition: "lungs_posture", name: "posture of the lung test", sections: ["lungs"] },
  { condition: "bronchodilator", name: "bronchodilator before the lung test", sections: ["lungs"] },
  { condition: "dynamometer", name: "dynamometer", ids: /grip/ },
  { condition: "grip_posture", name: "posture of the grip test", ids: /grip/ },
  { condition: "push_up_form", name: "form of the push-ups", ids: /^push_ups$/ },
  { condition: "bench_press_machine", name: "equipment of the bench press", ids: /^bench_press/ },
  { condition: "leg_press_machine", name: "equipment of the leg press", ids: /^leg_press/ },
  { condition: "pull_up_hold", name: "hold of the pull-ups", ids: /^pull_ups$/ },
  { condition: "jump_method", name: "method of the jump", must: true, ids: /^jump_/ },
  { condition: "jump_type", name: "type of jump", ids: /^jump_/ },
  { condition: "jump_arms", name: "arms in the jump", ids: /^jump_/ },
  { condition: "pull_force", name: "gross or net force", ids: /^mid_thigh_pull/ },
  { condition: "knee_degrees", name: "knee angle of the pull", ids: /^mid_thigh_pull/ },
  { condition: "step_height_cm", name: "step height", ids: /^step_up/ },
  { condition: "reach_zero_cm", name: "zero of the reach scale", must: true, ids: /^sit_and_reach/ },
  { condition: "stance_eyes", name: "eyes open or closed", must: true, ids: /^single_leg_stance/ },
  { condition: "caliper", name: "caliper", ids: /^(skinfold|body_density)/ },
  { condition: "measurer", name: "measurer of the skinfolds", ids: /^(skinfold|body_density)/ },
  { condition: "impedance_device", name: "impedance device", ids: /^impedance/ },
  { condition: "corridor_m", name: "length of the corridor", ids: /^six_minute_walk/ },
  {
    condition: "hrv_posture",
    name: "posture of the heart-rate record",
    must: true,
    sections: ["heart_rate_variability"],
  },
  { condition: "hrv_breathing", name: "breathing of the heart-rate record", sections: ["heart_rate_variability"] },
  {
    condition: "hrv_window_s",
    name: "length of the heart-rate record",
    choice: true,
    sections: ["heart_rate_variability"],
  },
  { condition: "recovery_posture", name: "posture in recovery", must: true, ids: /^heart_rate_recovery/ },
  {
    condition: "ventilatory_slope_range",
    name: "range of the ventilation slope",
    choice: true,
    ids: /^ventilation_vco2_slope/,
  },
  { condition: "vvo2max_definition", name: "definition of speed at VO2max", choice: true, ids: /^speed_at_vo2max/ },
  {
    condition: "substrate_equation",
    name: "equation for fuel use",
    choice: true,
    ids: /fat_oxidation|carbohydrate|fatmax/,
  },
  { condition: "body_mass_basis", name: "body mass the value is divided by", ids: /per_mass/ },
  {
    condition: "resting_prediction",
    name: "reference edition of resting energy expenditure",
    choice: true,
    ids: /^resting_energy_percent_predicted$/,
  },
  {
    condition: "hrmax_equation",
    name: "reference edition of maximal heart rate",
    choice: true,
    ids: /^heart_rate_percent_predicted$/,
  },
  { condition: "start_time", name: "time of day (more than three hours apart)", same: withinThreeHours },
  {
    condition: "food",
    name: "food before the visit",
    sections: ["rest", "incremental", "thresholds", "lactate", "composition", "size"],
  },
  { condition: "caffeine", name: "caffeine before the visit", sections: [...quiet, ...hard] },
  { condition: "alcohol", name: "alcohol before the visit", sections: [...quiet, ...hard] },
  { condition: "exercise", name: "hard exercise before the visit", sections: [...quiet, ...hard, "composition"] },
  { condition: "illness", name: "illness", sections: [...quiet, ...hard, "lungs"] },
  { condition: "medication", name: "medication", sections: [...quiet, ...hard, "lungs"] },
];

const byMeasure = new Map<string, readonly Gate[]>();
const byNames = new Map<string, readonly Gate[]>();

/**
 * The gates that concern a measure of the catalogue; found once, because every pair of visits asks again. Measures that
 * have the same gates have the same list.
 */
export function gatesOf(id: string, info: MeasureInfo): readonly Gate[] {
  const known = byMeasure.get(id);
  if (known !== undefined) return known;
  const own = GATES.filter((gate) => concerns(gate, id, info));
  const names = own.map(({ condition }) => condition).join();
  const shared = byNames.get(names) ?? own;
  byNames.set(names, shared);
  byMeasure.set(id, shared);
  return shared;
}

/** Whether a gate concerns a measure. A gate without limits concerns every measure. */
function concerns(gate: Gate, id: string, info: MeasureInfo): boolean {
  const place =
    (gate.sections === undefined && gate.instruments === undefined) ||
    gate.sections?.includes(info.section) === true ||
    gate.instruments?.some((instrument) => info.rests?.includes(instrument)) === true;
  return place && (gate.ids === undefined || gate.ids.test(id)) && gate.not?.test(id) !== true;
}
