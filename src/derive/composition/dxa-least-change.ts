/**
 * Least change that is beyond measurement error with 95 % confidence.
 *
 *     LSC = 1.96 · √2 · precision error = 2.77 · precision error
 *
 * The precision error is the root-mean-square SD of repeated scans with repositioning (15 people three times or
 * 30 people twice), made by the laboratory on its own scanner.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Least significant change of a scan from its precision error: as the measure. Throws OutOfRange outside the ranges in `info`. */
export function dxaLeastChange(precisionError: number): number {
  requireRange(info.id, "precision error", precisionError, 0, 100, "as the measure");
  return 2.77 * precisionError; // the rounded factor of the official positions
}

export const info: FormulaInfo<[number], number> = {
  id: "dxa-least-change",
  revision: 1,
  title: "Least significant change of a scan from its precision error",
  equation: "LSC = 2.77 · precision error",
  inputs: { "precision error": { unit: "as the measure", range: "0 to 100" } },
  output: { unit: "as the measure", decimals: 2 },
  source: {
    authors: "Hangartner TN, Warner S, Braillon P, Jankowski L, Shepherd J; Petak S, et al.",
    year: 2013,
    title: "The Official Positions of the International Society for Clinical Densitometry: body composition analysis",
    journal: "J Clin Densitom 16(4):496–519",
    doi: "10.1016/j.jocd.2013.08.018",
    where: "precision assessment: LSC = 2.77 × precision error",
    verified: "memory",
  },
  compute: dxaLeastChange,
  checks: [
    {
      given: [0.25],
      expect: 0.6925,
      tolerance: 0.0001,
      from: "by hand: 2.77 · 0.25 kg of fat; a loss of 0.9 kg is beyond it",
    },
    {
      given: [0.48],
      expect: 1.3296,
      tolerance: 0.0001,
      from: "by hand: 0.8 % of 60 kg of lean; a gain of 1.0 kg is not beyond it",
    },
  ],
};
