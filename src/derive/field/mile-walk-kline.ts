/**
 * Peak oxygen uptake from a one-mile walk.
 *
 *     132.853 − 0.0769·mass (lb) − 0.3877·age + 6.315·sex − 3.2649·time (min) − 0.1565·heart rate;  sex 1 for men
 *
 * The mass is in pounds. Copies that print 0.1692 hold the coefficient for kilograms; with pounds it reads 16 too low.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { KG_PER_POUND } from "../../kernel/unit.js";

/** Peak uptake from a one-mile walk: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function mileWalkKline(
  sex: "female" | "male",
  ageYears: number,
  massKg: number,
  timeMin: number,
  heartRate: number,
): number {
  requireRange(info.id, "age", ageYears, 30, 69.999, "years");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "time", timeMin, 8, 30, "min");
  requireRange(info.id, "heart rate", heartRate, 60, 220, "1/min");
  return (
    132.853 -
    0.0769 * (massKg / KG_PER_POUND) -
    0.3877 * ageYears +
    6.315 * (sex === "male" ? 1 : 0) -
    3.2649 * timeMin -
    0.1565 * heartRate
  );
}

export const info: FormulaInfo<["female" | "male", number, number, number, number], number> = {
  id: "mile-walk-kline",
  revision: 1,
  title: "Peak uptake from a one-mile walk",
  equation: "132.853 − 0.0769·lb − 0.3877·age + 6.315·sex − 3.2649·min − 0.1565·HR",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "30 to 69.999" },
    "body mass": { unit: "kg", range: "30 to 200" },
    time: { unit: "min", range: "8 to 30" },
    "heart rate": { unit: "1/min", range: "60 to 220" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 5.0,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Kline GM, Porcari JP, Hintermeister R, et al.",
    year: 1987,
    title: "Estimation of VO2max from a one-mile track walk, gender, age, and body weight",
    journal: "Med Sci Sports Exerc 19:253–259",
    where: "equation; SEE 5.0 as reprinted",
    verified: "seen",
  },
  compute: mileWalkKline,
  checks: [
    {
      given: ["male", 45, 79.3786647, 14, 125],
      expect: 42.99,
      tolerance: 0.005,
      from: "by hand, 175 lb: 132.853 − 13.458 − 17.447 + 6.315 − 45.709 − 19.563",
    },
    { given: ["male", 29.9, 80, 14, 125], expect: "refused", from: "the sample began at 30 years" },
  ],
};
