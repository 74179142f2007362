/**
 * Lactate threshold by the largest distance from a chord (D-max).
 *
 *     p = third-order polynomial by least squares through all steps
 *     chord from the first to the last measured point
 *     threshold: the load inside the chord at which p lies farthest below it
 *
 * Perpendicular and vertical distance from a straight chord are largest at the same load, so p′(load) = slope of the
 * chord is solved. A test that stops early shortens the chord and lowers the answer: the last lactate must pass 4.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { fitCubic } from "./cubic.js";
import { at, type Point, requireCurve } from "./curve.js";
import { WORKED } from "./worked-example.js";

const LEAST_LAST_LACTATE = 4;
/** A bow shallower than this, in mmol/L, is less than the analyser can show. */
const LEAST_DEPTH = 0.05;

/** Points in rising load in, load out. Throws OutOfRange for fewer than five steps, falling lactate, a last lactate up to 4 mmol/L, or a curve that does not bow below its chord. */
export function dmax(points: readonly Point[]): number {
  requireCurve(info.id, points, 5);
  return farthestBelowChord(info.id, points, 0);
}

/** The same with the chord starting at point `from`; the polynomial still runs through all points. */
export function farthestBelowChord(formula: string, points: readonly Point[], from: number): number {
  const [x1, y1] = at(points, from);
  const [x2, y2] = at(points, points.length - 1);
  if (!(y2 > LEAST_LAST_LACTATE))
    throw new OutOfRange(
      formula,
      "the last lactate",
      `${y2.toFixed(1)} mmol/L`,
      `tests that end above ${LEAST_LAST_LACTATE} mmol/L`,
    );
  const slope = (y2 - y1) / (x2 - x1);
  const curve = fitCubic(points);
  const depth = (x: number) => y1 + slope * (x - x1) - curve.value(x);
  const candidates = curve.whereSlope(slope).filter((x) => x > x1 && x < x2 && depth(x) > LEAST_DEPTH);
  const best = candidates.reduce<number | undefined>(
    (b, x) => (b === undefined || depth(x) > depth(b) ? x : b),
    undefined,
  );
  if (best === undefined)
    throw new OutOfRange(formula, "the curve", "not below its chord", "curves that bow below the chord");
  return best;
}

const exact: readonly Point[] = [100, 140, 180, 220, 260, 300].map((x) => [x, 1 + 1e-6 * (x - 100) ** 3]);
export const info: FormulaInfo<[readonly Point[]], number> = {
  id: "dmax",
  revision: 1,
  title: "Lactate threshold by the largest distance from a chord (D-max)",
  equation: "load where the third-order polynomial lies farthest below the chord of first and last point",
  inputs: { steps: { unit: "load, mmol/L", range: "five or more, last above 4 mmol/L" } },
  output: { unit: "W or km/h", decimals: 1 },
  caveat: "It depends on where the test began and ended.",
  source: {
    authors: "Cheng B, Kuipers H, Snyder AC, Keizer HA, Jeukendrup A, Hesselink M",
    year: 1992,
    title: "A new approach for the determination of ventilatory and lactate thresholds",
    journal: "Int J Sports Med 13:518–522",
    where: "definition",
    verified: "memory",
  },
  compute: dmax,
  checks: [
    {
      given: [exact],
      expect: 215.47,
      tolerance: 0.005,
      from: "by hand: 1 + 1e-6(x − 100)³ on 100 to 300 W; 3e-6·d² = 0.04, d = 115.47",
    },
    { given: [WORKED], expect: 11.69, tolerance: 0.01, from: "worked example computed independently" },
    { given: [WORKED.slice(0, 6)], expect: "refused", from: "the last lactate, 4.0, does not pass 4" },
    {
      given: [exact.map(([x]): Point => [x, x / 40])],
      expect: "refused",
      from: "a straight line has no largest distance",
    },
  ],
};
