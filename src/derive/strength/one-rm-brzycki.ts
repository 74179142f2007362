/**
 * One-repetition maximum from repetitions to failure, Brzycki.
 *
 *     1RM = w · 36 / (37 − r)
 *
 * Assumes the share of the maximum falls by 2.78 points a repetition. A single repetition is the maximum itself and needs no equation.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** One-repetition maximum, Brzycki: kg. Throws OutOfRange outside the ranges in `info`. */
export function oneRmBrzycki(loadKg: number, repetitions: number): number {
  requireRange(info.id, "load", loadKg, 1, 700, "kg");
  requireRange(info.id, "repetitions", repetitions, 2, 10, "");
  return (loadKg * 36) / (37 - repetitions);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "one-rm-brzycki",
  revision: 1,
  title: "One-repetition maximum, Brzycki",
  equation: "1RM = w · 36 / (37 − r)",
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
    where: "equation of Brzycki as compared there",
  },
  compute: oneRmBrzycki,
  checks: [
    { given: [100, 5], expect: 112.5, tolerance: 0.005, from: "by hand: 100 kg for 5 repetitions: 3600 / 32" },
    { given: [100, 1], expect: "refused", from: "one repetition is the maximum itself" },
    { given: [100, 11], expect: "refused", from: "more than 10 repetitions tell of endurance" },
  ],
};
