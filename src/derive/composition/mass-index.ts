/**
 * A mass of a body part over squared stature: fat mass index, fat-free mass index, lean mass index, appendicular index.
 *
 *     index = mass / stature²
 *
 * The measure's name says which mass: fat-free is lean with bone, lean is without. The two differ by about 1 kg/m² and
 * have different reference tables.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Mass over squared stature: kg/m². Throws OutOfRange outside the ranges in `info`. */
export function massIndex(massKg: number, statureCm: number): number {
  requireRange(info.id, "mass", massKg, 0.5, 200, "kg");
  requireRange(info.id, "stature", statureCm, 100, 250, "cm");
  return massKg / (statureCm / 100) ** 2;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "mass-index",
  revision: 1,
  title: "Mass over squared stature",
  equation: "mass / stature²",
  inputs: { mass: { unit: "kg", range: "0.5 to 200" }, stature: { unit: "cm", range: "100 to 250" } },
  output: { unit: "kg/m²", decimals: 1 },
  source: {
    authors: "VanItallie TB, Yang MU, Heymsfield SB, Funk RC, Boileau RA",
    year: 1990,
    title: "Height-normalized indices of the body's fat-free mass and fat mass",
    journal: "Am J Clin Nutr 52(6):953–959",
    where: "definition of FFMI and FMI",
    verified: "memory",
  },
  compute: massIndex,
  checks: [
    { given: [66, 175], expect: 21.551, tolerance: 0.001, from: "by hand: 66 / 3.0625" },
    { given: [66, 17.5], expect: "refused", from: "a stature in decimetres" },
  ],
};
