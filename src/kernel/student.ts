/**
 * Student's t, chi-square and F: distribution functions and quantiles, exact to about 1e-10.
 *
 * Degrees of freedom are positive; t also takes Infinity (a spread that is known, not estimated), which is the
 * normal distribution. Quantiles are found by bisection on the distribution function: slower than an approximation
 * and never wrong by one.
 */
import { incompleteBeta, incompleteGamma, upperIncompleteGamma } from "./special-functions.js";

/** P(T ≤ t) for Student's t. */
export function studentCdf(t: number, df: number): number {
  positive("degrees of freedom", df);
  if (Number.isNaN(t)) throw new RangeError("t is not a number");
  const upper = studentUpperTail(Math.abs(t), df);
  return t > 0 ? 1 - upper : upper;
}

/** P(T > t) for t ≥ 0, without loss of digits far out. */
function studentUpperTail(t: number, df: number): number {
  if (t === Number.POSITIVE_INFINITY) return 0;
  if (df === Number.POSITIVE_INFINITY) return 0.5 * upperIncompleteGamma(0.5, (t * t) / 2);
  return 0.5 * incompleteBeta(df / (df + t * t), df / 2, 0.5);
}

/** Quantiles found before, by degrees of freedom and tail: intervals ask for the same few again and again. */
const found = new Map<number, Map<number, number>>();
const MOST_KEPT = 1000;

/** The t below which a share p of the distribution lies; 0 < p < 1. */
export function studentQuantile(p: number, df: number): number {
  positive("degrees of freedom", df);
  share(p);
  if (p === 0.5) return 0;
  const tail = Math.min(p, 1 - p);
  const t = found.get(df)?.get(tail) ?? keep(df, tail);
  return p < 0.5 ? -t : t;
}

function keep(df: number, tail: number): number {
  const t = bisect((x) => tail - studentUpperTail(x, df));
  if (found.size >= MOST_KEPT) found.clear();
  const tails = found.get(df) ?? new Map<number, number>();
  found.set(df, tails.set(tail, t));
  return t;
}

/** P(X ≤ x) for chi-square. */
export function chiSquareCdf(x: number, df: number): number {
  positive("degrees of freedom", df);
  return x <= 0 ? 0 : incompleteGamma(df / 2, x / 2);
}

/** The x below which a share p of chi-square lies; 0 < p < 1. */
export function chiSquareQuantile(p: number, df: number): number {
  positive("degrees of freedom", df);
  share(p);
  return bisect((x) => chiSquareCdf(x, df) - p);
}

/** P(X ≤ x) for the F distribution with df1 and df2 degrees of freedom. */
export function fisherCdf(x: number, df1: number, df2: number): number {
  positive("degrees of freedom", df1);
  positive("degrees of freedom", df2);
  return x <= 0 ? 0 : 1 - incompleteBeta(df2 / (df2 + df1 * x), df2 / 2, df1 / 2);
}

/** The x below which a share p of the F distribution lies; 0 < p < 1. */
export function fisherQuantile(p: number, df1: number, df2: number): number {
  positive("degrees of freedom", df1);
  positive("degrees of freedom", df2);
  share(p);
  return bisect((x) => fisherCdf(x, df1, df2) - p);
}

/** Root of a function that rises from below zero at x = 0: the bracket is doubled, then halved until it cannot shrink. */
function bisect(f: (x: number) => number): number {
  let low = 0;
  let high = 1;
  while (f(high) < 0) {
    low = high;
    high *= 2;
    if (high > 1e300) throw new RangeError("no quantile below 1e300");
  }
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    if (f(middle) < 0) low = middle;
    else high = middle;
  }
}

function positive(what: string, x: number): void {
  if (!(x > 0)) throw new RangeError(`${what} must be above 0, found ${x}`);
}
function share(p: number): void {
  if (!(p > 0 && p < 1)) throw new RangeError(`a quantile needs a share between 0 and 1, found ${p}`);
}
