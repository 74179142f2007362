/** A step test of seven speeds (km/h, mmol/L) on which the definitions are checked; the sums were done independently with a numerical library. */
import type { Point } from "./curve.js";

export const WORKED: readonly Point[] = [
  [8, 1.1],
  [9, 1.0],
  [10, 1.2],
  [11, 1.6],
  [12, 2.4],
  [13, 4.0],
  [14, 7.2],
];
