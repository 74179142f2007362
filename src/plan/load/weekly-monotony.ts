/**
 * Monotony of a week's training: how alike its days are.
 *
 *     monotony = mean daily load / SD of daily load      seven days, a rest day counts 0; SD with n − 1
 *
 * The sources do not say whether the SD divides by n or n − 1; this program uses n − 1 and says so.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { mean, sampleSd } from "../../kernel/statistics.js";

/** Seven daily loads to a ratio. Throws OutOfRange when all days are alike (the ratio has no value). */
export function weeklyMonotony(dailyLoads: readonly number[]): number {
  if (dailyLoads.length !== 7) throw new OutOfRange(info.id, "days", dailyLoads.length, "seven days");
  const sd = sampleSd(dailyLoads);
  if (sd === 0) throw new OutOfRange(info.id, "spread of daily loads", 0, "days that differ");
  return mean(dailyLoads) / sd;
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "weekly-monotony",
  revision: 1,
  title: "Monotony of a training week",
  equation: "monotony = mean daily load / SD of daily load (n − 1)",
  inputs: { days: { unit: "units", range: "seven daily loads" } },
  output: { unit: "ratio", decimals: 2 },
  source: {
    authors: "Foster C",
    year: 1998,
    title: "Monitoring training in athletes with reference to overtraining syndrome",
    journal: "Med Sci Sports Exerc 30:1164–1168",
    where: "definition of monotony",
    verified: "seen",
  },
  compute: weeklyMonotony,
  checks: [
    {
      given: [[300, 0, 420, 180, 0, 600, 240]],
      expect: 1.14276,
      tolerance: 0.00001,
      from: "by hand: mean 248.571, SD 217.518",
    },
    { given: [[100, 100, 100, 100, 100, 100, 100]], expect: "refused", from: "no spread" },
  ],
};
