/**
 * VO2 as a smooth function of time, for the x axis of the threshold fits.
 *
 * A line through each point's neighbours, weighted by nearness (tricube weights, local regression). The x axis then
 * carries little of the breaths' error, so that lines fitted on it are not flattened, and a bend is found in time
 * as much as in VO2.
 */
export interface Smooth {
  readonly value: Float64Array;
  /** Standard error of each value, from the scatter about the curve. */
  readonly se: Float64Array;
  /** Rate of change, unit per second. */
  readonly slope: Float64Array;
}

/** Local line of y on t (both length n ≥ 3, t rising) with a window of ± halfWidthS. */
export function smoothInTime(t: Float64Array, y: Float64Array, halfWidthS: number): Smooth {
  const n = t.length;
  const value = new Float64Array(n);
  const slope = new Float64Array(n);
  const length = new Float64Array(n);
  let trace = 0;
  let from = 0;
  let to = 0;
  for (let i = 0; i < n; i++) {
    const at = t[i] as number;
    while (at - (t[from] as number) >= halfWidthS) from++;
    while (to < n && (t[to] as number) - at < halfWidthS) to++;
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let y0 = 0;
    let y1 = 0;
    for (let j = from; j < to; j++) {
      const d = (t[j] as number) - at;
      const u = Math.abs(d) / halfWidthS;
      if (u >= 1) continue;
      const w = tricube(u);
      s0 += w;
      s1 += w * d;
      s2 += w * d * d;
      y0 += w * (y[j] as number);
      y1 += w * d * (y[j] as number);
    }
    const det = s0 * s2 - s1 * s1;
    const line = det > 1e-9 * s0 * s0;
    value[i] = line ? (s2 * y0 - s1 * y1) / det : y0 / s0;
    slope[i] = line ? (s0 * y1 - s1 * y0) / det : 0;
    let squares = 0;
    for (let j = from; j < to; j++) {
      const d = (t[j] as number) - at;
      const u = Math.abs(d) / halfWidthS;
      if (u >= 1) continue;
      const w = tricube(u);
      const l = line ? (w * (s2 - s1 * d)) / det : w / s0;
      squares += l * l;
      if (j === i) trace += l;
    }
    length[i] = Math.sqrt(squares);
  }
  let rss = 0;
  for (let i = 0; i < n; i++) rss += ((y[i] as number) - (value[i] as number)) ** 2;
  const sd = Math.sqrt(rss / Math.max(1, n - 1.3 * trace));
  return { value, slope, se: length.map((l) => l * sd) };
}

function tricube(u: number): number {
  const v = 1 - u * u * u;
  return v * v * v;
}
