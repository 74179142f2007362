/**
 * Lactate threshold by modified D-max.
 *
 *     as D-max, but the chord starts at the measured point before the first rise greater than 0.4 mmol/L
 *
 * A flat or falling start no longer tilts the chord. "Greater" is strict: a rise of exactly 0.4 does not count, and
 * rises are compared in hundredths, because 1.6 − 1.2 is above 0.4 in binary arithmetic.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { compareAtDecimals } from "../../kernel/rounding.js";
import { at, type Point, requireCurve } from "./curve.js";
import { farthestBelowChord } from "./dmax.js";
import { WORKED } from "./worked-example.js";

const RISE = 0.4;

/** Points in rising load in, load out. Throws OutOfRange as D-max does, and when no step rises by more than 0.4 mmol/L before the last. */
export function modifiedDmax(points: readonly Point[]): number {
  requireCurve(info.id, points, 5);
  const start = firstRise(points);
  if (start >= points.length - 2)
    throw new OutOfRange(
      info.id,
      "the first rise above 0.4 mmol/L",
      "in the last step or absent",
      "tests in which it comes earlier",
    );
  return farthestBelowChord(info.id, points, start);
}

/** Index of the point before the first rise greater than 0.4 mmol/L; the last index when there is none. */
function firstRise(points: readonly Point[]): number {
  for (let i = 0; i + 1 < points.length; i++)
    if (compareAtDecimals(at(points, i + 1)[1] - at(points, i)[1], RISE, 2) > 0) return i;
  return points.length - 1;
}

export const info: FormulaInfo<[readonly Point[]], number> = {
  id: "modified-dmax",
  revision: 1,
  title: "Lactate threshold by modified D-max",
  equation: "as D-max, chord from the point before the first rise > 0.4 mmol/L",
  inputs: { steps: { unit: "load, mmol/L", range: "five or more, last above 4 mmol/L" } },
  output: { unit: "W or km/h", decimals: 1 },
  source: {
    authors: "Bishop D, Jenkins DG, Mackinnon LT",
    year: 1998,
    title: "The relationship between plasma lactate parameters, Wpeak and 1-h cycling performance in women",
    journal: "Med Sci Sports Exerc 30:1270–1275",
    where: "definition",
    verified: "memory",
  },
  compute: modifiedDmax,
  checks: [
    {
      given: [WORKED],
      expect: 12.59,
      tolerance: 0.01,
      from: "worked example computed independently: chord from 11 km/h, since 1.2 to 1.6 is not more than 0.4",
    },
    { given: [WORKED.slice(0, 4)], expect: "refused", from: "four steps" },
  ],
};
