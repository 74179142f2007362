/** A percentage of a value. Plain arithmetic, as a formula so that the chain of a number never breaks. */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

export function percentOf(value: number, percent: number): number {
  if (!(Number.isFinite(value) && Number.isFinite(percent)))
    throw new OutOfRange(info.id, "an input", Number.NaN, "finite numbers");
  return (value * percent) / 100;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "percent-of",
  revision: 1,
  title: "A percentage of a value",
  equation: "value · percent / 100",
  inputs: { value: { unit: "as the measure", range: "any" }, percent: { unit: "as the measure", range: "any" } },
  output: { unit: "as the measure", decimals: 1 },
  source: { authors: "Waymark", year: null, title: "arithmetic", where: "definition", verified: "own" },
  compute: percentOf,
  checks: [{ given: [46, 75], expect: 34.5, tolerance: 1e-9, from: "by hand: 46 · 0.75" }],
};
