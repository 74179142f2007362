/**
 * Strain of a week's training.
 *
 *     strain = weekly load · monotony
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { weeklyMonotony } from "./weekly-monotony.js";

/** Seven daily loads to arbitrary units. Refuses what weekly-monotony refuses. */
export function weeklyStrain(dailyLoads: readonly number[]): number {
  return dailyLoads.reduce((sum, load) => sum + load, 0) * weeklyMonotony(dailyLoads);
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "weekly-strain",
  revision: 1,
  title: "Strain of a training week",
  equation: "strain = weekly load · monotony",
  inputs: { days: { unit: "units", range: "seven daily loads" } },
  output: { unit: "units", decimals: 0 },
  source: {
    authors: "Foster C",
    year: 1998,
    title: "Monitoring training in athletes with reference to overtraining syndrome",
    journal: "Med Sci Sports Exerc 30:1164–1168",
    where: "definition of strain",
    verified: "seen",
  },
  compute: weeklyStrain,
  checks: [
    { given: [[300, 0, 420, 180, 0, 600, 240]], expect: 1988.4, tolerance: 0.05, from: "by hand: 1740 · 1.14276" },
  ],
};
