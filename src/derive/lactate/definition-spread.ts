/**
 * Spread between lactate definitions on one test.
 *
 *     100 · (highest load − lowest load) / ((highest + lowest) / 2)
 *
 * Definitions answer different questions, so a spread of a third is common: six methods on one ramp test were 70 W
 * apart on average (Yaeger 2018). It warns against comparing one definition with another.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** Loads in one unit in, % out. Throws OutOfRange for fewer than two. */
export function definitionSpread(loads: readonly number[]): number {
  if (loads.length < 2) throw new OutOfRange(info.id, "the number of definitions", loads.length, "two or more");
  const [low, high] = [Math.min(...loads), Math.max(...loads)];
  return (100 * (high - low)) / ((high + low) / 2);
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "definition-spread",
  revision: 1,
  title: "Spread between lactate definitions",
  equation: "100·(highest − lowest) / middle of the two",
  inputs: { loads: { unit: "W or km/h", range: "two or more" } },
  output: { unit: "%", decimals: 0 },
  source: {
    authors: "this project",
    year: null,
    title: "Range over midpoint",
    where: "rule stated above",
    verified: "own",
  },
  compute: definitionSpread,
  checks: [
    { given: [[180, 220]], expect: 20, tolerance: 1e-9, from: "by hand: 40 / 200" },
    { given: [[180]], expect: "refused", from: "one definition has no spread" },
  ],
};
