import type { Catalogue } from "../measure.js";

export const altitudeMeasures = {
  hypoxia_steps: { title: "Steps of the hypoxia test", section: "hypoxia" },
  hypoxia_saturation_fall: {
    title: "Fall in oxygen saturation at the lowest oxygen pressure",
    section: "hypoxia",
    unit: "percentage points",
    decimals: 0,
    rests: ["pulse oximeter"],
  },
  hypoxia_heart_rate_rise: {
    title: "Rise in heart rate at the lowest oxygen pressure",
    section: "hypoxia",
    unit: "1/min",
    decimals: 0,
    rests: ["heart-rate monitor"],
  },
  lake_louise_scores: { title: "Lake Louise scores", section: "hypoxia" },
  goal_altitude: { title: "Altitude of the goal", section: "altitude", unit: "m", decimals: 0 },
  goal_pressure: { title: "Barometric pressure at the goal", section: "altitude", unit: "mmHg", decimals: 0 },
  goal_inspired_oxygen: {
    title: "Inspired oxygen pressure at the goal",
    section: "altitude",
    unit: "mmHg",
    decimals: 0,
  },
  goal_uptake_percent: {
    title: "Peak oxygen uptake to expect at the goal, of that measured here",
    section: "altitude",
    unit: "%",
    decimals: 0,
  },
  goal_uptake_per_mass: {
    title: "Peak oxygen uptake to expect at the goal",
    section: "altitude",
    unit: "mL/kg/min",
    decimals: 1,
  },
  altitude_curve: { title: "Peak oxygen uptake to expect by altitude", section: "altitude" },
  task_demand: {
    title: "Uptake the loaded walk of the goal asks for",
    section: "altitude",
    unit: "mL/kg/min",
    decimals: 1,
  },
  task_share: { title: "Share of the expected peak that the walk takes", section: "altitude", unit: "%", decimals: 0 },
  ascent_schedule: { title: "Nights of the ascent against published limits", section: "altitude" },
  ascent_judgement: { title: "Ascent schedule", section: "altitude" },
  saturation_by_altitude: { title: "Oxygen saturation seen at altitudes", section: "altitude" },
  preacclimatisation: { title: "What trials say of hypoxia before the journey", section: "altitude" },
  altitude_energy: { title: "Energy and load on high journeys", section: "altitude" },
  altitude_caution: { title: "Medical caution for altitude", section: "altitude" },
} as const satisfies Catalogue;
