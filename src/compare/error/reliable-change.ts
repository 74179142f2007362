/**
 * Reliable change index.
 *
 *     SEM = SD √(1 − r),   RCI = (after − before) / (SEM √2)
 *
 * |RCI| > 1.96 is the same decision as a change beyond the detectable change when SEM is the typical error. It is here
 * for a laboratory that knows only SD and reliability; the two are never printed as two findings.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Two values and the SD of the reference sample in one unit, reliability r from 0 to below 1; a plain number out. */
export function reliableChange(before: number, after: number, sd: number, reliability: number): number {
  if (!(sd > 0)) throw new OutOfRange(info.id, "SD", sd, "a number above 0");
  requireRange(info.id, "reliability", reliability, 0, 0.9999, "");
  return (after - before) / (standardErrorOfMeasurement(sd, reliability) * Math.SQRT2);
}

/** SD √(1 − r), in the unit of SD. */
export const standardErrorOfMeasurement = (sd: number, reliability: number): number => sd * Math.sqrt(1 - reliability);

export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "reliable-change",
  revision: 1,
  title: "Reliable change index",
  equation: "(after − before)/(SD √(1 − r) √2)",
  inputs: {
    before: { unit: "as the measure", range: "any" },
    after: { unit: "as the measure", range: "any" },
    sd: { unit: "as the measure", range: "above 0" },
    reliability: { unit: "1", range: "0 to below 1" },
  },
  output: { unit: "1", decimals: 2 },
  source: {
    authors: "Jacobson NS, Truax P",
    year: 1991,
    title: "Clinical significance: a statistical approach to defining meaningful change in psychotherapy research",
    journal: "J Consult Clin Psychol 59:12–19",
    where: "reliable change index",
    verified: "memory",
  },
  compute: reliableChange,
  checks: [
    {
      given: [46, 49.5, 5.30555, 0.97],
      expect: 2.69316,
      tolerance: 0.00005,
      from: "by hand: SEM 5.30555 √0.03 = 0.91895; 3.5/(0.91895 √2)",
    },
    { given: [46, 49.5, 5, 1], expect: "refused", from: "perfect reliability leaves no error to divide by" },
  ],
};
