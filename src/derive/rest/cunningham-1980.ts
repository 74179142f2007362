/**
 * Predicted resting energy expenditure from fat-free mass, Cunningham 1980.
 *
 *     500 + 22·FFM        kg; kcal/d
 *
 * Fat-free mass carries most of the difference between people of one size. As good as the fat-free mass it is given.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Fat-free mass in kg in, kcal/d out. Throws OutOfRange outside 20 to 130 kg. */
export function cunningham1980(fatFreeMassKg: number): number {
  requireRange(info.id, "fat-free mass", fatFreeMassKg, 20, 130, "kg");
  return 500 + 22 * fatFreeMassKg;
}

export const info: FormulaInfo<[number], number> = {
  id: "cunningham-1980",
  revision: 1,
  title: "Predicted resting energy expenditure (Cunningham 1980)",
  equation: "500 + 22·FFM",
  inputs: { FFM: { unit: "kg", range: "20 to 130" } },
  output: { unit: "kcal/d", decimals: 0 },
  caveat: "The two Cunningham equations differ by about 150 kcal/d: the year belongs to the name.",
  source: {
    authors: "Cunningham JJ",
    year: 1980,
    title: "A reanalysis of the factors influencing basal metabolic rate in normal adults",
    journal: "Am J Clin Nutr 33:2372–2374",
    doi: "10.1093/ajcn/33.11.2372",
    where: "equation, as restated with worked numbers in secondary texts",
    verified: "seen",
  },
  compute: cunningham1980,
  checks: [
    { given: [60], expect: 1820, tolerance: 0.001, from: "published calculator page: 60 kg gives 1820 kcal/d" },
    { given: [70], expect: 2040, tolerance: 0.001, from: "published explainer page: 70 kg gives 2040 kcal/d" },
    { given: [150], expect: "refused", from: "beyond 130 kg" },
  ],
};
