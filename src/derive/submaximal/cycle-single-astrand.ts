/**
 * Peak oxygen uptake from one steady cycle load: the nomogram as an equation, with its age factor.
 *
 *     men    VO2 · (195 − 61) / (HR − 61)
 *     women  VO2 · (198 − 72) / (HR − 72)
 *     times a factor that falls from 1.1 at 15 years to 0.65 at 65, linear between the printed ages
 *
 * VO2 is that of the load, by the cycling equation.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Åstrand I 1960: age in years and factor. */
const AGE_FACTORS: readonly (readonly [number, number])[] = [
  [15, 1.1],
  [25, 1],
  [35, 0.87],
  [40, 0.83],
  [45, 0.78],
  [50, 0.75],
  [55, 0.71],
  [60, 0.68],
  [65, 0.65],
];

/** Factor at an age, linear between the printed ages. */
function ageFactor(ageYears: number): number {
  const next = AGE_FACTORS.findIndex(([age]) => age >= ageYears);
  const [highAge, high] = AGE_FACTORS[Math.max(next, 1)] ?? [65, 0.65];
  const [lowAge, low] = AGE_FACTORS[Math.max(next, 1) - 1] ?? [60, 0.68];
  return low + ((ageYears - lowAge) / (highAge - lowAge)) * (high - low);
}

/** Peak uptake from one cycle load: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function cycleSingleAstrand(
  sex: "female" | "male",
  ageYears: number,
  uptake: number,
  heartRate: number,
): number {
  requireRange(info.id, "age", ageYears, 15, 64.999, "years");
  requireRange(info.id, "uptake at the load", uptake, 8, 60, "mL/kg/min");
  requireRange(info.id, "heart rate", heartRate, 125, 170, "1/min");
  if (sex === "male" && heartRate < 130)
    throw new OutOfRange(info.id, "heart rate", heartRate, "130 to 170 /min for men");
  const ratio = sex === "male" ? (195 - 61) / (heartRate - 61) : (198 - 72) / (heartRate - 72);
  return uptake * ratio * ageFactor(ageYears);
}

export const info: FormulaInfo<["female" | "male", number, number, number], number> = {
  id: "cycle-single-astrand",
  revision: 1,
  title: "Peak uptake from one cycle load",
  equation: "VO2 · (195 − 61) / (HR − 61) for men, VO2 · (198 − 72) / (HR − 72) for women, times the age factor",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "15 to 64.999" },
    "uptake at the load": { unit: "mL/kg/min", range: "8 to 60" },
    "heart rate": { unit: "1/min", range: "125 to 170" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  see: 5.7,
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Åstrand PO, Ryhming I; Åstrand I",
    year: "1954 and 1960",
    title:
      "A nomogram for calculation of aerobic capacity from pulse rate during submaximal work; Aerobic work capacity in men and women",
    journal: "J Appl Physiol 7:218–221; Acta Physiol Scand Suppl 169",
    where: "nomogram as an equation; age factors",
    verified: "memory",
  },
  compute: cycleSingleAstrand,
  checks: [
    { given: ["male", 25, 30, 150], expect: 45.17, tolerance: 0.005, from: "by hand: 30 · 134 / 89 · 1.00" },
    { given: ["female", 40, 25, 150], expect: 33.52, tolerance: 0.01, from: "by hand: 25 · 126 / 78 · 0.83" },
    {
      given: ["male", 30, 30, 150],
      expect: 42.23,
      tolerance: 0.01,
      from: "by hand, factor midway between 1.00 and 0.87: 30 · 134 / 89 · 0.935",
    },
    { given: ["male", 25, 30, 128], expect: "refused", from: "heart rate below 130" },
    { given: ["male", 70, 30, 150], expect: "refused", from: "factors end at 65" },
  ],
};
