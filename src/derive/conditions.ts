/**
 * The facts of a visit that decide whether it may be compared with another: who measured with what, how, and in what
 * state the client came. Written into the results, so that comparing needs the results alone.
 *
 * What was not recorded is absent. Hours before the visit become the words "kept" or "not kept" against usual limits
 * (food 3 h, caffeine 6 h, alcohol and hard exercise 24 h: common practice), because an hour more or less is no difference.
 */
import type { Visit } from "../kernel/visit.js";

type Block = Readonly<Record<string, unknown>>;
/** Key path in session.yaml of each condition that is copied as it stands. tests/derive/conditions.test.ts finds each in the schema. */
export const COPIED: Readonly<Record<string, string>> = {
  start_time: "start_time",
  mode: "incremental.mode",
  ergometer: "incremental.ergometer",
  stage_length_s: "incremental.protocol.stage_length_s",
  gas_analyser: "incremental.instrument",
  handrail: "incremental.handrail",
  familiarised: "incremental.familiarised",
  critical_mode: "critical_power.mode",
  lactate_mode: "lactate.mode",
  lactate_step_s: "lactate.step_duration_s",
  lactate_site: "lactate.site",
  lactate_analyser: "lactate.instrument",
  pressure_mmhg: "room.pressure_mmhg",
  rest_analyser: "rest.instrument",
  rest_collection: "rest.collection",
  rest_posture: "rest.posture",
  pressure_method: "blood_pressure.method",
  pressure_device: "blood_pressure.device",
  pressure_posture: "blood_pressure.posture",
  dxa_scanner: "dxa.scanner",
  dxa_software: "dxa.software",
  dxa_positioning: "dxa.positioning",
  scales: "size.scales",
  dynamometer: "strength.grip.device",
  grip_posture: "strength.grip.posture",
  spirometer: "lungs.spirometer",
  lungs_posture: "lungs.posture",
  bronchodilator: "lungs.bronchodilator",
  push_up_form: "strength.push_ups.form",
  bench_press_machine: "strength.bench_press.machine",
  leg_press_machine: "strength.leg_press.machine",
  pull_up_hold: "strength.pull_ups.hold",
  jump_method: "strength.jump.method",
  jump_type: "strength.jump.type",
  jump_arms: "strength.jump.arms",
  pull_force: "strength.mid_thigh_pull.force",
  knee_degrees: "strength.mid_thigh_pull.knee_degrees",
  step_height_cm: "strength.step_up.step_height_cm",
  reach_zero_cm: "mobility.sit_and_reach.zero_cm",
  stance_eyes: "mobility.single_leg_stance.eyes",
  caliper: "skinfolds.caliper",
  measurer: "skinfolds.measurer",
  impedance_device: "impedance.device",
  corridor_m: "field_tests.six_minute_walk.corridor_m",
  hrv_posture: "heart_rate_variability.posture",
  hrv_breathing: "heart_rate_variability.breathing",
  recovery_posture: "incremental.recovery.posture",
  illness: "preparation.illness",
};

/** Hours that must have passed, by condition: key path, limit in hours. */
export const HOURS: Readonly<Record<string, readonly [path: string, hours: number]>> = {
  food: ["preparation.hours_since_food", 3],
  caffeine: ["preparation.hours_since_caffeine", 6],
  alcohol: ["preparation.hours_since_alcohol", 24],
  exercise: ["preparation.hours_since_hard_exercise", 24],
};

/** Conditions by name, in the order above; every value a non-empty text. */
export function comparisonConditions(visit: Visit): Readonly<Record<string, string>> {
  const session = visit.session as unknown as Block;
  const out: Record<string, string> = {};
  const put = (name: string, value: unknown) => {
    if (value !== undefined && value !== null && String(value) !== "") out[name] = String(value);
  };
  for (const [name, path] of Object.entries(COPIED)) put(name, at(session, path));
  if (out.dxa_scanner === undefined) put("dxa_scanner", at(session, "dxa.scanner_maker"));
  const fasted = at(session, "dxa.fasted");
  put("dxa_fasted", typeof fasted === "boolean" ? (fasted ? "fasted" : "not fasted") : undefined);
  put("protocol", protocolOf(at(session, "incremental.protocol")));
  put("critical_bouts", boutsOf(at(session, "critical_power.bouts")));
  put("inspired_oxygen", inspired(at(session, "room.inspired_gas"), at(session, "room.fio2")));
  put("stop", stopOf(at(session, "incremental.stop.reason")));
  const exertion = at(session, "incremental.rpe_at_end.overall");
  if (typeof exertion === "number")
    put("end_exertion", `${exertion} of ${String(at(session, "incremental.rpe_at_end.scale") ?? "6-20")}`);
  for (const [name, [path, limit]] of Object.entries(HOURS)) {
    const hours = at(session, path);
    if (typeof hours === "number") put(name, hours >= limit ? `none for ${limit} h` : `within ${limit} h`);
  }
  if (at(session, "size.mass_kg") !== undefined) put("body_mass_basis", "weighed at this visit");
  put("medication", medicationOf(at(session, "preparation.medication_today") ?? visit.client.medication));
  return out;
}

function at(block: Block, path: string): unknown {
  let node: unknown = block;
  for (const key of path.split(".")) {
    if (typeof node !== "object" || node === null) return undefined;
    node = (node as Block)[key];
  }
  return node;
}

/** The protocol's name; without one, what it did: "ramp, 25 W/min from 50 W". */
function protocolOf(protocol: unknown): string | undefined {
  if (typeof protocol !== "object" || protocol === null) return undefined;
  const { name, confirmed, stages, ...rest } = protocol as Block;
  if (typeof name === "string") return name;
  const facts = Object.entries(rest).map(([key, value]) => `${key} ${String(value)}`);
  return facts.length > 0 ? facts.join(", ") : undefined;
}

const TO_THE_LIMIT = ["exhaustion", "legs", "breathlessness", "cadence"];
/** Whether the client went on until they could not, or the test ended for another reason. */
const stopOf = (reason: unknown): string | undefined =>
  typeof reason !== "string"
    ? undefined
    : TO_THE_LIMIT.includes(reason)
      ? "to the limit"
      : `before the limit: ${reason}`;

const inspired = (gas: unknown, fio2: unknown): string | undefined =>
  gas === "stated"
    ? typeof fio2 === "number"
      ? `O2 fraction ${fio2}`
      : undefined
    : typeof gas === "string"
      ? gas
      : undefined;

function medicationOf(classes: unknown): string | undefined {
  if (!Array.isArray(classes)) return undefined;
  const listed = classes.map(String).filter((name) => name !== "none");
  return listed.length === 0 ? "none" : listed.sort().join(", ");
}

/** "3 at constant power", or the distances: bouts of other lengths move critical power and what is left above it. */
function boutsOf(bouts: unknown): string | undefined {
  if (!Array.isArray(bouts)) return undefined;
  const distances = (bouts as Block[]).map((bout) => bout.distance_m);
  return distances.every((distance) => typeof distance === "number")
    ? `${[...(distances as number[])].sort((a, b) => a - b).join(", ")} m`
    : `${bouts.length} at constant power`;
}
