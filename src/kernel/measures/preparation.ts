import type { Catalogue } from "../measure.js";

export const preparationMeasures = {
  biological_controls: { title: "Biological controls of the instruments", section: "preparation" },
  biological_control_trends: { title: "Trend of the biological controls", section: "preparation" },
  resting_conditions: { title: "Conditions before the resting measurement", section: "preparation" },
  resting_conditions_met: { title: "Were the conditions for a resting measurement met", section: "preparation" },
} as const satisfies Catalogue;
