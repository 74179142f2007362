/**
 * Peak oxygen uptake from one stage of walking at 5 % grade.
 *
 *     15.1 + 21.8·mph − 0.327·HR − 0.263·mph·age + 0.00504·HR·age + 5.98·sex;  sex 1 for men
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from a one-stage treadmill walk: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillWalkEbbeling(
  sex: "female" | "male",
  ageYears: number,
  speedKmH: number,
  heartRate: number,
): number {
  requireRange(info.id, "age", ageYears, 20, 59.999, "years");
  requireRange(info.id, "speed", speedKmH, 3.2, 7.3, "km/h");
  requireRange(info.id, "heart rate", heartRate, 60, 200, "1/min");
  const mph = speedKmH / 1.609344; // international mile, exact by definition
  return (
    15.1 +
    21.8 * mph -
    0.327 * heartRate -
    0.263 * mph * ageYears +
    0.00504 * heartRate * ageYears +
    5.98 * (sex === "male" ? 1 : 0)
  );
}

export const info: FormulaInfo<["female" | "male", number, number, number], number> = {
  id: "treadmill-walk-ebbeling",
  revision: 1,
  title: "Peak uptake from a one-stage treadmill walk",
  equation: "15.1 + 21.8·mph − 0.327·HR − 0.263·mph·age + 0.00504·HR·age + 5.98·sex",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "20 to 59.999" },
    speed: { unit: "km/h", range: "3.2 to 7.3" },
    "heart rate": { unit: "1/min", range: "60 to 200" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 3.72,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Ebbeling CB, Ward A, Puleo EM, Widrick J, Rippe JM",
    year: 1991,
    title: "Development of a single-stage submaximal treadmill walking test",
    journal: "Med Sci Sports Exerc 23:966–973",
    where: "equation as reprinted in NSCA's Guide, chapter 5; SEE 3.72",
    verified: "seen",
  },
  compute: treadmillWalkEbbeling,
  checks: [
    {
      given: ["male", 40, 5.632704, 130],
      expect: 44.258,
      tolerance: 0.005,
      from: "by hand at 3.5 mph: 15.1 + 76.3 − 42.51 − 36.82 + 26.208 + 5.98",
    },
    { given: ["male", 70, 5.6, 130], expect: "refused", from: "the sample was 20 to 59 years" },
  ],
};
