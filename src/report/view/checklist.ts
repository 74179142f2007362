/**
 * What a report of an exercise test with gas exchange has to hold, after the statements of the societies (ATS/ACCP 2003;
 * Radtke and others 2019, outcome table; the list as a whole from memory). Each item is in the report or in the list of
 * what was not recorded; it counts as recorded when a result or a condition of the visit has one of its names.
 */
import { type Context, sectionOf } from "./context.js";
import type { Fact } from "./types.js";

const ITEMS: Readonly<Record<string, readonly string[]>> = {
  medication: ["medication"],
  time_of_day: ["start_time"],
  food: ["food"],
  caffeine: ["caffeine"],
  mode: ["mode"],
  protocol: ["protocol"],
  gas_analyser: ["gas_analyser"],
  resting_pressure: ["systolic_pressure"],
  spirometry: ["fev1"],
  duration: ["test_duration"],
  stop_reason: ["stop_reason"],
  exertion: ["end_exertion", "vt1_rpe"],
  uptake: ["vo2_peak"],
  work: ["power_peak", "speed_peak", "grade_peak"],
  exchange_ratio: ["rer_peak"],
  heart_rate: ["heart_rate_peak"],
  oxygen_pulse: ["oxygen_pulse_peak"],
  plateau: ["plateau"],
  verification: ["verification"],
  threshold: ["vt1_vo2"],
  ventilation_slope: ["ventilation_vco2_slope"],
  ventilation: ["ventilation_peak"],
  breathing_reserve: ["breathing_reserve"],
  saturation: ["spo2_peak", "spo2_lowest", "saturation_lowest"],
  recovery: ["heart_rate_recovery_1_min"],
};

/** Items an exercise test lacks; nothing when there was no such test. */
export function missingItems(context: Context): Fact[] {
  const { speech, results, client } = context;
  if (!results.entries.some((entry) => sectionOf(entry) === "incremental")) return [];
  const recorded = new Set([...results.entries.map((entry) => entry.id), ...Object.keys(results.conditions)]);
  if (client.medication !== undefined) recorded.add("medication");
  return Object.entries(ITEMS)
    .filter(([, names]) => !names.some((name) => recorded.has(name)))
    .map(([item]) => ({ name: speech.say(`checklist.${item}`), value: speech.say("report.was_not_recorded") }));
}
