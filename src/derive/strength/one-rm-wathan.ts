/**
 * One-repetition maximum from repetitions to failure, Wathan.
 *
 *     1RM = 100·w / (48.8 + 53.8·e^(−0.075·r))
 *
 * Exponential. A single repetition is the maximum itself and needs no equation.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** One-repetition maximum, Wathan: kg. Throws OutOfRange outside the ranges in `info`. */
export function oneRmWathan(loadKg: number, repetitions: number): number {
  requireRange(info.id, "load", loadKg, 1, 700, "kg");
  requireRange(info.id, "repetitions", repetitions, 2, 10, "");
  return (100 * loadKg) / (48.8 + 53.8 * Math.exp(-0.075 * repetitions));
}

export const info: FormulaInfo<[number, number], number> = {
  id: "one-rm-wathan",
  revision: 1,
  title: "One-repetition maximum, Wathan",
  equation: "1RM = 100·w / (48.8 + 53.8·e^(−0.075·r))",
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
    where: "equation of Wathan as compared there",
  },
  compute: oneRmWathan,
  checks: [
    {
      given: [100, 5],
      expect: 116.58,
      tolerance: 0.005,
      from: "by hand: 100 kg for 5 repetitions: 10000 / (48.8 + 53.8·e^−0.375)",
    },
    { given: [100, 1], expect: "refused", from: "one repetition is the maximum itself" },
    { given: [100, 11], expect: "refused", from: "more than 10 repetitions tell of endurance" },
  ],
};
