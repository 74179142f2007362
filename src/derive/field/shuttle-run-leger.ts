/**
 * Peak oxygen uptake of adults from the last stage of the 20-m shuttle run with one-minute stages.
 *
 *     −27.4 + 6.0·X,  X speed of the last stage in km/h = 8 + 0.5·stage
 *
 * The constant is often copied as −24.4; the general equation of 1988 at age 18 gives −27.44 and so agrees with −27.4.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from the 20-m shuttle run: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function shuttleRunLeger(stage: number, ageYears: number): number {
  requireRange(info.id, "last stage", stage, 1, 21, "");
  requireRange(info.id, "age", ageYears, 18, 50.999, "years");
  return -27.4 + 6 * (8 + 0.5 * stage);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "shuttle-run-leger",
  revision: 1,
  title: "Peak uptake from the 20-m shuttle run",
  equation: "−27.4 + 6.0·X,  X = 8 + 0.5·stage",
  inputs: { "last stage": { unit: "", range: "1 to 21" }, age: { unit: "years", range: "18 to 50.999" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 4.4,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Léger L, Gadoury C",
    year: 1989,
    title: "Validity of the 20 m shuttle run test with 1 min stages to predict VO2max in adults",
    journal: "Can J Sport Sci 14:21–26",
    where: "abstract: −27.4 + 6.0·X, Sy.x 4.4, n 77",
    verified: "seen",
  },
  compute: shuttleRunLeger,
  checks: [
    { given: [9, 30], expect: 47.6, tolerance: 1e-9, from: "by hand: X = 12.5; −27.4 + 75" },
    {
      given: [9, 30],
      expect: 47.59,
      tolerance: 0.05,
      from: "Léger LA et al. 1988, J Sports Sci 6:93: 31.025 + 3.238·12.5 − 3.248·18 + 0.1536·18·12.5 = 47.60",
    },
    { given: [9, 51], expect: "refused", from: "the adults were up to 50 years" },
  ],
};
