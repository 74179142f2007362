/**
 * Fall of oxygen saturation in exercise.
 *
 *     fall = SpO2 at rest − lowest SpO2 in exercise        points
 *
 * A pulse oximeter errs by 2 to 3 points and by more with movement or a cold finger; the lowest is a 15-s mean, never
 * a single reading of a series. Above about 1500 m saturation is lower from the start: read it against altitude.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** % both in, points out. */
export function saturationFall(rest: number, lowest: number): number {
  requireRange(info.id, "saturation at rest", rest, 50, 100, "%");
  requireRange(info.id, "lowest saturation", lowest, 40, 100, "%");
  return rest - lowest;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "saturation-fall",
  revision: 1,
  title: "Fall of oxygen saturation",
  equation: "SpO2 at rest − lowest SpO2",
  inputs: { rest: { unit: "%", range: "50 to 100" }, lowest: { unit: "%", range: "40 to 100" } },
  output: { unit: "points", decimals: 0 },
  caveat:
    "Four points or more, or 88 % and below, are the usual limits near sea level (from memory, to be checked against the source).",
  source: {
    authors: "American Thoracic Society and American College of Chest Physicians; Dempsey JA, Wagner PD",
    year: "1999, 2003",
    title: "Statement on cardiopulmonary exercise testing; Exercise-induced arterial hypoxemia",
    journal: "J Appl Physiol 87:1997–2006",
    doi: "10.1152/jappl.1999.87.6.1997",
    where: "limits of a fall",
    verified: "memory",
  },
  compute: saturationFall,
  checks: [{ given: [98, 93], expect: 5, tolerance: 0, from: "by hand: 98 − 93" }],
};
