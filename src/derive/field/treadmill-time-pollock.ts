/**
 * Peak oxygen uptake of women from the time to exhaustion on the Bruce protocol.
 *
 *     4.38·t − 3.9
 *
 * At 12 min it gives 7 mL/kg/min more than the equation of 1973: the choice of equation outweighs any training effect.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from Bruce treadmill time, women: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillTimePollock(timeMin: number): number {
  requireRange(info.id, "time", timeMin, 3, 21, "min");
  return 4.38 * timeMin - 3.9;
}

export const info: FormulaInfo<[number], number> = {
  id: "treadmill-time-pollock",
  revision: 1,
  title: "Peak uptake from Bruce treadmill time, women",
  equation: "4.38·t − 3.9",
  inputs: { time: { unit: "min", range: "3 to 21" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 2.7,
  caveat: "Not with a hand on the rail, nor on the modified protocol.",
  source: {
    authors: "Pollock ML, Foster C, Schmidt D, Hellman C, Linnerud AC, Ward A",
    year: 1982,
    title:
      "Comparative analysis of physiologic responses to three different maximal graded exercise test protocols in healthy women",
    journal: "Am Heart J 103:363–373",
    where: "equation as reprinted in NSCA's Guide, chapter 5; SEE 2.7",
    verified: "seen",
  },
  compute: treadmillTimePollock,
  checks: [
    { given: [12], expect: 48.66, tolerance: 0.005, from: "by hand: 52.56 − 3.9" },
    { given: [2], expect: "refused", from: "less than one stage" },
  ],
};
