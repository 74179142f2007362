/**
 * Load after a step of progression.
 *
 *     next = load · (1 + rise/100)      rise 2 to 10 %
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** kg and % to kg. */
export function nextLoad(loadKg: number, risePct: number): number {
  requireRange(info.id, "load", loadKg, 0, 500, "kg");
  requireRange(info.id, "rise", risePct, 2, 10, "%");
  return loadKg * (1 + risePct / 100);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "next-load",
  revision: 1,
  title: "Load after a step of progression",
  equation: "next = load · (1 + rise/100)",
  inputs: { load: { unit: "kg", range: "0 to 500" }, rise: { unit: "%", range: "2 to 10" } },
  output: { unit: "kg", decimals: 1 },
  source: {
    authors: "Ratamess NA, Alvar BA, Evetoch TK et al.",
    year: 2009,
    title: "Progression models in resistance training for healthy adults (position stand)",
    journal: "Med Sci Sports Exerc 41:687–708",
    doi: "10.1249/MSS.0b013e3181915670",
    where: "summary: loads rise by 2 to 10 % once the repetitions are passed",
    verified: "seen",
  },
  compute: nextLoad,
  checks: [
    { given: [60, 2], expect: 61.2, tolerance: 1e-9, from: "by hand: 60·1.02" },
    { given: [60, 10], expect: 66, tolerance: 1e-9, from: "by hand: 60·1.1" },
    { given: [60, 25], expect: "refused", from: "more than the stand's 10 %" },
  ],
};
