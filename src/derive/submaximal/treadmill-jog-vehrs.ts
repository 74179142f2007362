/**
 * Peak oxygen uptake from one stage of jogging, 18 to 40 years.
 *
 *     58.687 + 7.520·sex + 4.334·mph − 0.211·mass − 0.148·HR − 0.107·age;  sex 1 for men
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from a one-stage treadmill jog, 18 to 40 years: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillJogVehrs(
  sex: "female" | "male",
  ageYears: number,
  massKg: number,
  speedKmH: number,
  heartRate: number,
): number {
  requireRange(info.id, "age", ageYears, 18, 40.999, "years");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "speed", speedKmH, 6.4, 12.1, "km/h");
  requireRange(info.id, "heart rate", heartRate, 60, 200, "1/min");
  const mph = speedKmH / 1.609344; // international mile, exact by definition
  return 58.687 + 7.52 * (sex === "male" ? 1 : 0) + 4.334 * mph - 0.211 * massKg - 0.148 * heartRate - 0.107 * ageYears;
}

export const info: FormulaInfo<["female" | "male", number, number, number, number], number> = {
  id: "treadmill-jog-vehrs",
  revision: 1,
  title: "Peak uptake from a one-stage treadmill jog, 18 to 40 years",
  equation: "58.687 + 7.520·sex + 4.334·mph − 0.211·kg − 0.148·HR − 0.107·age",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "18 to 40.999" },
    "body mass": { unit: "kg", range: "30 to 200" },
    speed: { unit: "km/h", range: "6.4 to 12.1" },
    "heart rate": { unit: "1/min", range: "60 to 200" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 2.52,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Vehrs PR, George JD, Fellingham GW, Plowman SA, Dustman-Allen K",
    year: 2007,
    title: "Submaximal treadmill exercise test to predict VO2max in fit adults",
    journal: "Meas Phys Educ Exerc Sci 11:61–72",
    where: "equation as reprinted in NSCA's Guide, chapter 5; SEE 2.52",
    verified: "seen",
  },
  compute: treadmillJogVehrs,
  checks: [
    {
      given: ["female", 30, 60, 9.656064, 160],
      expect: 45.14,
      tolerance: 0.01,
      from: "by hand at 6 mph: 58.687 + 26.004 − 12.66 − 23.68 − 3.21 = 45.141",
    },
    { given: ["female", 45, 60, 9.6, 160], expect: "refused", from: "the sample was 18 to 40 years" },
  ],
};
