/**
 * Elementary statistics on plain arrays. Every function refuses what it cannot answer (RangeError) rather than returning NaN.
 */
const need = (xs: ArrayLike<number>, least: number, what: string) => {
  if (xs.length < least) throw new RangeError(`${what} needs at least ${least} values, found ${xs.length}`);
};

export function mean(xs: ArrayLike<number>): number {
  need(xs, 1, "mean");
  let sum = 0;
  for (let i = 0; i < xs.length; i++) sum += xs[i] as number;
  return sum / xs.length;
}

/** Sum of squared deviations from the mean (two passes, so that a large offset costs no digits). */
function sumOfSquares(xs: ArrayLike<number>): number {
  const m = mean(xs);
  let sum = 0;
  for (let i = 0; i < xs.length; i++) sum += ((xs[i] as number) - m) ** 2;
  return sum;
}

/** Sample standard deviation, divisor n − 1. */
export function sampleSd(xs: ArrayLike<number>): number {
  need(xs, 2, "standard deviation");
  return Math.sqrt(sumOfSquares(xs) / (xs.length - 1));
}

export function median(xs: ArrayLike<number>): number {
  return quantile(xs, 0.5);
}

/** Median of values without NaN, the same as median(); puts them in another order, and is done without sorting them. */
export function medianInPlace(xs: Float64Array): number {
  need(xs, 1, "median");
  const half = xs.length >> 1;
  // Hoare's selection: values are parted about one of them until the middle one stands in its place.
  let left = 0;
  let right = xs.length - 1;
  while (left < right) {
    const pivot = xs[(left + right) >> 1] as number;
    let low = left;
    let high = right;
    while (low <= high) {
      while ((xs[low] as number) < pivot) low++;
      while ((xs[high] as number) > pivot) high--;
      if (low > high) break;
      const x = xs[low] as number;
      xs[low++] = xs[high] as number;
      xs[high--] = x;
    }
    if (high < half) left = low;
    if (low > half) right = high;
  }
  const upper = xs[half] as number;
  if (xs.length % 2 === 1) return upper;
  let lower = xs[0] as number;
  for (let i = 1; i < half; i++) if ((xs[i] as number) > lower) lower = xs[i] as number;
  return lower + (upper - lower) / 2;
}

/** Quantile by linear interpolation between order statistics, position (n − 1)·p (Hyndman & Fan type 7). p in 0…1. */
export function quantile(xs: ArrayLike<number>, p: number): number {
  need(xs, 1, "quantile");
  if (!(p >= 0 && p <= 1)) throw new RangeError(`quantile fraction ${p} is outside 0 to 1`);
  const sorted = new Float64Array(xs).sort();
  const at = (sorted.length - 1) * p;
  const low = Math.floor(at);
  const a = sorted[low] as number;
  const b = sorted[Math.min(low + 1, sorted.length - 1)] as number;
  return a + (b - a) * (at - low);
}

export interface Line {
  readonly slope: number;
  readonly intercept: number;
  /** Residual sum of squares. */
  readonly rss: number;
  readonly n: number;
  /** Standard error of the slope; Infinity when n is 2. */
  readonly slopeSe: number;
}

/** Ordinary least-squares line of y on x. Refuses fewer than two points or x without spread. */
export function fitLine(x: ArrayLike<number>, y: ArrayLike<number>): Line {
  need(x, 2, "a line");
  if (x.length !== y.length)
    throw new RangeError(`a line needs x and y of one length, found ${x.length} and ${y.length}`);
  const mx = mean(x);
  const my = mean(y);
  let sxx = 0;
  let sxy = 0;
  let syy = 0;
  for (let i = 0; i < x.length; i++) {
    const dx = (x[i] as number) - mx;
    const dy = (y[i] as number) - my;
    sxx += dx * dx;
    sxy += dx * dy;
    syy += dy * dy;
  }
  if (sxx === 0) throw new RangeError("a line needs x values that differ");
  const slope = sxy / sxx;
  const rss = Math.max(0, syy - slope * sxy);
  const slopeSe = x.length > 2 ? Math.sqrt(rss / (x.length - 2) / sxx) : Number.POSITIVE_INFINITY;
  return { slope, intercept: my - slope * mx, rss, n: x.length, slopeSe };
}
