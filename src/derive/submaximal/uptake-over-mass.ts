/**
 * An uptake in mL/min over body mass.
 *
 *     VO2 / mass
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Uptake over body mass: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function uptakeOverMass(uptakeMlMin: number, massKg: number): number {
  requireRange(info.id, "uptake", uptakeMlMin, 100, 8000, "mL/min");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  return uptakeMlMin / massKg;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "uptake-over-mass",
  revision: 1,
  title: "Uptake over body mass",
  equation: "VO2 / mass",
  inputs: { uptake: { unit: "mL/min", range: "100 to 8000" }, "body mass": { unit: "kg", range: "30 to 200" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  source: {
    authors: "definition",
    year: null,
    title: "Uptake over body mass",
    where: "share per kilogram",
    verified: "common practice",
  },
  compute: uptakeOverMass,
  checks: [
    { given: [2709.7, 80], expect: 33.871, tolerance: 0.001, from: "by hand" },
    { given: [2.7, 80], expect: "refused", from: "litres" },
  ],
};
