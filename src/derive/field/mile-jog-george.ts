/**
 * Peak oxygen uptake from a steady one-mile jog, 18 to 29 years.
 *
 *     100.5 + 8.344·sex − 0.1636·mass − 1.438·time − 0.1928·heart rate;  sex 1 for men
 *
 * Holds for an easy jog only: slower than 8 min (men) or 9 min (women), heart rate below 180.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Peak uptake from a one-mile jog: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function mileJogGeorge(
  sex: "female" | "male",
  ageYears: number,
  massKg: number,
  timeMin: number,
  heartRate: number,
): number {
  requireRange(info.id, "age", ageYears, 18, 29.999, "years");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "time", timeMin, 8, 20, "min");
  requireRange(info.id, "heart rate", heartRate, 60, 179.999, "1/min");
  if (sex === "female" && timeMin < 9) throw new OutOfRange(info.id, "time", timeMin, "9 min or more for women");
  return 100.5 + 8.344 * (sex === "male" ? 1 : 0) - 0.1636 * massKg - 1.438 * timeMin - 0.1928 * heartRate;
}

export const info: FormulaInfo<["female" | "male", number, number, number, number], number> = {
  id: "mile-jog-george",
  revision: 1,
  title: "Peak uptake from a one-mile jog",
  equation: "100.5 + 8.344·sex − 0.1636·kg − 1.438·min − 0.1928·HR",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "18 to 29.999" },
    "body mass": { unit: "kg", range: "30 to 200" },
    time: { unit: "min", range: "8 to 20" },
    "heart rate": { unit: "1/min", range: "60 to 179.999" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 3.1,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "George JD, Vehrs PR, Allsen PE, Fellingham GW, Fisher AG",
    year: 1993,
    title: "VO2max estimation from a submaximal 1-mile track jog for fit college-age individuals",
    journal: "Med Sci Sports Exerc 25:401–406",
    where: "equation; SEE 3.1",
    verified: "seen",
  },
  compute: mileJogGeorge,
  checks: [
    {
      given: ["male", 22, 75, 9, 160],
      expect: 52.78,
      tolerance: 0.005,
      from: "by hand: 100.5 + 8.344 − 12.27 − 12.942 − 30.848",
    },
    { given: ["female", 22, 60, 8.5, 160], expect: "refused", from: "faster than 9 min" },
    { given: ["male", 22, 75, 9, 180], expect: "refused", from: "heart rate from 180" },
  ],
};
