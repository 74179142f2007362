/**
 * Load at a fixed lactate concentration.
 *
 *     the load at which the straight pieces between steps last cross 2 or 4 mmol/L
 *
 * The same number for everybody, although the lactate that can be held varies from about 2 to 8 mmol/L between people
 * (4.9 ± 1.4 in 33 men, Beneke 2000).
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { lastCrossing, type Point, requireCurve } from "./curve.js";
import { WORKED } from "./worked-example.js";

/** Points in rising load and the level in mmol/L in, load out. Throws OutOfRange for fewer than five steps, falling lactate, or a level the data do not cross. */
export function fixedLactate(points: readonly Point[], level: number): number {
  requireRange(info.id, "the level", level, 1.5, 6, "mmol/L");
  requireCurve(info.id, points, 5);
  return lastCrossing(info.id, points, level);
}

export const info: FormulaInfo<[readonly Point[], number], number> = {
  id: "fixed-lactate",
  revision: 1,
  title: "Load at a fixed lactate",
  equation: "load where lactate last crosses the level, straight between steps",
  inputs: { steps: { unit: "load, mmol/L", range: "five or more" }, level: { unit: "mmol/L", range: "1.5 to 6" } },
  output: { unit: "W or km/h", decimals: 1 },
  source: {
    authors: "Sjödin B, Jacobs I; Heck H and others",
    year: "1981, 1985",
    title:
      "Onset of blood lactate accumulation and marathon running performance; Justification of the 4-mmol/l lactate threshold",
    journal: "Int J Sports Med 2:23–26; 6:117–130",
    where: "definition",
    verified: "memory",
  },
  compute: fixedLactate,
  checks: [
    { given: [WORKED, 2], expect: 11.5, tolerance: 1e-9, from: "by hand: 11 + (2.0 − 1.6)/(2.4 − 1.6)" },
    { given: [WORKED, 4], expect: 13, tolerance: 1e-9, from: "by hand: the step of 13 km/h has 4.0" },
    { given: [WORKED.slice(0, 5), 4], expect: "refused", from: "2.4 at the last step does not reach 4" },
    { given: [WORKED.slice(2, 6), 4], expect: "refused", from: "four steps" },
  ],
};
