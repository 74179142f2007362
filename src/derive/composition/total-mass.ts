/**
 * Mass of one or more parts of a scan, in kilograms.
 *
 *     Σ parts / 1000
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** Mass of parts of the body: kg. Throws OutOfRange outside the ranges in `info`. */
export function totalMass(partsG: readonly number[]): number {
  if (partsG.length === 0) throw new OutOfRange(info.id, "parts", 0, "one or more");
  for (const part of partsG) if (!(part > 0)) throw new OutOfRange(info.id, "part", part, "masses above 0 g");
  return partsG.reduce((sum, part) => sum + part, 0) / 1000;
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "total-mass",
  revision: 1,
  title: "Mass of parts of the body",
  equation: "Σ parts / 1000",
  inputs: { parts: { unit: "g", range: "each above 0" } },
  output: { unit: "kg", decimals: 1 },
  source: {
    authors: "definition",
    year: null,
    title: "Sum of masses",
    where: "grams to kilograms",
    verified: "common practice",
  },
  compute: totalMass,
  checks: [
    { given: [[39910, 3261]], expect: 43.171, tolerance: 1e-9, from: "by hand: 39 910 + 3 261 g" },
    { given: [[39910, 0]], expect: "refused", from: "a part of 0 g was not measured" },
  ],
};
