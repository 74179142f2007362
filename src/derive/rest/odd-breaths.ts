/** Coughs, swallows and sighs of a resting record, by the local rule of the exercise test: left out of the means, counted. */
import { mean, median, sampleSd } from "../../kernel/statistics.js";
import { localOutliers } from "../incremental/local-outlier.js";

/**
 * 1 for a breath that is left out. Time in s and gas channels of one length, NaN for missing. A record of regular
 * intervals holds means already, and is never edited.
 */
export function oddBreathsAtRest(time: Float64Array, channels: readonly Float64Array[]): Uint8Array {
  const odd = new Uint8Array(time.length);
  if (!breathByBreath(time)) return odd;
  const one = new Uint8Array(time.length);
  for (const channel of channels) {
    if (channel.every(Number.isNaN)) continue;
    localOutliers(time, channel, one, one).forEach((mark, i) => {
      if (mark === 1) odd[i] = 1;
    });
  }
  return odd;
}

/** Steps of a few seconds that differ from each other are breaths; equal steps are the instrument's own means. */
function breathByBreath(time: Float64Array): boolean {
  const steps = Array.from(time.subarray(1), (t, i) => t - (time[i] as number)).filter((step) => step > 0);
  return steps.length > 40 && median(steps) < 8 && sampleSd(steps) / mean(steps) > 0.02;
}
