/**
 * Predicted slope of ventilation on carbon dioxide output, Habedank.
 *
 *     men    0.13·age + 19.9
 *     women  0.12·age + 24.4
 *
 * From 101 healthy people on a treadmill. To be held against a slope to the second threshold.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Years and sex in, slope out. Throws OutOfRange outside 16 to 75 years. */
export function ventilationVco2SlopeHabedank(ageYears: number, sex: "female" | "male"): number {
  requireRange(info.id, "age", ageYears, 16, 75, "years");
  return sex === "male" ? 0.13 * ageYears + 19.9 : 0.12 * ageYears + 24.4;
}

export const info: FormulaInfo<[number, "female" | "male"], number> = {
  id: "ventilation-vco2-slope-habedank",
  revision: 1,
  title: "Predicted slope of ventilation on carbon dioxide output (Habedank)",
  equation: "men: 0.13·age + 19.9 · women: 0.12·age + 24.4",
  inputs: { age: { unit: "years", range: "16 to 75" }, sex: { unit: "", range: "female, male" } },
  output: { unit: "ratio", decimals: 1 },
  source: {
    authors: "Habedank D and others",
    year: 1998,
    title: "Normal values on a treadmill (title not read)",
    doi: "10.1007/s004210050354",
    where: "abstract: 101 healthy people of 16 to 75 years",
    verified: "seen",
  },
  compute: ventilationVco2SlopeHabedank,
  checks: [
    { given: [40, "male"], expect: 25.1, tolerance: 1e-9, from: "by hand: 0.13·40 + 19.9" },
    { given: [40, "female"], expect: 29.2, tolerance: 1e-9, from: "by hand: 0.12·40 + 24.4" },
    { given: [80, "male"], expect: "refused", from: "above 75 years" },
  ],
};
