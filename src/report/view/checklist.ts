/**
 * What a report of an exercise test with gas exchange has to hold, after the statements of the societies (ATS/ACCP 2003;
 * Radtke and others 2019, outcome table; the list as a whole from memory). Each item is in the report or in the list of
 * what was not recorded: it counts as recorded when the visit has one of its names among results, conditions, house
 * choices or the client's own facts.
 */
import { type Context, sectionOf } from "./context.js";
import type { Fact } from "./types.js";

export const ITEMS: Readonly<Record<string, readonly string[]>> = {
  purpose: ["client.goals"],
  stature: ["stature"],
  body_mass: ["body_mass"],
  body_mass_index: ["body_mass_index"],
  medication: ["client.medication", "medication"],
  activity: ["client.activity"],
  screening: ["screening_decision"],
  consent: ["client.consent"],
  resting_heart_rate: ["resting_heart_rate", "resting_pulse"],
  resting_pressure: ["systolic_pressure"],
  spirometry: ["fev1"],
  ventilation_capacity: ["mvv", "mvv_estimated"],
  haemoglobin: ["haemoglobin"],
  time_of_day: ["start_time"],
  food: ["food"],
  caffeine: ["caffeine"],
  last_training: ["exercise"],
  mode: ["mode"],
  handrail: ["handrail"],
  gas_analyser: ["gas_analyser"],
  pressure: ["pressure_mmhg"],
  averaging: ["choices.peak_window_s"],
  left_out: ["incremental_data", "incremental_excluded"],
  protocol: ["protocol"],
  stages: ["incremental_stages", "stage_length_s"],
  phases: ["incremental_phases"],
  duration: ["test_duration"],
  recovery_mode: ["recovery_posture"],
  stop_reason: ["stop_reason", "stop"],
  exertion: ["end_exertion"],
  exchange_ratio: ["rer_peak"],
  heart_rate: ["heart_rate_peak"],
  heart_rate_share: ["heart_rate_percent_predicted"],
  plateau: ["plateau"],
  verification: ["verification"],
  lactate_after: ["lactate_highest"],
  statement: ["maximality"],
  uptake: ["vo2_peak"],
  uptake_per_mass: ["vo2_peak_per_mass"],
  work: ["power_peak", "speed_peak", "grade_peak"],
  uptake_on_work: ["vo2_work_slope"],
  threshold: ["vt1_vo2"],
  threshold_share: ["vt1_percent_of_peak"],
  threshold_heart_rate: ["vt1_heart_rate"],
  threshold_work: ["vt1_power", "vt1_speed", "vt1_grade"],
  threshold_methods: ["vt1_methods"],
  second_threshold: ["vt2_vo2"],
  lactate_thresholds: ["lactate_definitions"],
  chronotropic: ["chronotropic_index"],
  recovery: ["heart_rate_recovery_1_min"],
  oxygen_pulse: ["oxygen_pulse_peak"],
  oxygen_pulse_course: ["oxygen_pulse_course"],
  exercise_pressure: ["systolic_pressure_peak", "exercise_pressures"],
  electrocardiogram: ["ecg"],
  uptake_on_heart_rate: ["heart_rate_vo2_slope"],
  ventilation: ["ventilation_peak"],
  breathing_reserve: ["breathing_reserve"],
  breathing_frequency: ["breathing_frequency_peak"],
  ventilation_slope: ["ventilation_vco2_slope"],
  lowest_equivalent: ["ventilation_vco2_lowest"],
  means: ["incremental_bins"],
  saturation: ["saturation_lowest"],
  blood_gases: ["blood_gases"],
  efficiency_slope: ["oxygen_uptake_efficiency_slope"],
  events: ["adverse_signs", "test_events"],
  reporter: ["reported_by"],
};

/** Items an exercise test lacks; nothing when there was no such test. */
export function missingItems(context: Context): Fact[] {
  const { speech, results } = context;
  if (!results.entries.some((entry) => sectionOf(entry) === "incremental")) return [];
  const recorded = recordedNames(context);
  return Object.entries(ITEMS)
    .filter(([, names]) => !names.some((name) => recorded.has(name)))
    .map(([item]) => ({ name: speech.say(`checklist.${item}`), value: speech.say("report.was_not_recorded") }));
}

/** A value that is not given has its reason in the report, so it is there. */
function recordedNames({ results, client }: Context): ReadonlySet<string> {
  const given = (of: object, prefix: string) =>
    Object.entries(of)
      .filter(([, value]) => value !== undefined && value !== "")
      .map(([name]) => `${prefix}${name}`);
  return new Set([
    ...results.entries.map((entry) => entry.id),
    ...given(results.conditions, ""),
    ...given(results.choices, "choices."),
    ...given(client, "client."),
  ]);
}
