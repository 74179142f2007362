/**
 * Fat share from body density, two compartments, reference man of Brožek.
 *
 *     %fat = 457 / D − 414.2
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Fat share from density, Brožek: %. Throws OutOfRange outside the ranges in `info`. */
export function fatPercentBrozek(density: number): number {
  requireRange(info.id, "body density", density, 0.98, 1.1, "g/mL");
  return 457 / density - 414.2;
}

export const info: FormulaInfo<[number], number> = {
  id: "fat-percent-brozek",
  revision: 1,
  title: "Fat share from density, Brožek",
  equation: "%fat = 457 / D − 414.2",
  inputs: { "body density": { unit: "g/mL", range: "0.98 to 1.1" } },
  output: { unit: "%", decimals: 1 },
  caveat: "A fat share from skinfolds errs by 3 to 4 percentage points; follow the sum of skinfolds instead.",
  source: {
    authors: "Brožek J, Grande F, Anderson JT, Keys A",
    year: 1963,
    title: "Densitometric analysis of body composition: revision of some quantitative assumptions",
    journal: "Ann N Y Acad Sci 110:113–140",
    doi: "10.1111/j.1749-6632.1963.tb17079.x",
    where: "equation",
    verified: "seen",
  },
  compute: fatPercentBrozek,
  checks: [
    { given: [1.05], expect: 21.04, tolerance: 0.005, from: "by hand: 435.24 − 414.2" },
    { given: [0.9], expect: "refused", from: "pure fat" },
  ],
};
