/**
 * Predicted basal metabolic rate from body mass by age and sex, Schofield.
 *
 *     BMR = slope·M + intercept        kg; kcal/d
 *
 * The equation FAO/WHO/UNU adopted. Bands include their lower age and exclude their upper one, so the prediction jumps
 * on a birthday. Nearly half of the data are Italian and few come from the tropics, where it reads too high.
 * The kcal form is used; the MJ form was rounded apart and differs by no more than 0.1 kcal/d in adults.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** from, below (years), slope (kcal/d/kg), intercept (kcal/d), standard error of estimate (kcal/d) */
const BANDS = {
  male: [
    [10, 18, 17.686, 658.2, 105],
    [18, 30, 15.057, 692.2, 153],
    [30, 60, 11.472, 873.1, 167],
    [60, 120, 11.711, 587.7, 164],
  ],
  female: [
    [10, 18, 13.384, 692.6, 111],
    [18, 30, 14.818, 486.6, 119],
    [30, 60, 8.126, 845.6, 111],
    [60, 120, 9.082, 658.5, 108],
  ],
} as const;

function band(ageYears: number, sex: "female" | "male") {
  const found = BANDS[sex].find(([from, below]) => ageYears >= from && ageYears < below);
  if (found === undefined) throw new OutOfRange(info.id, "age", ageYears, "10 years and older");
  return found;
}

/** kg, years and sex in, kcal/d out. Throws OutOfRange below 10 years and outside 20 to 250 kg. */
export function schofield(massKg: number, ageYears: number, sex: "female" | "male"): number {
  requireRange(info.id, "body mass", massKg, 20, 250, "kg");
  const [, , slope, intercept] = band(ageYears, sex);
  return slope * massKg + intercept;
}

/** Standard error of estimate of the band, kcal/d. */
export function schofieldError(ageYears: number, sex: "female" | "male"): number {
  return band(ageYears, sex)[4];
}

export const info: FormulaInfo<[number, number, "female" | "male"], number> = {
  id: "schofield",
  revision: 1,
  title: "Predicted basal metabolic rate (Schofield)",
  equation: "slope·M + intercept by sex and age band",
  inputs: {
    M: { unit: "kg", range: "20 to 250" },
    age: { unit: "years", range: "10 and older" },
    sex: { unit: "", range: "female, male" },
  },
  output: { unit: "kcal/d", decimals: 0 },
  caveat: "The prediction jumps at 18, 30 and 60 years.",
  source: {
    authors: "Schofield WN",
    year: 1985,
    title: "Predicting basal metabolic rate, new standards and review of previous work",
    journal: "Hum Nutr Clin Nutr 39C Suppl 1:5–41",
    where: "weight-only equations with their standard errors, as restated in encyclopaedia articles",
    verified: "seen",
  },
  compute: schofield,
  checks: [
    {
      given: [55, 25, "female"],
      expect: 1302,
      tolerance: 2,
      from: "FAO/WHO/UNU Human Energy Requirements (2004), chapter 5: women of 20 to 30 years and 55 kg, 5.45 MJ = 1302 kcal",
    },
    { given: [80, 40, "male"], expect: 1790.86, tolerance: 0.01, from: "by hand: 11.472·80 + 873.1" },
    { given: [60, 40, "female"], expect: 1333.16, tolerance: 0.01, from: "by hand: 8.126·60 + 845.6 = 487.56 + 845.6" },
    { given: [20, 9, "female"], expect: "refused", from: "below 10 years" },
  ],
};
