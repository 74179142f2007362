/**
 * Minute means of a raw series. A sample stands for the time since the one before it, so each mean is weighted by
 * time: a long breath counts more than a short one. A sample that follows a gap stands for no more than `longestS`.
 */
export interface MinuteMeans {
  /** Start of each minute, s from the origin of the series. */
  readonly start: readonly number[];
  /** One list a channel, in the order given; null where less than half the minute was measured. */
  readonly channels: readonly (readonly (number | null)[])[];
}

const LONGEST_S = 35;

/**
 * time in s (rising), channels of the same length with NaN for missing, minutes counted from `fromS` to `toS`; only
 * whole minutes are given (a last minute within 2 s of full counts as whole, since the last sample seldom falls on it).
 */
export function minuteMeans(
  time: ArrayLike<number>,
  channels: readonly ArrayLike<number>[],
  fromS: number,
  toS: number,
): MinuteMeans {
  const minutes = Math.max(0, Math.floor((toS - fromS + 2) / 60));
  const start = Array.from({ length: minutes }, (_, m) => fromS + 60 * m);
  return { start, channels: channels.map((channel) => meansOf(time, channel, fromS, minutes)) };
}

function meansOf(time: ArrayLike<number>, channel: ArrayLike<number>, fromS: number, minutes: number) {
  const sum = new Float64Array(minutes);
  const weight = new Float64Array(minutes);
  let before = Number.NaN;
  for (let i = 0; i < time.length; i++) {
    const now = time[i] as number;
    if (!Number.isFinite(now) || now <= before) continue;
    // The first sample has none before it: it stands for the step to the next one.
    const since = Number.isNaN(before) ? ((time[i + 1] ?? now) as number) - now : now - before;
    before = now;
    const value = channel[i] as number;
    if (!Number.isFinite(value)) continue;
    const length = Math.min(since, LONGEST_S);
    const minute = Math.floor((now - length / 2 - fromS) / 60);
    if (minute < 0 || minute >= minutes) continue;
    sum[minute] = (sum[minute] as number) + value * length;
    weight[minute] = (weight[minute] as number) + length;
  }
  return Array.from(sum, (total, m) => ((weight[m] as number) >= 30 ? total / (weight[m] as number) : null));
}
