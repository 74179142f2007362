import type { Catalogue } from "../measure.js";

const section = "thresholds" as const;
const gas = ["gas analyser", "flow sensor"] as const;
const withHeart = [...gas, "heart-rate monitor"] as const;
const withLoad = [...gas, "ergometer"] as const;
const first = {
  name: "First threshold",
  meaning: "The effort up to which you can talk in whole sentences and go on for hours.",
};
const second = {
  name: "Second threshold",
  meaning: "The effort above which breathing runs away and you must stop within minutes.",
};

export const thresholdMeasures = {
  vt1_vo2: {
    title: "Oxygen uptake at the first ventilatory threshold",
    section,
    unit: "L/min",
    decimals: 2,
    rests: gas,
    better: "higher",
  },
  vt1_vo2_per_mass: {
    title: "Oxygen uptake per kilogram at the first ventilatory threshold",
    section,
    unit: "mL/kg/min",
    decimals: 1,
    rests: [...gas, "scales"],
    better: "higher",
  },
  vt1_percent_of_peak: {
    title: "First ventilatory threshold as a share of peak oxygen uptake",
    section,
    unit: "%",
    decimals: 0,
    rests: gas,
  },
  vt1_time: {
    title: "Time into the incremental phase at the first ventilatory threshold",
    section,
    unit: "s",
    decimals: 0,
    rests: gas,
  },
  vt1_heart_rate: {
    title: "Heart rate at the first ventilatory threshold",
    section,
    unit: "1/min",
    decimals: 0,
    rests: withHeart,
    plain: first,
  },
  vt1_speed: {
    title: "Speed at the first ventilatory threshold",
    section,
    unit: "km/h",
    decimals: 1,
    rests: withLoad,
    better: "higher",
    plain: first,
  },
  vt1_grade: { title: "Grade at the first ventilatory threshold", section, unit: "%", decimals: 1, rests: withLoad },
  vt1_power: {
    title: "Power at the first ventilatory threshold",
    section,
    unit: "W",
    decimals: 0,
    rests: withLoad,
    better: "higher",
    plain: first,
  },
  vt1_rpe: {
    title: "Perceived exertion at the first ventilatory threshold",
    section,
    unit: "6-20",
    decimals: 0,
    rests: gas,
  },
  vt1_methods: { title: "First ventilatory threshold by method", section, rests: gas },
  v_slope_lines: { title: "Lines of the V-slope plot", section, rests: gas },
  vt2_vo2: {
    title: "Oxygen uptake at the second ventilatory threshold",
    section,
    unit: "L/min",
    decimals: 2,
    rests: gas,
    better: "higher",
  },
  vt2_vo2_per_mass: {
    title: "Oxygen uptake per kilogram at the second ventilatory threshold",
    section,
    unit: "mL/kg/min",
    decimals: 1,
    rests: [...gas, "scales"],
    better: "higher",
  },
  vt2_percent_of_peak: {
    title: "Second ventilatory threshold as a share of peak oxygen uptake",
    section,
    unit: "%",
    decimals: 0,
    rests: gas,
  },
  vt2_time: {
    title: "Time into the incremental phase at the second ventilatory threshold",
    section,
    unit: "s",
    decimals: 0,
    rests: gas,
  },
  vt2_heart_rate: {
    title: "Heart rate at the second ventilatory threshold",
    section,
    unit: "1/min",
    decimals: 0,
    rests: withHeart,
    plain: second,
  },
  vt2_speed: {
    title: "Speed at the second ventilatory threshold",
    section,
    unit: "km/h",
    decimals: 1,
    rests: withLoad,
    better: "higher",
    plain: second,
  },
  vt2_grade: { title: "Grade at the second ventilatory threshold", section, unit: "%", decimals: 1, rests: withLoad },
  vt2_power: {
    title: "Power at the second ventilatory threshold",
    section,
    unit: "W",
    decimals: 0,
    rests: withLoad,
    better: "higher",
    plain: second,
  },
  vt2_rpe: {
    title: "Perceived exertion at the second ventilatory threshold",
    section,
    unit: "6-20",
    decimals: 0,
    rests: gas,
  },
  vt2_methods: { title: "Second ventilatory threshold by method", section, rests: gas },
  threshold_readings: { title: "Thresholds computed and read by eye", section, rests: gas },
} as const satisfies Catalogue;
