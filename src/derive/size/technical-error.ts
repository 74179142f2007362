/**
 * Technical error of measurement from duplicate readings.
 *
 *     TEM = √(Σd² / 2n),  d = second − first reading, n = number of pairs
 *
 * The spread of one reading about the true value. Unlike the typical error it does not remove a shift between the
 * first and the second round, so it counts such a shift as error.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** Technical error of measurement of duplicates: as the measure. Throws OutOfRange outside the ranges in `info`. */
export function technicalError(differences: readonly number[]): number {
  if (differences.length === 0) throw new OutOfRange(info.id, "pairs", 0, "one or more");
  return Math.sqrt(differences.reduce((sum, d) => sum + d * d, 0) / (2 * differences.length));
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "technical-error",
  revision: 1,
  title: "Technical error of measurement of duplicates",
  equation: "TEM = √(Σd² / 2n)",
  inputs: { differences: { unit: "as the measure", range: "one or more pairs" } },
  output: { unit: "as the measure", decimals: 2 },
  source: {
    authors: "Perini TA, de Oliveira GL, Ornellas JS, de Oliveira FP",
    year: 2005,
    title: "Technical error of measurement in anthropometry",
    journal: "Rev Bras Med Esporte 11(1)",
    doi: "10.1590/S1517-86922005000100009",
    where: "methods",
    verified: "memory",
  },
  compute: technicalError,
  checks: [
    {
      given: [[0.4, -0.2, 0.6, 0, -0.4]],
      expect: 0.2683,
      tolerance: 0.0001,
      from: "by hand: Σd² = 0.72; √(0.72 / 10)",
    },
    { given: [[]], expect: "refused", from: "no pair was read" },
  ],
};
