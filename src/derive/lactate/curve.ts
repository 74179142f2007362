/** What every lactate definition works on: points (load, lactate) in rising order of load. */
import { OutOfRange } from "../../kernel/formula.js";
import { compareAtDecimals } from "../../kernel/rounding.js";

export type Point = readonly [load: number, lactate: number];
/** A rise or fall beyond this is more than the analyser's own error (about 0.3 to 0.4 mmol/L). */
const ANALYSER_ERROR = 0.4;

/** Refuses fewer than `least` points, loads that do not rise, and lactate that falls by more than the analyser's error after its lowest point. */
export function requireCurve(formula: string, points: readonly Point[], least: number): void {
  if (points.length < least)
    throw new OutOfRange(formula, "the number of steps with lactate", points.length, `${least} or more`);
  for (let i = 1; i < points.length; i++)
    if (at(points, i)[0] <= at(points, i - 1)[0])
      throw new OutOfRange(formula, "the load", `not rising at step ${i + 1}`, "loads that rise from step to step");
  for (let i = lowest(points) + 1; i < points.length; i++) {
    const fall = at(points, i - 1)[1] - at(points, i)[1];
    if (compareAtDecimals(fall, ANALYSER_ERROR, 2) > 0)
      throw new OutOfRange(
        formula,
        "lactate",
        `falling by ${fall.toFixed(2)} mmol/L at step ${i + 1}`,
        `curves that do not fall by more than ${ANALYSER_ERROR} mmol/L once they have begun to rise`,
      );
  }
}

/** Index of the lowest lactate; of equal ones the last, so that a flat start counts as baseline. */
export function lowest(points: readonly Point[]): number {
  return points.reduce((best, [, y], i) => (y <= at(points, best)[1] ? i : best), 0);
}

export function at(points: readonly Point[], i: number): Point {
  const point = points[i];
  if (point === undefined) throw new RangeError(`no point ${i} of ${points.length}`);
  return point;
}

/** Load at which the straight pieces between points last cross `level` upward. Throws OutOfRange when the data do not reach across it. */
export function lastCrossing(formula: string, points: readonly Point[], level: number): number {
  const [, last] = at(points, points.length - 1);
  const text = `${level.toFixed(1)} mmol/L`;
  if (last < level)
    throw new OutOfRange(formula, "the last lactate", `${last.toFixed(1)} mmol/L`, `tests that reach ${text}`);
  for (let i = points.length - 1; i > 0; i--) {
    const [x1, y1] = at(points, i - 1);
    const [x2, y2] = at(points, i);
    if (y1 < level && y2 >= level) return x1 + ((x2 - x1) * (level - y1)) / (y2 - y1);
  }
  throw new OutOfRange(
    formula,
    "the first lactate",
    `${at(points, 0)[1].toFixed(1)} mmol/L`,
    `tests that begin below ${text}`,
  );
}
