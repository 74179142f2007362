/**
 * One-repetition maximum from repetitions to failure: mean of six published equations.
 *
 * The equations disagree by several percent and none is best for every lift and person, so the mean is given with the
 * span from the lowest to the highest beside it. At one repetition the load is the maximum and nothing is estimated.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { mean } from "../../kernel/statistics.js";
import { info as brzycki } from "./one-rm-brzycki.js";
import { info as epley } from "./one-rm-epley.js";
import { info as lombardi } from "./one-rm-lombardi.js";
import { info as mayhew } from "./one-rm-mayhew.js";
import { info as oconner } from "./one-rm-oconner.js";
import { info as wathan } from "./one-rm-wathan.js";

/** The six equations, in the order of their names. */
export const ONE_RM_EQUATIONS = [brzycki, epley, lombardi, mayhew, oconner, wathan] as const;

/** One-repetition maximum, mean of six equations: kg. Throws OutOfRange outside the ranges in `info`. */
export function oneRmSpan(loadKg: number, repetitions: number): number {
  requireRange(info.id, "load", loadKg, 1, 700, "kg");
  requireRange(info.id, "repetitions", repetitions, 2, 10, "");
  return mean(ONE_RM_EQUATIONS.map(({ compute }) => compute(loadKg, repetitions)));
}

export const info: FormulaInfo<[number, number], number> = {
  id: "one-rm-span",
  revision: 1,
  title: "One-repetition maximum, mean of six equations",
  equation: "mean of Epley, Brzycki, Lombardi, Mayhew, O'Conner and Wathan",
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
    where: "the six equations compared there; taking their mean and span is this project's rule",
  },
  compute: oneRmSpan,
  checks: [
    {
      given: [100, 5],
      expect: 115.79,
      tolerance: 0.01,
      from: "by hand: mean of 116.67, 112.5, 117.46, 119.01, 112.5 and 116.58",
    },
    { given: [100, 12], expect: "refused", from: "more than 10 repetitions tell of endurance" },
  ],
};
