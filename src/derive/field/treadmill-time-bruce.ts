/**
 * Peak oxygen uptake from the time to exhaustion on the Bruce protocol.
 *
 *     men 3.88 + 3.36·t,  women 1.06 + 3.36·t
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from Bruce treadmill time: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillTimeBruce(sex: "female" | "male", timeMin: number, ageYears: number): number {
  requireRange(info.id, "time", timeMin, 3, 21, "min");
  requireRange(info.id, "age", ageYears, 29, 73.999, "years");
  return (sex === "male" ? 3.88 : 1.06) + 3.36 * timeMin;
}

export const info: FormulaInfo<["female" | "male", number, number], number> = {
  id: "treadmill-time-bruce",
  revision: 1,
  title: "Peak uptake from Bruce treadmill time",
  equation: "men 3.88 + 3.36·t, women 1.06 + 3.36·t",
  inputs: {
    sex: { unit: "", range: "female or male" },
    time: { unit: "min", range: "3 to 21" },
    age: { unit: "years", range: "29 to 73.999" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 3.22,
  caveat: "Not with a hand on the rail, nor on the modified protocol.",
  source: {
    authors: "Bruce RA, Kusumi F, Hosmer D",
    year: 1973,
    title:
      "Maximal oxygen intake and nomographic assessment of functional aerobic impairment in cardiovascular disease",
    journal: "Am Heart J 85:546–562",
    where: "equations as reprinted in NSCA's Guide, chapter 5; SEE 3.22",
    verified: "seen",
  },
  compute: treadmillTimeBruce,
  checks: [
    { given: ["male", 12, 45], expect: 44.2, tolerance: 0.001, from: "by hand: 3.88 + 40.32" },
    { given: ["female", 12, 45], expect: 41.38, tolerance: 0.001, from: "by hand: 1.06 + 40.32" },
    { given: ["male", 22, 45], expect: "refused", from: "the protocol ends at 21 min" },
    { given: ["male", 12, 20], expect: "refused", from: "the sample was 29 to 73 years" },
  ],
};
