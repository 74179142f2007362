/**
 * Appendicular lean mass over body mass index, the index of the FNIH project for people from 65.
 *
 *     ALM / BMI
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Appendicular lean mass over body mass index: m². Throws OutOfRange outside the ranges in `info`. */
export function leanOverBmi(appendicularKg: number, bmi: number): number {
  requireRange(info.id, "appendicular lean mass", appendicularKg, 3, 80, "kg");
  requireRange(info.id, "body mass index", bmi, 10, 90, "kg/m²");
  return appendicularKg / bmi;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "lean-over-bmi",
  revision: 1,
  title: "Appendicular lean mass over body mass index",
  equation: "ALM / BMI",
  inputs: {
    "appendicular lean mass": { unit: "kg", range: "3 to 80" },
    "body mass index": { unit: "kg/m²", range: "10 to 90" },
  },
  output: { unit: "m²", decimals: 3 },
  source: {
    authors: "Studenski SA, Peters KW, Alley DE, et al.",
    year: 2014,
    title: "The FNIH sarcopenia project",
    journal: "J Gerontol A 69(5):547–558",
    doi: "10.1093/gerona/glu010",
    where: "recommended cut-points",
    verified: "seen",
  },
  compute: leanOverBmi,
  checks: [
    { given: [19.725, 25], expect: 0.789, tolerance: 1e-9, from: "by hand: 19.725 / 25, the limit for men" },
    { given: [19.725, 0], expect: "refused", from: "no index" },
  ],
};
