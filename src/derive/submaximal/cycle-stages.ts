/**
 * Peak oxygen uptake from the power that goes with the predicted maximal heart rate.
 *
 *     (10.8·W + 7·mass) / mass
 *
 * The cycling equation beyond the range of its steady states: that is what the test does, and why it errs by 10 to 15 %.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from power at maximal heart rate: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function cycleStages(powerW: number, massKg: number): number {
  requireRange(info.id, "power at maximal heart rate", powerW, 50, 500, "W");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  return (10.8 * powerW) / massKg + 7;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "cycle-stages",
  revision: 1,
  title: "Peak uptake from power at maximal heart rate",
  equation: "(10.8·W + 7·mass) / mass",
  inputs: {
    "power at maximal heart rate": { unit: "W", range: "50 to 500" },
    "body mass": { unit: "kg", range: "30 to 200" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "It estimates; it does not measure. Error 10 to 15 %.",
  source: {
    authors: "Anning J, in National Strength and Conditioning Association",
    year: 2012,
    title: "NSCA's Guide to Tests and Assessments, chapter 5",
    journal: "handbook",
    verified: "seen",
    where: "multi-stage cycle test, Table 5.5: (1.8·kgm/min + 7·mass) / mass; error 10 to 15 %",
  },
  compute: cycleStages,
  checks: [
    {
      given: [190, 70],
      expect: 36.31,
      tolerance: 0.005,
      from: "by hand, the handbook's example: (1.8 · 1140 + 490) / 70",
    },
    { given: [20, 70], expect: "refused", from: "below 50 W" },
  ],
};
