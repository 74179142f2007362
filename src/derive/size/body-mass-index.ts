/**
 * Body mass index (Quetelet's index).
 *
 *     BMI = mass / stature²
 *
 * Mass over squared stature is nearly independent of stature in adults, which is its whole merit: it says how heavy
 * a person is for their height, not of what. A muscular client is heavy without being fat.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** kg and cm in, kg/m² out. Adults' sizes only; throws OutOfRange elsewhere. */
export function bodyMassIndex(massKg: number, statureCm: number): number {
  requireRange(info.id, "body mass", massKg, 25, 350, "kg");
  requireRange(info.id, "stature", statureCm, 100, 250, "cm");
  return massKg / (statureCm / 100) ** 2;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "body-mass-index",
  revision: 1,
  title: "Body mass index",
  equation: "BMI = mass / stature²",
  inputs: { mass: { unit: "kg", range: "25 to 350" }, stature: { unit: "cm", range: "100 to 250" } },
  output: { unit: "kg/m²", decimals: 1 },
  caveat: "It does not tell muscle from fat.",
  source: {
    authors: "World Health Organization",
    year: 2000,
    title: "Obesity: preventing and managing the global epidemic",
    journal: "WHO Technical Report Series 894",
    where: "definition of BMI",
    verified: "seen",
  },
  compute: bodyMassIndex,
  checks: [{ given: [70, 175], expect: 22.857, tolerance: 0.001, from: "by hand: 70 / 1.75² = 70 / 3.0625" }],
};
