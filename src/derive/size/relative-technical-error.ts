/**
 * Technical error as a share of the mean of all readings, so that sites of different thickness can be compared.
 *
 *     relative TEM = 100 · TEM / mean
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Relative technical error of measurement: %. Throws OutOfRange outside the ranges in `info`. */
export function relativeTechnicalError(technicalError: number, meanOfReadings: number): number {
  requireRange(info.id, "technical error", technicalError, 0, 1000, "as the measure");
  requireRange(info.id, "mean of readings", meanOfReadings, 0.1, 1000, "as the measure");
  return (100 * technicalError) / meanOfReadings;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "relative-technical-error",
  revision: 1,
  title: "Relative technical error of measurement",
  equation: "100 · TEM / mean",
  inputs: {
    "technical error": { unit: "as the measure", range: "0 to 1000" },
    "mean of readings": { unit: "as the measure", range: "0.1 to 1000" },
  },
  output: { unit: "%", decimals: 1 },
  source: {
    authors: "Perini TA, de Oliveira GL, Ornellas JS, de Oliveira FP",
    year: 2005,
    title: "Technical error of measurement in anthropometry",
    journal: "Rev Bras Med Esporte 11(1)",
    doi: "10.1590/S1517-86922005000100009",
    where: "methods",
    verified: "memory",
  },
  compute: relativeTechnicalError,
  checks: [{ given: [0.2683, 12], expect: 2.236, tolerance: 0.001, from: "by hand: 100 · 0.2683 / 12" }],
};
