import type { Catalogue } from "../measure.js";

const gas = ["gas analyser", "flow sensor"] as const;
const flow = ["flow sensor"] as const;
const section = "rest" as const;

export const restMeasures = {
  rest_trace: { title: "Resting measurement, minute means", section, rests: gas },
  rest_window: { title: "Steady window at rest", section, rests: gas },
  resting_vo2: { title: "Resting oxygen uptake", section, unit: "mL/min", decimals: 0, rests: gas },
  resting_vo2_per_mass: {
    title: "Resting oxygen uptake per kilogram",
    section,
    unit: "mL/kg/min",
    decimals: 2,
    rests: [...gas, "scales"],
  },
  resting_vco2: { title: "Resting carbon dioxide output", section, unit: "mL/min", decimals: 0, rests: gas },
  resting_rer: { title: "Resting respiratory exchange ratio", section, unit: "ratio", decimals: 2, rests: gas },
  resting_rer_band: { title: "Plausibility of the resting ratio", section, rests: gas },
  resting_ventilation: { title: "Resting ventilation (BTPS)", section, unit: "L/min", decimals: 1, rests: flow },
  resting_tidal_volume: { title: "Resting tidal volume (BTPS)", section, unit: "L", decimals: 2, rests: flow },
  resting_breathing_frequency: { title: "Resting breathing frequency", section, unit: "1/min", decimals: 1 },
  resting_heart_rate: {
    title: "Resting heart rate",
    section,
    unit: "1/min",
    decimals: 0,
    rests: ["heart-rate monitor"],
    loinc: "40443-4",
  },
  resting_energy_expenditure: {
    title: "Resting energy expenditure",
    section,
    unit: "kcal/d",
    decimals: 0,
    rests: gas,
    plain: {
      name: "Energy you use at rest",
      meaning: "What your body uses in a day of lying still, before any activity.",
    },
  },
  resting_energy_predicted: { title: "Resting energy expenditure, predicted", section, unit: "kcal/d", decimals: 0 },
  resting_energy_percent_predicted: {
    title: "Resting energy expenditure, measured as a share of predicted",
    section,
    unit: "%",
    decimals: 0,
    rests: gas,
  },
  resting_energy_predictions: { title: "Predictions of resting energy expenditure", section },
  resting_fat_oxidation: { title: "Fat oxidation at rest", section, unit: "g/min", decimals: 3, rests: gas },
  resting_carbohydrate_oxidation: {
    title: "Carbohydrate oxidation at rest",
    section,
    unit: "g/min",
    decimals: 3,
    rests: gas,
  },
  resting_carbohydrate_share: {
    title: "Share of energy from carbohydrate at rest",
    section,
    unit: "%",
    decimals: 0,
    rests: gas,
  },
} as const satisfies Catalogue;
