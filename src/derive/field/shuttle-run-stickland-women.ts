/**
 * Peak oxygen uptake of young women from the last half-stage of the 20-m shuttle run.
 *
 *     2.85·L + 25.1
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from shuttle half-stages, women: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function shuttleRunSticklandWomen(halfStage: number, ageYears: number): number {
  requireRange(info.id, "last half-stage", halfStage, 0.5, 21, "");
  requireRange(info.id, "age", ageYears, 18, 38.999, "years");
  return 2.85 * halfStage + 25.1;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "shuttle-run-stickland-women",
  revision: 1,
  title: "Peak uptake from shuttle half-stages, women",
  equation: "2.85·L + 25.1",
  inputs: { "last half-stage": { unit: "", range: "0.5 to 21" }, age: { unit: "years", range: "18 to 38.999" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 3.64,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Stickland MK, Petersen SR, Bouffard M",
    year: 2003,
    title: "Prediction of maximal aerobic power from the 20-m multi-stage shuttle run test",
    journal: "Can J Appl Physiol 28:272–282",
    where: "equation of women; SEE 3.64",
    verified: "seen",
  },
  compute: shuttleRunSticklandWomen,
  checks: [
    { given: [9, 25], expect: 50.75, tolerance: 1e-9, from: "by hand: 25.65 + 25.1" },
    { given: [9, 60], expect: "refused", from: "young adults only" },
  ],
};
