/**
 * Maximal heart rate predicted from age.
 *
 *     HRmax = 208 − 0.7 · age
 *
 * A mean line through many people. It says little of one of them: never use it to call a test maximal or not by itself.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Years in, beats/min out. */
export function tanaka2001(ageYears: number): number {
  requireRange(info.id, "age", ageYears, 18, 90, "years");
  return 208 - 0.7 * ageYears;
}

export const info: FormulaInfo<[number], number> = {
  id: "tanaka-2001",
  revision: 1,
  title: "Maximal heart rate predicted from age (Tanaka 2001)",
  equation: "HRmax = 208 − 0.7 · age",
  inputs: { age: { unit: "years", range: "18 to 90" } },
  output: { unit: "1/min", decimals: 0 },

  caveat:
    "One person in three differs by more than 7 to 11 /min (standard error of such equations, Robergs and Landwehr 2002).",
  source: {
    authors: "Tanaka H, Monahan KD, Seals DR",
    year: 2001,
    title: "Age-predicted maximal heart rate revisited",
    journal: "J Am Coll Cardiol 37:153–156",
    doi: "10.1016/S0735-1097(00)01054-8",
    where: "abstract equation 208 − 0.7 · age",
    verified: "seen",
  },
  compute: tanaka2001,
  checks: [
    { given: [40], expect: 180.0, tolerance: 1e-9, from: "by hand: 208 − 0.7 · 40" },
    { given: [17], expect: "refused", from: "younger than the source's people" },
  ],
};
