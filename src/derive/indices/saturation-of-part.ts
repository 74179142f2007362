/**
 * Oxygen saturation of a part of the test: the mean at rest, the lowest in exercise.
 *
 *     rest = mean of readings · exercise = lowest of readings, each a typed reading or a fifteen-second mean
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { mean } from "../../kernel/statistics.js";

/** % in and out. Throws OutOfRange for no reading or one outside 40 to 100 %. */
export function saturationOfPart(part: "rest" | "exercise", readings: readonly number[]): number {
  if (readings.length === 0) throw new OutOfRange(info.id, "the number of readings", 0, "one or more");
  for (const reading of readings) requireRange(info.id, "a reading", reading, 40, 100, "%");
  return part === "rest" ? mean(readings) : Math.min(...readings);
}

export const info: FormulaInfo<["rest" | "exercise", readonly number[]], number> = {
  id: "saturation-of-part",
  revision: 1,
  title: "Oxygen saturation at rest and in exercise",
  equation: "mean at rest · lowest in exercise",
  inputs: { part: { unit: "", range: "rest, exercise" }, readings: { unit: "%", range: "40 to 100" } },
  output: { unit: "%", decimals: 0 },
  source: {
    authors: "this project",
    year: null,
    title: "Definition",
    where: "common practice",
    verified: "common practice",
  },
  compute: saturationOfPart,
  checks: [
    { given: ["rest", [98, 97, 99]], expect: 98, tolerance: 1e-9, from: "by hand: 294 / 3" },
    { given: ["exercise", [97, 93, 95]], expect: 93, tolerance: 0, from: "by hand: the lowest" },
    { given: ["exercise", []], expect: "refused", from: "no reading" },
  ],
};
