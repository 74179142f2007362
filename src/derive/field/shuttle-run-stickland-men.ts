/**
 * Peak oxygen uptake of young men from the last half-stage of the 20-m shuttle run.
 *
 *     2.75·L + 28.8
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from shuttle half-stages, men: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function shuttleRunSticklandMen(halfStage: number, ageYears: number): number {
  requireRange(info.id, "last half-stage", halfStage, 0.5, 21, "");
  requireRange(info.id, "age", ageYears, 18, 38.999, "years");
  return 2.75 * halfStage + 28.8;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "shuttle-run-stickland-men",
  revision: 1,
  title: "Peak uptake from shuttle half-stages, men",
  equation: "2.75·L + 28.8",
  inputs: { "last half-stage": { unit: "", range: "0.5 to 21" }, age: { unit: "years", range: "18 to 38.999" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 4.07,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Stickland MK, Petersen SR, Bouffard M",
    year: 2003,
    title: "Prediction of maximal aerobic power from the 20-m multi-stage shuttle run test",
    journal: "Can J Appl Physiol 28:272–282",
    where: "equation of men; SEE 4.07",
    verified: "seen",
  },
  compute: shuttleRunSticklandMen,
  checks: [
    { given: [9, 25], expect: 53.55, tolerance: 1e-9, from: "by hand: 24.75 + 28.8" },
    { given: [9, 60], expect: "refused", from: "young adults only" },
  ],
};
