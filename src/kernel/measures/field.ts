import type { Catalogue, MeasureInfo } from "../measure.js";

const field = (test: string) =>
  ({ section: "field", title: `Estimated peak uptake, ${test}`, unit: "mL/kg/min", decimals: 1 }) satisfies MeasureInfo;
const submaximal = (test: string) =>
  ({
    section: "submaximal",
    title: `Estimated peak uptake, ${test}`,
    unit: "mL/kg/min",
    decimals: 1,
  }) satisfies MeasureInfo;
export const fieldMeasures = {
  vo2max_estimate_mile_walk: field("one-mile walk"),
  vo2max_estimate_two_km_walk: field("two-kilometre walk"),
  six_minute_walk_distance: {
    section: "field",
    title: "Six-minute walk",
    unit: "m",
    decimals: 0,
    better: "higher",
    plain: { name: "Six-minute walk", meaning: "How far you walked in six minutes." },
  },
  six_minute_walk_reference: { section: "field", title: "Six-minute walk, reference distance", unit: "m", decimals: 0 },
  six_minute_walk_percent: {
    section: "field",
    title: "Six-minute walk, share of the reference",
    unit: "%",
    decimals: 0,
  },
  vo2max_estimate_twelve_minute_run: field("twelve-minute run"),
  vo2max_estimate_mile_and_half_run: field("run of one and a half miles"),
  vo2max_estimate_mile_jog: field("one-mile jog"),
  vo2max_estimate_shuttle_run: field("20-m shuttle run, Léger"),
  vo2max_estimate_shuttle_run_half_stage: field("20-m shuttle run, Stickland"),
  vo2max_estimate_bruce_time: field("Bruce treadmill time, 1973"),
  vo2max_estimate_bruce_time_by_sex: field("Bruce treadmill time, Foster (men) or Pollock (women)"),
  vo2max_estimate_balke_time: field("Balke treadmill time"),
  loaded_walk_metabolic_rate: {
    section: "field",
    title: "Loaded walk, estimated metabolic rate",
    unit: "W",
    decimals: 0,
  },
  treadmill_walk_uptake: {
    section: "submaximal",
    title: "Estimated uptake of the walk",
    unit: "mL/kg/min",
    decimals: 1,
  },
  treadmill_jog_uptake: { section: "submaximal", title: "Estimated uptake of the jog", unit: "mL/kg/min", decimals: 1 },
  vo2max_estimate_treadmill_walk: submaximal("one-stage treadmill walk"),
  vo2max_estimate_treadmill_jog: submaximal("one-stage treadmill jog"),
  vo2max_estimate_treadmill_questionnaire: submaximal("treadmill stage with questionnaires"),
  cycle_power_at_maximal_heart_rate: {
    section: "submaximal",
    title: "Cycle power extrapolated to predicted maximal heart rate",
    unit: "W",
    decimals: 0,
  },
  vo2max_estimate_cycle_stages: submaximal("cycle stages"),
  cycle_single_uptake: {
    section: "submaximal",
    title: "Estimated uptake at the cycle load",
    unit: "mL/kg/min",
    decimals: 1,
  },
  vo2max_estimate_cycle_single: submaximal("one cycle load"),
  vo2max_estimate_cycle_power: {
    section: "submaximal",
    title: "Estimated peak uptake, highest cycle power, Storer",
    unit: "mL/min",
    decimals: 0,
  },
  vo2max_estimate_cycle_power_per_mass: submaximal("highest cycle power over body mass, Storer"),
  vo2max_estimate_cycle_peak: submaximal("highest cycle power, Kokkinos"),
  vo2max_estimate_treadmill_peak: submaximal("highest speed and grade, Kokkinos"),
  submaximal_stages: { section: "submaximal", title: "Stages of the submaximal test" },
} as const satisfies Catalogue;
