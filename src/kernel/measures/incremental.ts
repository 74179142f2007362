import type { Catalogue } from "../measure.js";

const gas = ["gas analyser", "flow sensor"] as const;
const flow = ["flow sensor"] as const;
const heart = ["heart-rate monitor"] as const;
const ergometer = ["ergometer"] as const;
const section = "incremental" as const;

export const incrementalMeasures = {
  vo2_peak: {
    title: "Peak oxygen uptake",
    section,
    unit: "L/min",
    decimals: 2,
    rests: gas,
    better: "higher",
    plain: {
      name: "Peak oxygen uptake",
      meaning: "The most oxygen your body took up in a minute of the test: the size of your engine.",
    },
  },
  vo2_peak_per_mass: {
    title: "Peak oxygen uptake per kilogram",
    section,
    unit: "mL/kg/min",
    decimals: 1,
    rests: [...gas, "scales"],
    better: "higher",
    plain: {
      name: "Peak oxygen uptake for your mass",
      meaning: "The most oxygen your body took up in a minute, for each kilogram you carry.",
    },
  },
  maximality: { title: "Maximum or peak", section },
  maximality_criteria: { title: "Signs of a maximal effort", section },
  plateau: { title: "Plateau of oxygen uptake", section, rests: [...gas, ...ergometer] },
  verification: { title: "Verification bout", section, rests: gas },
  verification_vo2: {
    title: "Oxygen uptake of the verification bout",
    section,
    unit: "L/min",
    decimals: 2,
    rests: gas,
  },
  vo2_peak_window_effect: { title: "Peak oxygen uptake by averaging window", section, rests: gas },
  vco2_at_peak: { title: "Carbon dioxide output at peak uptake", section, unit: "L/min", decimals: 2, rests: gas },
  rer_peak: { title: "Respiratory exchange ratio at peak uptake", section, unit: "ratio", decimals: 2, rests: gas },
  ventilation_peak: { title: "Ventilation at peak uptake (BTPS)", section, unit: "L/min", decimals: 1, rests: flow },
  breathing_frequency_peak: {
    title: "Breathing frequency at peak uptake",
    section,
    unit: "1/min",
    decimals: 0,
    rests: flow,
  },
  heart_rate_at_peak: { title: "Heart rate at peak uptake", section, unit: "1/min", decimals: 0, rests: heart },
  oxygen_pulse_peak: {
    title: "Oxygen pulse at peak uptake",
    section,
    unit: "mL/beat",
    decimals: 1,
    rests: [...gas, ...heart],
  },
  heart_rate_peak: {
    title: "Highest heart rate",
    section,
    unit: "1/min",
    decimals: 0,
    rests: heart,
    plain: { name: "Highest heart rate", meaning: "The fastest your heart beat during the test." },
  },
  heart_rate_max_predicted: { title: "Maximal heart rate predicted from age", section, unit: "1/min", decimals: 0 },
  heart_rate_percent_predicted: {
    title: "Highest heart rate as a share of the predicted",
    section,
    unit: "%",
    decimals: 0,
    rests: heart,
  },
  power_peak: { title: "Peak power", section, unit: "W", decimals: 0, rests: ergometer, better: "higher" },
  speed_peak: { title: "Peak speed", section, unit: "km/h", decimals: 1, rests: ergometer, better: "higher" },
  grade_peak: { title: "Grade at peak load", section, unit: "%", decimals: 1, rests: ergometer },
  test_duration: { title: "Duration of the incremental phase", section, unit: "min", decimals: 1 },
  stop_reason: { title: "Reason for stopping", section },
  adverse_signs: { title: "Signs and symptoms", section },
  incremental_phases: { title: "Phases of the test", section },
  incremental_stages: { title: "Stage means", section },
  incremental_bins: { title: "Fifteen-second means", section },
  incremental_data: { title: "What was recorded", section },
  incremental_excluded: { title: "Samples left out of the means", section },
} as const satisfies Catalogue;
