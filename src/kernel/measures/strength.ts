import type { Catalogue } from "../measure.js";

const kg = { section: "strength", unit: "kg", decimals: 1, better: "higher" } as const;
const hand = { ...kg, rests: ["dynamometer"] } as const;
const count = { section: "strength", unit: "repetitions", decimals: 0, better: "higher" } as const;
const ratio = { section: "strength", unit: "kg/kg", decimals: 2, better: "higher" } as const;
export const strengthMeasures = {
  grip_strength: {
    ...hand,
    title: "Grip strength, better hand",
    plain: { name: "Grip strength", meaning: "How hard you can squeeze with your stronger hand." },
  },
  grip_strength_left: { ...hand, title: "Grip strength, left hand" },
  grip_strength_right: { ...hand, title: "Grip strength, right hand" },
  grip_difference: {
    section: "strength",
    title: "Grip, right less left over the stronger",
    unit: "%",
    decimals: 1,
    rests: ["dynamometer"],
  },
  grip_attempts: { section: "strength", title: "Grip attempts" },
  older_adult_muscle_limits: { section: "strength", title: "Muscle limits for older adults" },
  push_ups: {
    ...count,
    title: "Push-ups",
    plain: { name: "Push-ups", meaning: "How many push-ups you made in a row." },
  },
  push_up_form: { section: "strength", title: "Form of the push-ups" },
  bench_press_1rm: { ...kg, title: "Bench press, one-repetition maximum" },
  bench_press_1rm_estimated: { ...kg, title: "Bench press, estimated one-repetition maximum" },
  bench_press_ratio: { ...ratio, title: "Bench press over body mass" },
  leg_press_1rm: { ...kg, title: "Leg press, one-repetition maximum" },
  leg_press_1rm_estimated: { ...kg, title: "Leg press, estimated one-repetition maximum" },
  leg_press_ratio: { ...ratio, title: "Leg press over body mass" },
  one_repetition_estimates: { section: "strength", title: "Estimates of one-repetition maxima, by equation" },
  pull_ups: { ...count, title: "Pull-ups" },
  jump_height: { section: "strength", title: "Jump height", unit: "cm", decimals: 1, better: "higher" },
  jump_power_sayers: { section: "strength", title: "Estimated peak jump power, Sayers", unit: "W", decimals: 0 },
  jump_power_harman: { section: "strength", title: "Estimated peak jump power, Harman", unit: "W", decimals: 0 },
  jump_mean_power_harman: { section: "strength", title: "Estimated mean jump power, Harman", unit: "W", decimals: 0 },
  mid_thigh_pull_force: {
    section: "strength",
    title: "Isometric mid-thigh pull, peak force",
    unit: "N",
    decimals: 0,
    better: "higher",
  },
  mid_thigh_pull_force_per_mass: {
    section: "strength",
    title: "Isometric mid-thigh pull, peak force over body mass",
    unit: "N/kg",
    decimals: 1,
    better: "higher",
  },
  step_up_vertical_rate: {
    section: "strength",
    title: "Step-up, vertical rate",
    unit: "m/h",
    decimals: 0,
    better: "higher",
    plain: { name: "Climbing rate", meaning: "How many metres you would climb in an hour at this stepping rate." },
  },
  step_up_vertical_metres: { section: "strength", title: "Step-up, metres climbed", unit: "m", decimals: 0 },
  step_up_load: { section: "strength", title: "Step-up, load carried", unit: "kg", decimals: 1 },
  step_up_heart_rate: { section: "strength", title: "Step-up, heart rate at the end", unit: "1/min", decimals: 0 },
  step_up_vo2_estimated: {
    section: "strength",
    title: "Step-up, estimated oxygen cost",
    unit: "mL/kg/min",
    decimals: 1,
  },
} as const satisfies Catalogue;
