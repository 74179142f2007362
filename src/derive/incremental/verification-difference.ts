/**
 * Verification bout against the incremental peak.
 *
 *     d = 100 · (VO2 verification − VO2 incremental) / VO2 incremental
 *
 * Within 3 % the two agree and the peak is a maximum. Above, the incremental test was not maximal. Below, the bout
 * neither confirms nor refutes: it was too short or the client too tired.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

export function verificationDifference(verification: number, incremental: number): number {
  requireRange(info.id, "uptake of the bout", verification, 0.2, 10, "L/min");
  requireRange(info.id, "incremental peak", incremental, 0.2, 10, "L/min");
  return (100 * (verification - incremental)) / incremental;
}

/** Agreement limit, %. */
export const AGREEMENT = 3;

export const info: FormulaInfo<[number, number], number> = {
  id: "verification-difference",
  revision: 1,
  title: "Verification bout against the incremental peak",
  equation: "d = 100 · (VO2 verification − VO2 incremental) / VO2 incremental; agreement within 3 %",
  inputs: {
    verification: { unit: "L/min", range: "0.2 to 10" },
    incremental: { unit: "L/min", range: "0.2 to 10" },
  },
  output: { unit: "%", decimals: 1 },
  caveat: "3 % is less than the typical error of two tests on different days (4 to 5 %).",
  source: {
    authors: "Costa VAB, Midgley AW, Carroll S, et al.",
    year: 2021,
    title: "Is a verification phase useful for confirming maximal oxygen uptake in apparently healthy adults?",
    journal: "PLoS One 16(2):e0247057",
    doi: "10.1371/journal.pone.0247057",
    where: "group means of both do not differ (read); the 3 % limit is from memory",
    verified: "memory",
  },
  compute: verificationDifference,
  checks: [
    { given: [3.58, 3.52], expect: 1.7, tolerance: 0.05, from: "by hand: 0.06 / 3.52 = 1.7 %" },
    { given: [0, 3.5], expect: "refused", from: "no uptake, no comparison" },
  ],
};
