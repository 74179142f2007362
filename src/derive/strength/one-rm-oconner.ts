/**
 * One-repetition maximum from repetitions to failure, O'Conner.
 *
 *     1RM = w · (1 + 0.025·r)
 *
 * A straight line: each repetition is worth a fortieth. A single repetition is the maximum itself and needs no equation.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** One-repetition maximum, O'Conner: kg. Throws OutOfRange outside the ranges in `info`. */
export function oneRmOconner(loadKg: number, repetitions: number): number {
  requireRange(info.id, "load", loadKg, 1, 700, "kg");
  requireRange(info.id, "repetitions", repetitions, 2, 10, "");
  return loadKg * (1 + 0.025 * repetitions);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "one-rm-oconner",
  revision: 1,
  title: "One-repetition maximum, O'Conner",
  equation: "1RM = w · (1 + 0.025·r)",
  inputs: { load: { unit: "kg", range: "1 to 700" }, repetitions: { unit: "", range: "2 to 10" } },
  output: { unit: "kg", decimals: 1 },
  caveat: "Best from 2 to 10 repetitions; the spread between equations is the least doubt of it.",
  source: {
    authors: "LeSuer DA, McCormick JH, Mayhew JL, Wasserstein RL, Arnold MD",
    year: 1997,
    title:
      "The accuracy of prediction equations for estimating 1-RM performance in the bench press, squat, and deadlift",
    journal: "J Strength Cond Res 11(4):211–213",
    verified: "seen",
    where: "equation of O'Conner as compared there",
  },
  compute: oneRmOconner,
  checks: [
    { given: [100, 5], expect: 112.5, tolerance: 0.005, from: "by hand: 100 kg for 5 repetitions: 100 · 1.125" },
    { given: [100, 1], expect: "refused", from: "one repetition is the maximum itself" },
    { given: [100, 11], expect: "refused", from: "more than 10 repetitions tell of endurance" },
  ],
};
