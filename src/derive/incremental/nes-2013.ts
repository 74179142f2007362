/**
 * Maximal heart rate predicted from age.
 *
 *     HRmax = 211 − 0.64 · age
 *
 * A mean line through many people. It says little of one of them: never use it to call a test maximal or not by itself.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Years in, beats/min out. */
export function nes2013(ageYears: number): number {
  requireRange(info.id, "age", ageYears, 19, 89, "years");
  return 211 - 0.64 * ageYears;
}

export const info: FormulaInfo<[number], number> = {
  id: "nes-2013",
  revision: 1,
  title: "Maximal heart rate predicted from age (Nes 2013)",
  equation: "HRmax = 211 − 0.64 · age",
  inputs: { age: { unit: "years", range: "19 to 89" } },
  output: { unit: "1/min", decimals: 0 },
  see: 10.8,
  caveat: "One healthy person in six lies more than 10.8 /min below the line.",
  source: {
    authors: "Nes BM, Janszky I, Wisløff U, Støylen A, Karlsen T",
    year: 2013,
    title: "Age-predicted maximal heart rate in healthy subjects: the HUNT fitness study",
    journal: "Scand J Med Sci Sports 23(6):697–704",
    doi: "10.1111/j.1600-0838.2012.01445.x",
    where: "equation 211 − 0.64 · age, standard error 10.8 /min; 3320 people",
    verified: "seen",
  },
  compute: nes2013,
  checks: [
    { given: [40], expect: 185.4, tolerance: 1e-9, from: "by hand: 211 − 0.64 · 40" },
    { given: [18], expect: "refused", from: "younger than the source's people" },
  ],
};
