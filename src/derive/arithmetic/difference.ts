/** Difference of two values. Plain arithmetic, as a formula so that the chain of a number never breaks. */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

export function difference(later: number, earlier: number): number {
  if (!(Number.isFinite(later) && Number.isFinite(earlier)))
    throw new OutOfRange(info.id, "an input", Number.NaN, "finite numbers");
  return later - earlier;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "difference",
  revision: 1,
  title: "Difference of two values",
  equation: "later − earlier",
  inputs: { later: { unit: "as the measure", range: "any" }, earlier: { unit: "as the measure", range: "any" } },
  output: { unit: "as the measure", decimals: 1 },
  source: { authors: "Waymark", year: null, title: "arithmetic", where: "definition", verified: "own" },
  compute: difference,
  checks: [{ given: [92, 81], expect: 11, tolerance: 0, from: "by hand: 92 − 81" }],
};
