import type { Catalogue } from "../measure.js";

const section = "lactate" as const;
const analyser = ["lactate analyser"] as const;
const plainWork = {
  name: "Lactate threshold",
  meaning: "The effort above which lactate builds up in your blood and exercise becomes hard to hold.",
};

export const lactateMeasures = {
  lactate_steps: { title: "Step test with blood lactate", section, rests: analyser },
  lactate_definitions: { title: "Lactate thresholds by definition", section, rests: [...analyser, "ergometer"] },
  lactate_definition_spread: {
    title: "Spread between the definitions, as a share of their middle",
    section,
    unit: "%",
    decimals: 0,
    rests: [...analyser, "ergometer"],
  },
  lactate_threshold_power: {
    title: "Power at the lactate threshold",
    section,
    unit: "W",
    decimals: 0,
    rests: [...analyser, "ergometer"],
    better: "higher",
    plain: plainWork,
  },
  lactate_threshold_speed: {
    title: "Speed at the lactate threshold",
    section,
    unit: "km/h",
    decimals: 1,
    rests: [...analyser, "ergometer"],
    better: "higher",
    plain: plainWork,
  },
  lactate_threshold_lactate: {
    title: "Lactate at the lactate threshold",
    section,
    unit: "mmol/L",
    decimals: 1,
    rests: analyser,
  },
  lactate_threshold_heart_rate: {
    title: "Heart rate at the lactate threshold",
    section,
    unit: "1/min",
    decimals: 0,
    rests: [...analyser, "heart-rate monitor"],
  },
  lactate_threshold_vo2: {
    title: "Oxygen uptake at the lactate threshold",
    section,
    unit: "L/min",
    decimals: 2,
    rests: [...analyser, "gas analyser", "flow sensor"],
    better: "higher",
  },
  lactate_threshold_rpe: {
    title: "Perceived exertion at the lactate threshold",
    section,
    unit: "6-20",
    decimals: 0,
    rests: analyser,
  },
  lactate_highest: { title: "Highest lactate of the step test", section, unit: "mmol/L", decimals: 1, rests: analyser },
} as const satisfies Catalogue;
