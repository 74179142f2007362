/**
 * One-repetition maximum from repetitions to failure, Mayhew.
 *
 *     1RM = 100·w / (52.2 + 41.9·e^(−0.055·r))
 *
 * Exponential; built on the bench press. A single repetition is the maximum itself and needs no equation.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** One-repetition maximum, Mayhew: kg. Throws OutOfRange outside the ranges in `info`. */
export function oneRmMayhew(loadKg: number, repetitions: number): number {
  requireRange(info.id, "load", loadKg, 1, 700, "kg");
  requireRange(info.id, "repetitions", repetitions, 2, 10, "");
  return (100 * loadKg) / (52.2 + 41.9 * Math.exp(-0.055 * repetitions));
}

export const info: FormulaInfo<[number, number], number> = {
  id: "one-rm-mayhew",
  revision: 1,
  title: "One-repetition maximum, Mayhew",
  equation: "1RM = 100·w / (52.2 + 41.9·e^(−0.055·r))",
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
    where: "equation of Mayhew as compared there",
  },
  compute: oneRmMayhew,
  checks: [
    {
      given: [100, 5],
      expect: 119.01,
      tolerance: 0.005,
      from: "by hand: 100 kg for 5 repetitions: 10000 / (52.2 + 41.9·e^−0.275)",
    },
    { given: [100, 1], expect: "refused", from: "one repetition is the maximum itself" },
    { given: [100, 11], expect: "refused", from: "more than 10 repetitions tell of endurance" },
  ],
};
