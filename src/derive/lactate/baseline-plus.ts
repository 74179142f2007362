/**
 * Lactate threshold as a rise above baseline.
 *
 *     the load at which the straight pieces between steps last cross (lowest lactate of the steps + rise)
 *
 * The baseline is the lowest lactate measured in a step, not the value at rest. A rise of 0.5 or 1.0 mmol/L is usual.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { at, lastCrossing, lowest, type Point, requireCurve } from "./curve.js";
import { WORKED } from "./worked-example.js";

/** Points in rising load and the rise in mmol/L in, load out. Throws OutOfRange for fewer than four steps, falling lactate, or a level the data do not cross. */
export function baselinePlus(points: readonly Point[], rise: number): number {
  requireRange(info.id, "the rise", rise, 0.2, 3, "mmol/L");
  requireCurve(info.id, points, 4);
  return lastCrossing(info.id, points, at(points, lowest(points))[1] + rise);
}

export const info: FormulaInfo<[readonly Point[], number], number> = {
  id: "baseline-plus",
  revision: 1,
  title: "Lactate threshold by rise above baseline",
  equation: "load where lactate last crosses lowest step + rise, straight between steps",
  inputs: { steps: { unit: "load, mmol/L", range: "four or more" }, rise: { unit: "mmol/L", range: "0.2 to 3" } },
  output: { unit: "W or km/h", decimals: 1 },
  caveat: "One step's error moves the baseline and with it the threshold.",
  source: {
    authors: "Coyle EF, Martin WH, Ehsani AA and others",
    year: 1983,
    title: "Blood lactate threshold in some well-trained ischemic heart disease patients",
    journal: "J Appl Physiol 54:18–23",
    where: "definition, restated in comparisons of lactate thresholds (Jamnick 2018, PLoS One 13:e0199794)",
    verified: "memory",
  },
  compute: baselinePlus,
  checks: [
    { given: [WORKED, 0.5], expect: 10.75, tolerance: 1e-9, from: "by hand: 10 + (1.5 − 1.2)/(1.6 − 1.2)" },
    { given: [WORKED, 1], expect: 11.5, tolerance: 1e-9, from: "by hand: 11 + (2.0 − 1.6)/(2.4 − 1.6)" },
    {
      given: [WORKED.slice(0, 4), 1],
      expect: "refused",
      from: "the last step, 1.6, does not reach 2.0: never extrapolated",
    },
    { given: [WORKED.slice(0, 3), 0.5], expect: "refused", from: "three steps" },
  ],
};
