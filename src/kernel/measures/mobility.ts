import type { Catalogue } from "../measure.js";

const stance = { section: "mobility", unit: "s", decimals: 1, better: "higher" } as const;
const composite = { section: "mobility", unit: "% limb length", decimals: 1, better: "higher" } as const;
export const mobilityMeasures = {
  sit_and_reach: {
    section: "mobility",
    title: "Sit-and-reach, on the scale with 26 cm at the feet",
    unit: "cm",
    decimals: 1,
    better: "higher",
    plain: {
      name: "Sit-and-reach",
      meaning: "How far you reach forward with straight knees; 26 cm is level with your soles.",
    },
  },
  single_leg_stance_left: { ...stance, title: "Single-leg stance, left, mean of trials" },
  single_leg_stance_right: { ...stance, title: "Single-leg stance, right, mean of trials" },
  single_leg_stance_best: { ...stance, title: "Single-leg stance, best trial of either leg" },
  single_leg_stance_conditions: { section: "mobility", title: "Conditions of the single-leg stance" },
  reach_asymmetry_anterior: {
    section: "mobility",
    title: "Forward reach, difference between legs",
    unit: "cm",
    decimals: 1,
  },
  reach_composite_left: { ...composite, title: "Composite reach, standing on the left leg" },
  reach_composite_right: { ...composite, title: "Composite reach, standing on the right leg" },
  reach_trials: { section: "mobility", title: "Reach by direction" },
} as const satisfies Catalogue;
