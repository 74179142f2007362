/**
 * Peak oxygen uptake from one stage of jogging, 18 to 29 years.
 *
 *     54.07 + 7.062·sex − 0.193·mass + 4.47·mph − 0.1453·HR;  sex 1 for men
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from a one-stage treadmill jog, 18 to 29 years: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillJogGeorge(
  sex: "female" | "male",
  ageYears: number,
  massKg: number,
  speedKmH: number,
  heartRate: number,
): number {
  requireRange(info.id, "age", ageYears, 18, 29.999, "years");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "speed", speedKmH, 6.4, 12.1, "km/h");
  requireRange(info.id, "heart rate", heartRate, 60, 180, "1/min");
  const mph = speedKmH / 1.609344; // international mile, exact by definition
  return 54.07 + 7.062 * (sex === "male" ? 1 : 0) - 0.193 * massKg + 4.47 * mph - 0.1453 * heartRate;
}

export const info: FormulaInfo<["female" | "male", number, number, number, number], number> = {
  id: "treadmill-jog-george",
  revision: 1,
  title: "Peak uptake from a one-stage treadmill jog, 18 to 29 years",
  equation: "54.07 + 7.062·sex − 0.193·kg + 4.47·mph − 0.1453·HR",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "18 to 29.999" },
    "body mass": { unit: "kg", range: "30 to 200" },
    speed: { unit: "km/h", range: "6.4 to 12.1" },
    "heart rate": { unit: "1/min", range: "60 to 180" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 3.1,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "George JD, Vehrs PR, Allsen PE, Fellingham GW, Fisher AG",
    year: 1993,
    title: "Development of a submaximal treadmill jogging test for fit college-aged individuals",
    journal: "Med Sci Sports Exerc 25:643–647",
    where: "equation as reprinted in NSCA's Guide, chapter 5; SEE 3.1",
    verified: "seen",
  },
  compute: treadmillJogGeorge,
  checks: [
    {
      given: ["male", 22, 75, 9.656064, 150],
      expect: 51.68,
      tolerance: 0.01,
      from: "by hand at 6 mph: 54.07 + 7.062 − 14.475 + 26.82 − 21.795",
    },
    { given: ["male", 35, 75, 9.6, 150], expect: "refused", from: "the sample was 18 to 29 years" },
  ],
};
