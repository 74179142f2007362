/**
 * Predicted resting energy expenditure from fat-free mass, Cunningham 1991.
 *
 *     370 + 21.6·FFM        kg; kcal/d
 *
 * A synthesis of published regressions of resting metabolic rate on fat-free mass.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Fat-free mass in kg in, kcal/d out. Throws OutOfRange outside 20 to 130 kg. */
export function cunningham1991(fatFreeMassKg: number): number {
  requireRange(info.id, "fat-free mass", fatFreeMassKg, 20, 130, "kg");
  return 370 + 21.6 * fatFreeMassKg;
}

export const info: FormulaInfo<[number], number> = {
  id: "cunningham-1991",
  revision: 1,
  title: "Predicted resting energy expenditure (Cunningham 1991)",
  equation: "370 + 21.6·FFM",
  inputs: { FFM: { unit: "kg", range: "20 to 130" } },
  output: { unit: "kcal/d", decimals: 0 },
  caveat: "The two Cunningham equations differ by about 150 kcal/d: the year belongs to the name.",
  source: {
    authors: "Cunningham JJ",
    year: 1991,
    title:
      "Body composition as a determinant of energy expenditure: a synthetic review and a proposed general prediction equation",
    journal: "Am J Clin Nutr 54:963–969",
    doi: "10.1093/ajcn/54.6.963",
    where: "proposed general equation",
    verified: "memory",
  },
  compute: cunningham1991,
  checks: [
    { given: [66], expect: 1795.6, tolerance: 0.001, from: "by hand: 370 + 21.6·66" },
    { given: [19], expect: "refused", from: "below 20 kg" },
  ],
};
