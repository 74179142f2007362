/**
 * Maximal voluntary ventilation estimated from spirometry.
 *
 *     MVV = 40 · FEV1        L/min, L
 *
 * An estimate: 35 and 37.5 are in use too. A measured value goes before it.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** L in, L/min out. Throws OutOfRange outside 0.5 to 8 L. */
export function mvvFromFev1(fev1: number): number {
  requireRange(info.id, "FEV1", fev1, 0.5, 8, "L");
  return 40 * fev1;
}

export const info: FormulaInfo<[number], number> = {
  id: "mvv-from-fev1",
  revision: 1,
  title: "Maximal voluntary ventilation from FEV1",
  equation: "MVV = 40·FEV1",
  inputs: { FEV1: { unit: "L", range: "0.5 to 8" } },
  output: { unit: "L/min", decimals: 0 },
  caveat: "An estimate from memory, to be checked against the source; factors of 35 and 37.5 are in use too.",
  source: {
    authors: "American Thoracic Society and American College of Chest Physicians",
    year: 2003,
    title: "Statement on cardiopulmonary exercise testing",
    journal: "Am J Respir Crit Care Med 167:211–277",
    where: "estimation of MVV",
    verified: "memory",
  },
  compute: mvvFromFev1,
  checks: [
    { given: [4.2], expect: 168, tolerance: 1e-9, from: "by hand: 40·4.2" },
    { given: [4200], expect: "refused", from: "millilitres" },
  ],
};
