/**
 * Peak oxygen uptake from a run of one and a half miles, 18 to 29 years.
 *
 *     88.02 + 3.716·sex − 0.1656·mass − 2.767·time;  sex 1 for men
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from a one-and-a-half-mile run: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function mileAndHalfRunGeorge(
  sex: "female" | "male",
  ageYears: number,
  massKg: number,
  timeMin: number,
): number {
  requireRange(info.id, "age", ageYears, 18, 29.999, "years");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "time", timeMin, 6, 30, "min");
  return 88.02 + 3.716 * (sex === "male" ? 1 : 0) - 0.1656 * massKg - 2.767 * timeMin;
}

export const info: FormulaInfo<["female" | "male", number, number, number], number> = {
  id: "mile-and-half-run-george",
  revision: 1,
  title: "Peak uptake from a one-and-a-half-mile run",
  equation: "88.02 + 3.716·sex − 0.1656·kg − 2.767·min",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "18 to 29.999" },
    "body mass": { unit: "kg", range: "30 to 200" },
    time: { unit: "min", range: "6 to 30" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 2.8,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "George JD, et al.",
    year: 1993,
    title: "Equation for a run of one and a half miles, as reprinted in NSCA's Guide to Tests and Assessments",
    where: "chapter 5, Table 5.2; SEE 2.8",
    verified: "seen",
  },
  compute: mileAndHalfRunGeorge,
  checks: [
    { given: ["male", 22, 75, 11], expect: 48.88, tolerance: 0.005, from: "by hand: 88.02 + 3.716 − 12.42 − 30.437" },
    { given: ["male", 35, 75, 11], expect: "refused", from: "the sample was 18 to 29 years" },
  ],
};
