/**
 * Peak oxygen uptake of men from the time to exhaustion on the Bruce protocol: a curve, because stages differ.
 *
 *     14.76 − 1.38·t + 0.451·t² − 0.012·t³
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from Bruce treadmill time, men, cubic: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillTimeFoster(timeMin: number): number {
  requireRange(info.id, "time", timeMin, 3, 21, "min");
  return 14.76 - 1.38 * timeMin + 0.451 * timeMin ** 2 - 0.012 * timeMin ** 3;
}

export const info: FormulaInfo<[number], number> = {
  id: "treadmill-time-foster",
  revision: 1,
  title: "Peak uptake from Bruce treadmill time, men, cubic",
  equation: "14.76 − 1.38·t + 0.451·t² − 0.012·t³",
  inputs: { time: { unit: "min", range: "3 to 21" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 3.35,
  caveat: "Not with a hand on the rail, nor on the modified protocol.",
  source: {
    authors: "Foster C, Jackson AS, Pollock ML, et al.",
    year: 1984,
    title: "Generalized equations for predicting functional capacity from treadmill performance",
    journal: "Am Heart J 107:1229–1234",
    where: "equation as reprinted in NSCA's Guide, chapter 5; SEE 3.35",
    verified: "seen",
  },
  compute: treadmillTimeFoster,
  checks: [
    { given: [12], expect: 42.41, tolerance: 0.005, from: "by hand: 14.76 − 16.56 + 64.944 − 20.736" },
    { given: [22], expect: "refused", from: "the protocol ends at 21 min" },
  ],
};
