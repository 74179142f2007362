/**
 * Predicted resting energy expenditure, the equation of Harris and Benedict as printed in 1919.
 *
 *     men    66.4730 + 13.7516·M + 5.0033·H − 6.7550·age
 *     women  655.0955 + 9.5634·M + 1.8496·H − 4.6756·age        kg, cm, years; kcal/d
 *
 * From 239 normal people. Mifflin and others found it about 5 % too high in their sample.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** kg, cm, years and sex in, kcal/d out. Throws OutOfRange outside 16 to 70 years and adult sizes. */
export function harrisBenedict1919(
  massKg: number,
  statureCm: number,
  ageYears: number,
  sex: "female" | "male",
): number {
  requireRange(info.id, "body mass", massKg, 30, 250, "kg");
  requireRange(info.id, "stature", statureCm, 130, 225, "cm");
  requireRange(info.id, "age", ageYears, 16, 70, "years");
  return sex === "male"
    ? 66.473 + 13.7516 * massKg + 5.0033 * statureCm - 6.755 * ageYears
    : 655.0955 + 9.5634 * massKg + 1.8496 * statureCm - 4.6756 * ageYears;
}

export const info: FormulaInfo<[number, number, number, "female" | "male"], number> = {
  id: "harris-benedict-1919",
  revision: 1,
  title: "Predicted resting energy expenditure (Harris-Benedict, 1919)",
  equation: "men: 66.4730 + 13.7516·M + 5.0033·H − 6.7550·age · women: 655.0955 + 9.5634·M + 1.8496·H − 4.6756·age",
  inputs: {
    M: { unit: "kg", range: "30 to 250" },
    H: { unit: "cm", range: "130 to 225" },
    age: { unit: "years", range: "16 to 70" },
    sex: { unit: "", range: "female, male" },
  },
  output: { unit: "kcal/d", decimals: 0 },
  source: {
    authors: "Harris JA, Benedict FG",
    year: 1919,
    title: "A Biometric Study of Basal Metabolism in Man",
    journal: "Carnegie Institution of Washington publication 279",
    where: "equations, as restated by a university hospital's nutrition page",
    verified: "seen",
  },
  compute: harrisBenedict1919,
  checks: [
    {
      given: [80, 180, 30, "male"],
      expect: 1864.54,
      tolerance: 0.01,
      from: "by hand: 66.473 + 1100.128 + 900.594 − 202.65",
    },
    {
      given: [60, 165, 30, "female"],
      expect: 1393.82,
      tolerance: 0.01,
      from: "by hand: 655.0955 + 573.804 + 305.184 − 140.268",
    },
    { given: [60, 165, 15, "female"], expect: "refused", from: "below 16 years" },
  ],
};
