/**
 * Share of energy from carbohydrate by the non-protein respiratory quotient (Zuntz and Schumburg's table, Lusk).
 *
 *     kcal per litre of O2 = 4.686 + (RQ − 0.707) / 0.293 · 0.361
 *     carbohydrate, % of energy = 100 · 5.047 · (RQ − 0.707) / 0.293 / (kcal per litre of O2)
 *
 * The share is of energy, not of grams and not of oxygen. Above 1.00 the table has no meaning and is refused.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

// biome-ignore lint/suspicious/noApproximativeNumericConstant: the printed quotient of pure fat, not 1/√2
const FAT_QUOTIENT = 0.707;

export interface FuelMix {
  readonly kcalPerLitre: number;
  /** % of energy. */
  readonly carbohydrateShare: number;
}

/** Respiratory quotient in; kcal per litre of O2 and % of energy out. Throws OutOfRange outside 0.707 to 1.00. */
export function lusk1924(quotient: number): FuelMix {
  requireRange(info.id, "the respiratory quotient", quotient, FAT_QUOTIENT, 1, "");
  const share = (quotient - FAT_QUOTIENT) / (1 - FAT_QUOTIENT);
  const kcalPerLitre = 4.686 + share * 0.361;
  return { kcalPerLitre, carbohydrateShare: (100 * 5.047 * share) / kcalPerLitre };
}

export const info: FormulaInfo<[number], FuelMix> = {
  id: "lusk-1924",
  revision: 1,
  title: "Fuel mix by respiratory quotient (Lusk)",
  equation: "share = 100·5.047·(RQ − 0.707)/0.293 / (4.686 + (RQ − 0.707)/0.293·0.361)",
  inputs: { RQ: { unit: "ratio", range: "0.707 to 1.00" } },
  output: { unit: "%", decimals: 0 },
  caveat: "Protein is left out; the share is of energy.",
  source: {
    authors: "Lusk G",
    year: 1924,
    title: "Animal calorimetry. Twenty-fourth paper. Analysis of the oxidation of mixtures of carbohydrate and fat",
    journal: "J Biol Chem 59:41–42",
    where: "table; the line through its end points gives each row",
    verified: "memory",
  },
  compute: lusk1924,
  checks: [
    {
      given: [0.76],
      pick: (m) => m.kcalPerLitre,
      expect: 4.751,
      tolerance: 0.0006,
      from: "published page on energy expenditure from RQ: 0.76 gives 4.751 kcal/L",
    },
    {
      given: [0.76],
      pick: (m) => 100 - m.carbohydrateShare,
      expect: 81,
      tolerance: 0.5,
      from: "published page on energy expenditure from RQ: almost 81 % from fat",
    },
    {
      given: [0.85],
      pick: (m) => m.carbohydrateShare,
      expect: 50.7,
      tolerance: 0.05,
      from: "table row 0.85, from memory",
    },
    { given: [1.01], expect: "refused", from: "above 1.00" },
  ],
};
