/**
 * Grade of a spirometry session, for FEV1 and FVC apart (adults).
 *
 *     A  3 or more acceptable, two largest within 0.150 L     D  2 or more within 0.250 L
 *     B  2 acceptable within 0.150 L                          E  1 acceptable, or 2 or more beyond 0.250 L
 *     C  2 or more within 0.200 L                             U  none acceptable but some usable · F  none
 *
 * The grade says how much weight a value bears; a low grade is about the test, not about the lungs.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { compareAtDecimals } from "../../kernel/rounding.js";
import { twoLargestApart } from "./two-largest-apart.js";

export type Grade = "A" | "B" | "C" | "D" | "E" | "U" | "F";

/** Values (L, BTPS) of the acceptable manoeuvres, and how many more are usable. Compared to the millilitre. */
export function sessionGrade(acceptable: readonly number[], usable: number): Grade {
  requireRange(info.id, "usable manoeuvres", usable, 0, 12, "");
  if (acceptable.length === 0) return usable > 0 ? "U" : "F";
  if (acceptable.length === 1) return "E";
  const apart = twoLargestApart(acceptable);
  const within = (limit: number) => compareAtDecimals(apart, limit, 3) <= 0;
  if (within(0.15)) return acceptable.length >= 3 ? "A" : "B";
  if (within(0.2)) return "C";
  return within(0.25) ? "D" : "E";
}

const number = (grade: Grade): number => "ABCDEUF".indexOf(grade);

export const info: FormulaInfo<[readonly number[], number], Grade> = {
  id: "session-grade",
  revision: 1,
  title: "Grade of a spirometry session",
  equation: "A to F by number of acceptable manoeuvres and difference of the two largest (0.150, 0.200, 0.250 L)",
  inputs: {
    acceptable: { unit: "L, BTPS", range: "values of the acceptable manoeuvres" },
    usable: { unit: "manoeuvres", range: "0 to 12 that are usable and not acceptable" },
  },
  output: { unit: "grade", decimals: 0 },
  caveat: "Grades E, U and F are from memory, to be checked against the source.",
  source: {
    authors: "Graham BL, Steenbruggen I, Miller MR, et al.",
    year: 2019,
    title: "Standardization of spirometry 2019 update. An official ATS/ERS technical statement",
    journal: "Am J Respir Crit Care Med 200(8):e70–e88",
    doi: "10.1164/rccm.201908-1590ST",
    where: "grading table, adults: A to D as reprinted on an occupational spirometry page",
    verified: "seen",
  },
  compute: sessionGrade,
  checks: [
    { given: [[4.1, 4.25, 4.05], 0], expect: 0, tolerance: 0, pick: number, from: "grade A: three within 0.150 L" },
    { given: [[4.1, 4.25], 0], expect: 1, tolerance: 0, pick: number, from: "grade B: two within 0.150 L" },
    { given: [[4.1, 4.251, 3.9], 0], expect: 2, tolerance: 0, pick: number, from: "grade C: 0.151 L apart" },
    { given: [[4.0, 4.25], 0], expect: 3, tolerance: 0, pick: number, from: "grade D: 0.250 L apart" },
    { given: [[4.0, 4.251], 0], expect: 4, tolerance: 0, pick: number, from: "grade E: beyond 0.250 L" },
    { given: [[4.0], 2], expect: 4, tolerance: 0, pick: number, from: "grade E: one acceptable" },
    { given: [[], 1], expect: 5, tolerance: 0, pick: number, from: "grade U: usable only" },
    { given: [[], 0], expect: 6, tolerance: 0, pick: number, from: "grade F: none" },
  ],
};
