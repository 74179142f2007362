/**
 * Fat share of men from abdomen (at the navel), neck and stature.
 *
 *     D = 1.0324 − 0.19077·log10(abdomen − neck) + 0.15456·log10(stature)
 *     %fat = 495 / D − 450
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Fat share from girths, men: %. Throws OutOfRange outside the ranges in `info`. */
export function girthFatMen(abdomenCm: number, neckCm: number, statureCm: number, ageYears: number): number {
  requireRange(info.id, "abdomen", abdomenCm, 45, 200, "cm");
  requireRange(info.id, "neck", neckCm, 20, 70, "cm");
  requireRange(info.id, "stature", statureCm, 100, 250, "cm");
  requireRange(info.id, "age", ageYears, 18, 56.999, "years");
  if (abdomenCm - neckCm < 20) throw new OutOfRange(info.id, "abdomen less neck", abdomenCm - neckCm, "20 cm or more");
  const density = 1.0324 - 0.19077 * Math.log10(abdomenCm - neckCm) + 0.15456 * Math.log10(statureCm);
  return 495 / density - 450;
}

export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "girth-fat-men",
  revision: 1,
  title: "Fat share from girths, men",
  equation: "D = 1.0324 − 0.19077·log10(abdomen − neck) + 0.15456·log10(stature); %fat = 495 / D − 450",
  inputs: {
    abdomen: { unit: "cm", range: "45 to 200" },
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
  compute: girthFatMen,
  checks: [
    {
      given: [88, 39, 178, 35],
      expect: 17.96,
      tolerance: 0.01,
      from: "by hand: D = 1.0324 − 0.322439 + 0.347825 = 1.057786",
    },
    {
      given: [88, 39, 178, 35],
      expect: 18.05,
      tolerance: 0.1,
      from: "the inch form in use, 86.010·log10(19.291) − 70.041·log10(70.079) + 36.76",
    },
    { given: [50, 49, 178, 35], expect: "refused", from: "the neck cannot be as wide as the abdomen" },
    { given: [88, 39, 178, 57], expect: "refused", from: "the sample ended at 56 years" },
  ],
};
