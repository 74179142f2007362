/** One value as a percentage of another. Plain arithmetic, as a formula so that the chain of a number never breaks. */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

export function sharePercent(part: number, whole: number): number {
  if (!(whole > 0 && Number.isFinite(part))) throw new OutOfRange(info.id, "whole", whole, "a positive number");
  return (100 * part) / whole;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "share-percent",
  revision: 1,
  title: "One value as a percentage of another",
  equation: "100 · part / whole",
  inputs: { part: { unit: "as the measure", range: "any" }, whole: { unit: "as the measure", range: "any" } },
  output: { unit: "%", decimals: 0 },
  source: { authors: "Waymark", year: null, title: "arithmetic", where: "definition", verified: "own" },
  compute: sharePercent,
  checks: [
    { given: [27, 36], expect: 75, tolerance: 1e-9, from: "by hand: 27 / 36" },
    { given: [1, 0], expect: "refused", from: "a share of nothing" },
  ],
};
