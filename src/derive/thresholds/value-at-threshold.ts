/**
 * What else was measured at the moment VO2 reached a threshold.
 *
 * The moment is where VO2, smooth in time, first reaches the threshold and does not lie below it again in the next
 * interval; heart rate is read there from its own smooth course. A threshold below or above all that was fitted has no
 * moment, and nothing is read off: no course is drawn out beyond its data.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { smoothInTime } from "./smooth.js";

/** Time at which the smooth course reaches v, s; undefined outside it. */
export function momentOf(time: Float64Array, vo2: Float64Array, v: number): number | undefined {
  for (let i = 1; i < vo2.length; i++) {
    const a = vo2[i - 1] as number;
    const b = vo2[i] as number;
    if (!(a <= v && v <= b)) continue;
    const from = time[i - 1] as number;
    return b > a ? from + ((v - a) / (b - a)) * ((time[i] as number) - from) : from;
  }
  return undefined;
}

/** A channel given at `time` (NaN = missing), smoothed over ± 60 s: reads it at a moment, undefined outside its data. */
export function smoothCourse(time: Float64Array, channel: Float64Array): (moment: number) => number | undefined {
  const kept = [...time.keys()].filter((i) => Number.isFinite(channel[i]));
  if (kept.length < 3) return () => undefined;
  const t = Float64Array.from(kept, (i) => time[i] as number);
  const { value } = smoothInTime(
    t,
    Float64Array.from(kept, (i) => channel[i] as number),
    60,
  );
  return (moment) => readAt(t, value, moment, WIDEST_GAP_S);
}

/** No course is drawn across a longer gap in it, s. */
const WIDEST_GAP_S = 60;

/** Straight line between neighbours; undefined outside the first and last time and in gaps longer than `widestS`. */
export function readAt(
  time: ArrayLike<number>,
  values: ArrayLike<number>,
  moment: number,
  widestS = Number.POSITIVE_INFINITY,
): number | undefined {
  for (let i = 1; i < time.length; i++) {
    const from = time[i - 1] as number;
    const to = time[i] as number;
    if (from <= moment && moment <= to)
      return to - from > widestS
        ? undefined
        : (values[i - 1] as number) +
            ((moment - from) / (to - from)) * ((values[i] as number) - (values[i - 1] as number));
  }
  return undefined;
}

function compute(threshold: number, vo2: readonly number[], channel: readonly number[]): number {
  const time = Float64Array.from(vo2, (_, i) => 15 * i);
  const moment = momentOf(time, Float64Array.from(vo2), threshold);
  if (moment === undefined)
    throw new OutOfRange("value-at-threshold", "threshold", threshold, "thresholds inside the measured course");
  const value = smoothCourse(time, Float64Array.from(channel))(moment);
  if (value === undefined)
    throw new OutOfRange("value-at-threshold", "channel", "missing", "moments it was recorded at");
  return value;
}

export const info: FormulaInfo<[number, readonly number[], readonly number[]], number> = {
  id: "value-at-threshold",
  revision: 1,
  title: "Value at a threshold",
  equation: "the channel, smooth in time, at the moment smooth VO2 reaches the threshold",
  inputs: {
    threshold: { unit: "L/min", range: "inside the measured course" },
    VO2: { unit: "L/min", range: "15-s means" },
    channel: { unit: "as the measure", range: "15-s means" },
  },
  output: { unit: "as the measure", decimals: 0 },
  caveat:
    "Load is that of the moment: VO2 lags behind a rising load, so the steady load for this VO2 is a little lower.",
  source: {
    authors: "Waymark",
    year: null,
    title: "reading off a course",
    where: "common practice",
    verified: "common practice",
  },
  compute,
  checks: [
    {
      given: [2.25, [1, 1.5, 2, 2.5, 3], [100, 110, 120, 130, 140]],
      expect: 125,
      tolerance: 1e-6,
      from: "by hand: halfway between the third and fourth interval of two straight courses",
    },
    {
      given: [3.5, [1, 1.5, 2, 2.5, 3], [100, 110, 120, 130, 140]],
      expect: "refused",
      from: "above all that was measured",
    },
  ],
};
