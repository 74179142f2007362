/**
 * What `new session --like` carries over: how a visit was measured, never what was found. A list of what is kept, not
 * of what is left out, so that a key added to a schema later is dropped until somebody says that it may be carried.
 * A key kept keeps everything below it; "*" stands for every item or key.
 */
const CARRIED: Readonly<Record<string, readonly string[]>> = {
  choices: ["*"],
  room: ["inspired_gas"],
  size: ["waist_site", "clothing", "scales", "stadiometer"],
  blood_pressure: ["method", "device", "arm", "cuff", "posture", "rest_min"],
  rest: ["instrument", "posture", "collection", "behaviour", "gas_temperature_c"],
  heart_rate_variability: ["instrument", "posture", "breathing", "recorder"],
  dxa: ["scanner_maker", "scanner", "mode", "software", "positioning", "precision"],
  skinfolds: ["caliper", "side", "measurer"],
  girths: [],
  impedance: ["device", "posture"],
  lungs: ["spirometer", "volumes_at", "posture", "nose_clip"],
  strength: [
    "grip.dominant",
    "grip.device",
    "grip.device_type",
    "grip.posture",
    "grip.handle_position",
    "push_ups.form",
    "push_ups.time_limit_s",
    "bench_press.machine",
    "bench_press.spotter",
    "leg_press.machine",
    "leg_press.spotter",
    "pull_ups.hold",
    "jump.method",
    "jump.type",
    "jump.arms",
    "jump.device",
    "mid_thigh_pull.force",
    "mid_thigh_pull.sampling_hz",
    "step_up.step_height_cm",
    "step_up.cycles_per_min",
    "step_up.duration_min",
    "step_up.load_kg",
  ],
  mobility: ["sit_and_reach.zero_cm", "single_leg_stance.eyes", "single_leg_stance.ceiling_s"],
  field_tests: ["six_minute_walk.corridor_m", "treadmill_time.protocol", "loaded_walk.load_kg", "loaded_walk.terrain"],
  submaximal: ["cycle_stages.cadence_rpm", "cycle_single.cadence_rpm"],
  incremental: [
    "mode",
    "ergometer",
    "instrument",
    "protocol",
    "rpe_at_end.scale",
    "heart_rate_source",
    "verification.rest_before_s",
    "recovery.posture",
    "handrail",
    "encouraged",
    "interface",
  ],
  lactate: ["instrument", "mode", "site", "step_duration_s", "analyser_floor_mmol_l", "grade_pct"],
  critical_power: ["mode"],
  hypoxia: ["method", "supervision"],
};

/** Blocks that are asked or done anew each time: named in the new file, with nothing carried into them. */
export const ANEW: readonly string[] = ["screening", "preparation", "calibration", "training_log"];

/** True where the key at `path` inside `block` is kept whole. */
export const isCarried = (block: string, path: readonly string[]): boolean =>
  (CARRIED[block] ?? []).some((kept) => {
    const steps = kept.split(".");
    return steps.length <= path.length && steps.every((step, i) => step === "*" || step === path[i]);
  });
