/** The clock of a series: its usual step, its start and end, and its gaps. Samples without a place in time take no part. */
export interface Gap {
  readonly fromS: number;
  readonly toS: number;
}

/** Usual step between samples and the moment the first one began. */
export function rhythm(time: Float64Array, excluded: Uint8Array): { intervalS: number; startS: number } {
  const steps = new Float64Array(time.length);
  let n = 0;
  let last = Number.NaN;
  let first = Number.NaN;
  for (let i = 0; i < time.length; i++) {
    if (excluded[i] !== 0) continue;
    const t = time[i] as number;
    if (Number.isNaN(first)) first = t;
    else steps[n++] = t - last;
    last = t;
  }
  const sorted = steps.subarray(0, n).sort();
  const intervalS = sorted[n >> 1] ?? first;
  return { intervalS, startS: first - intervalS };
}

export function lastTime(time: Float64Array, excluded: Uint8Array): number {
  for (let i = time.length - 1; i >= 0; i--) if (excluded[i] === 0) return time[i] as number;
  return Number.NaN;
}

/** A step that is a gap: longer than 8 s and than three usual ones. */
export const isGap = (stepS: number, intervalS: number): boolean => stepS > Math.max(8, 3 * intervalS);

export function gapsIn(time: Float64Array, excluded: Uint8Array, intervalS: number): Gap[] {
  const out: Gap[] = [];
  let last = Number.NaN;
  for (let i = 0; i < time.length; i++) {
    if (excluded[i] === 1) continue; // no place in time
    const t = time[i] as number;
    if (isGap(t - last, intervalS)) out.push({ fromS: last, toS: t });
    last = t;
  }
  return out;
}
