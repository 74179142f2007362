/** Columns of numbers, NaN where a value is missing. */

/** A column of n missing values. */
export const blank = (n: number): Float64Array => new Float64Array(n).fill(Number.NaN);

/** A copy in which what is not above 0 is missing; n missing values where the channel is absent. */
export function positive(xs: Float64Array | undefined, n: number): Float64Array {
  if (xs === undefined) return blank(n);
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) out[i] = (xs[i] as number) > 0 ? (xs[i] as number) : Number.NaN;
  return out;
}

export function hasValues(xs: Float64Array): boolean {
  for (let i = 0; i < xs.length; i++) if (!Number.isNaN(xs[i] as number)) return true;
  return false;
}
