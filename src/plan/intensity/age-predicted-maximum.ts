/**
 * Maximal heart rate predicted from age, for a client whose maximum was not measured. The last resort of a plan.
 *
 *     HRmax = 211 − 0.64·age
 *
 * People of one age differ by about 11 beats (one SD), so that a target built on it may be wrong by 20.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Standard error of the prediction, beats/min (memory, high confidence). */
export const PREDICTION_SD = 10.8;

/** Age in years (19 to 89) to beats/min. */
export function agePredictedMaximum(ageYears: number): number {
  requireRange(info.id, "age", ageYears, 19, 89, "years");
  return 211 - 0.64 * ageYears;
}

export const info: FormulaInfo<[number], number> = {
  id: "age-predicted-maximum",
  revision: 1,
  title: "Maximal heart rate predicted from age, for intensities",
  equation: "HRmax = 211 − 0.64·age",
  inputs: { age: { unit: "years", range: "19 to 89" } },
  output: { unit: "beats/min", decimals: 0 },
  see: 10.8,
  caveat:
    "Two people in three lie within 11 beats of it; one in twenty more than 21 beats away. Not with drugs that slow the heart.",
  source: {
    authors: "Nes BM, Janszky I, Wisløff U, Støylen A, Karlsen T",
    year: 2013,
    title: "Age-predicted maximal heart rate in healthy subjects: the HUNT Fitness Study",
    journal: "Scand J Med Sci Sports 23:697–704",
    where:
      "equation from 3320 people of 19 to 89 years, as printed in a statement of 2019; its standard error from memory, to be checked against the source",
    verified: "seen",
  },
  compute: agePredictedMaximum,
  checks: [{ given: [40], expect: 185.4, tolerance: 1e-9, from: "by hand: 211 − 25.6" }],
};
