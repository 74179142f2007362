/**
 * Fat share of women from waist (narrowest), hip, neck and stature.
 *
 *     D = 1.29579 − 0.35004·log10(waist + hip − neck) + 0.22100·log10(stature)
 *     %fat = 495 / D − 450
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Fat share from girths, women: %. Throws OutOfRange outside the ranges in `info`. */
export function girthFatWomen(
  waistCm: number,
  hipCm: number,
  neckCm: number,
  statureCm: number,
  ageYears: number,
): number {
  requireRange(info.id, "waist", waistCm, 40, 200, "cm");
  requireRange(info.id, "hip", hipCm, 60, 220, "cm");
  requireRange(info.id, "neck", neckCm, 20, 70, "cm");
  requireRange(info.id, "stature", statureCm, 100, 250, "cm");
  requireRange(info.id, "age", ageYears, 18, 56.999, "years");
  const density = 1.29579 - 0.35004 * Math.log10(waistCm + hipCm - neckCm) + 0.221 * Math.log10(statureCm);
  return 495 / density - 450;
}

export const info: FormulaInfo<[number, number, number, number, number], number> = {
  id: "girth-fat-women",
  revision: 1,
  title: "Fat share from girths, women",
  equation: "D = 1.29579 − 0.35004·log10(waist + hip − neck) + 0.22100·log10(stature); %fat = 495 / D − 450",
  inputs: {
    waist: { unit: "cm", range: "40 to 200" },
    hip: { unit: "cm", range: "60 to 220" },
    neck: { unit: "cm", range: "20 to 70" },
    stature: { unit: "cm", range: "100 to 250" },
    age: { unit: "years", range: "18 to 56.999" },
  },
  output: { unit: "%", decimals: 1 },
  see: 3.6,
  caveat: "Against DXA it was off by about 2.5 points in fit people, with a spread of 4 to 5.",
  source: {
    authors: "Hodgdon JA, Beckett MB",
    year: 1984,
    title:
      "Prediction of percent body fat for U.S. Navy men (Report 84-11) and women (Report 84-29) from body circumferences and height",
    journal: "Naval Health Research Center",
    where: "equations",
    verified: "seen",
  },
  compute: girthFatWomen,
  checks: [
    {
      given: [75, 100, 33, 168, 30],
      expect: 28.63,
      tolerance: 0.01,
      from: "by hand: D = 1.29579 − 0.753387 + 0.491793 = 1.034196",
    },
    {
      given: [75, 100, 33, 168, 30],
      expect: 28.97,
      tolerance: 0.4,
      from: "the inch form in use, 163.205·log10(55.906) − 97.684·log10(66.142) − 78.387; the forms differ by some tenths",
    },
    { given: [75, 100, 33, 168, 17], expect: "refused", from: "the sample began at 18 years" },
  ],
};
