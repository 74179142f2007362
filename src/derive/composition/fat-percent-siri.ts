/**
 * Fat share from body density, two compartments.
 *
 *     %fat = 495 / D − 450
 *
 * Takes fat at 0.900 and everything else at 1.100 g/mL; people with dense bone or much water depart from it.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Fat share from density, Siri: %. Throws OutOfRange outside the ranges in `info`. */
export function fatPercentSiri(density: number): number {
  requireRange(info.id, "body density", density, 0.98, 1.1, "g/mL");
  return 495 / density - 450;
}

export const info: FormulaInfo<[number], number> = {
  id: "fat-percent-siri",
  revision: 1,
  title: "Fat share from density, Siri",
  equation: "%fat = 495 / D − 450",
  inputs: { "body density": { unit: "g/mL", range: "0.98 to 1.1" } },
  output: { unit: "%", decimals: 1 },
  caveat: "A fat share from skinfolds errs by 3 to 4 percentage points; follow the sum of skinfolds instead.",
  source: {
    authors: "Siri WE",
    year: 1961,
    title: "Body composition from fluid spaces and density",
    journal: "Techniques for Measuring Body Composition, National Academy of Sciences, 223–244",
    where: "equation",
    verified: "seen",
  },
  compute: fatPercentSiri,
  checks: [
    { given: [1.05], expect: 21.43, tolerance: 0.005, from: "by hand: 471.43 − 450" },
    {
      given: [1.0651225],
      expect: 14.74,
      tolerance: 0.01,
      from: "by hand, after the three-site density of men, S 45, age 40",
    },
    {
      given: [1.0469681],
      expect: 22.79,
      tolerance: 0.01,
      from: "by hand, after the three-site density of women, S 55, age 35",
    },
    {
      given: [1.0624706],
      expect: 15.9,
      tolerance: 0.01,
      from: "by hand, after the seven-site density of men, S 100, age 40",
    },
    {
      given: [1.06185],
      expect: 16.17,
      tolerance: 0.01,
      from: "by hand, after the four-site density of men, S 40, age 25",
    },
    { given: [1.2], expect: "refused", from: "no body is so dense" },
  ],
};
