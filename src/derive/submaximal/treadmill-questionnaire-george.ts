/**
 * Peak oxygen uptake from the speed of one stage (walk, jog or run) and two questionnaires. It needs no heart rate.
 *
 *     30.04 + 6.37·sex − 0.243·age − 0.122·mass + 3.2·mph + 0.391·PFA + 0.669·PA;  sex 1 for men
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from a treadmill stage and two questionnaires: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function treadmillQuestionnaireGeorge(
  sex: "female" | "male",
  ageYears: number,
  massKg: number,
  speedKmH: number,
  functionalAbility: number,
  activityRating: number,
): number {
  requireRange(info.id, "age", ageYears, 18, 65.999, "years");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  requireRange(info.id, "speed", speedKmH, 3, 16, "km/h");
  requireRange(info.id, "perceived functional ability", functionalAbility, 2, 26, "points");
  requireRange(info.id, "activity rating", activityRating, 0, 10, "points");
  const mph = speedKmH / 1.609344; // international mile, exact by definition
  return (
    30.04 +
    6.37 * (sex === "male" ? 1 : 0) -
    0.243 * ageYears -
    0.122 * massKg +
    3.2 * mph +
    0.391 * functionalAbility +
    0.669 * activityRating
  );
}

export const info: FormulaInfo<["female" | "male", number, number, number, number, number], number> = {
  id: "treadmill-questionnaire-george",
  revision: 1,
  title: "Peak uptake from a treadmill stage and two questionnaires",
  equation: "30.04 + 6.37·sex − 0.243·age − 0.122·kg + 3.2·mph + 0.391·PFA + 0.669·PA",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "18 to 65.999" },
    "body mass": { unit: "kg", range: "30 to 200" },
    speed: { unit: "km/h", range: "3 to 16" },
    "perceived functional ability": { unit: "points", range: "2 to 26" },
    "activity rating": { unit: "points", range: "0 to 10" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 3.09,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "George JD, Paul SL, Hyde A, et al.",
    year: 2009,
    title: "Prediction of maximum oxygen uptake using both exercise and non-exercise data",
    journal: "Meas Phys Educ Exerc Sci 13:1–12",
    where: "worked example reprinted in NSCA's Guide, chapter 5; SEE 3.09",
    verified: "seen",
  },
  compute: treadmillQuestionnaireGeorge,
  checks: [
    {
      given: ["male", 40, 70, 11.265408, 24, 8],
      expect: 55.3,
      tolerance: 0.05,
      from: "worked example of the handbook: 7 mph, PFA 24, PA 8",
    },
    { given: ["male", 70, 70, 11, 24, 8], expect: "refused", from: "the sample was 18 to 65 years" },
  ],
};
