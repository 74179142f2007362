/**
 * The standard normal distribution, exact to about 1e-13: share below a z, and z below which a share lies.
 * Rests on the incomplete gamma function, Φ(z) = 1 − ½·Q(½, z²/2) for z ≥ 0 (Abramowitz & Stegun 1964, 26.2.30 and
 * 6.5.17), so no approximation with a fixed number of digits stands between a z and its percentile.
 */
import { upperIncompleteGamma } from "./special-functions.js";

/** Φ(z): share of a standard normal distribution below z, 0 to 1. Throws RangeError for NaN. */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) throw new RangeError("z is not a number");
  const tail = upperTail(Math.abs(z));
  return z > 0 ? 1 - tail : tail;
}

/** The z below which a share p of the distribution lies; 0 < p < 1, else RangeError. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`a quantile needs a share between 0 and 1, found ${p}`);
  if (p === 0.5) return 0;
  const tail = Math.min(p, 1 - p);
  const z = fromUpperTail(tail);
  return p < 0.5 ? -z : z;
}

/** Height of the standard normal curve at z. */
export const normalDensity = (z: number): number => Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);

/** P(Z > z) for z ≥ 0, without loss of digits far out. */
const upperTail = (z: number) => 0.5 * upperIncompleteGamma(0.5, (z * z) / 2);

/** Newton's step kept inside a bracket that halves when the step would leave it: it cannot diverge. */
function fromUpperTail(tail: number): number {
  let low = 0;
  let high = 40;
  let z = 1;
  for (let i = 0; i < 200; i++) {
    const excess = upperTail(z) - tail;
    if (excess > 0) low = z;
    else high = z;
    const newton = z + excess / normalDensity(z);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - z) <= 1e-15 * Math.max(1, z)) return next;
    z = next;
  }
  return z;
}
