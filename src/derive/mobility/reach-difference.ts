/**
 * Difference of forward reach between the legs.
 *
 *     |right − left|
 *
 * One reach errs by about 3 cm between testers (2 cm for a mean of three), so a difference of 4 cm is close to error. It
 * names a thing to train and watch; it does not predict injury.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Difference of forward reach: cm. Throws OutOfRange outside the ranges in `info`. */
export function reachDifference(rightCm: number, leftCm: number): number {
  requireRange(info.id, "right", rightCm, 10, 180, "cm");
  requireRange(info.id, "left", leftCm, 10, 180, "cm");
  return Math.abs(rightCm - leftCm);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "reach-difference",
  revision: 1,
  title: "Difference of forward reach",
  equation: "|right − left|",
  inputs: { right: { unit: "cm", range: "10 to 180" }, left: { unit: "cm", range: "10 to 180" } },
  output: { unit: "cm", decimals: 1 },
  source: {
    authors: "Plisky PJ, Rauh MJ, Kaminski TW, Underwood FB; Smith CA, Chimera NJ, Warren M",
    year: 2015,
    title: "Association of reach asymmetry and injury in Division I athletes",
    journal: "Med Sci Sports Exerc 47(1):136–141",
    doi: "10.1249/MSS.0000000000000380",
    verified: "seen",
    where: "abstract: more than 4 cm forward",
  },
  compute: reachDifference,
  checks: [
    { given: [62, 66.5], expect: 4.5, tolerance: 1e-9, from: "by hand: 66.5 − 62" },
    { given: [62, 0], expect: "refused", from: "a leg that was not tested" },
  ],
};
