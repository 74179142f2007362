/**
 * Peak values. Uptake is the best mean of the chosen window in the incremental phase (or in the verification bout,
 * when that was higher); output, RER, ventilation, breathing frequency, oxygen pulse and the heart rate beside it come
 * from the same window. Only the highest heart rate is a peak of its own: its best 5-s mean.
 */
import type { MeasurementError } from "../../kernel/measure.js";
import type { Ref } from "../../kernel/notebook.js";
import { toDecimals } from "../../kernel/rounding.js";
import { mean } from "../../kernel/statistics.js";
import { hasValues } from "../columns.js";
import { removeBasis, unitBeside } from "../thresholds/orthogonal.js";
import { bestWindow, type Channel, meanIn, type Window } from "./best-window.js";
import { describeDead } from "./dead-channel.js";
import type { PhaseSpan } from "./phases.js";
import type { Prepared } from "./prepare.js";
import { type BreathChannel, CHANNEL_TITLES } from "./samples.js";

export const WINDOWS_S = [10, 15, 20, 30, 60] as const;

export interface Peak extends Window {
  readonly span: PhaseSpan;
  /** Length of the window that was used: the chosen one, or one sample where samples are longer. */
  readonly widthS: number;
}

export const channelOf = (test: Prepared, name: BreathChannel): Channel => ({
  time: test.breaths.time,
  xs: test.breaths[name],
  excluded: test.breaths.excluded,
  intervalS: test.intervalS,
});

/** Window that a test of means over long intervals allows: at least one sample. */
export const usableWidth = (test: Prepared, chosenS: number): number =>
  test.breathByBreath || test.intervalS <= chosenS + 1 ? chosenS : test.intervalS;

/** The highest typed or interval mean itself, where samples are not single breaths and as long as the window. */
function bestSample(test: Prepared, name: BreathChannel, span: PhaseSpan): Window | undefined {
  const b = test.breaths;
  let best: Window | undefined;
  let before = span.fromS;
  for (let i = 0; i < b.n; i++) {
    const t = b.time[i] as number;
    if (b.excluded[i] === 1 || !(t > span.fromS && t <= span.toS + 1e-9)) continue;
    const x = b[name][i] as number;
    if (b.excluded[i] === 0 && !Number.isNaN(x) && (best === undefined || x > best.mean))
      best = { mean: x, fromS: before, toS: t, n: 1 };
    before = t;
  }
  return best;
}

export function bestOf(test: Prepared, name: BreathChannel, span: PhaseSpan, chosenS: number): Window | undefined {
  if (!test.timed || (!test.breathByBreath && test.intervalS >= chosenS - 1)) return bestSample(test, name, span);
  return bestWindow(channelOf(test, name), span.fromS, span.toS, chosenS);
}

/** Mean of a channel in the peak's own window. */
export function sameWindow(test: Prepared, name: BreathChannel, peak: Window): number | undefined {
  if (!test.breathByBreath && peak.n === 1) {
    const b = test.breaths;
    const i = b.time.indexOf(peak.toS);
    const x = i < 0 ? Number.NaN : (b[name][i] as number);
    return Number.isNaN(x) ? undefined : x;
  }
  return meanIn(channelOf(test, name), peak.fromS, peak.toS)?.mean;
}

/** Why a channel has no value in a window. */
export function whyMissing(test: Prepared, name: BreathChannel, fromS: number, toS: number): string {
  const refused = name === "vo2" || name === "vco2" || name === "ve" ? test.refused[name] : undefined;
  if (refused !== undefined) return refused;
  const dead = test.dead.find((run) => run.channel === name && run.fromS < toS && run.toS > fromS);
  if (dead !== undefined) return describeDead(dead);
  if (!hasValues(test.breaths[name])) return `${CHANNEL_TITLES[name]} was not recorded`;
  return `too few values of ${CHANNEL_TITLES[name]} from ${Math.round(fromS)} to ${Math.round(toS)} s`;
}

/** Peak uptake of a phase, or why there is none: a channel that died before the end hides the peak. */
export function peakUptake(test: Prepared, span: PhaseSpan, chosenS: number): { peak: Peak } | { because: string } {
  const b = test.breaths;
  if (!hasValues(b.vo2)) return { because: test.refused.vo2 ?? "gas exchange was not measured" };
  if (test.breathByBreath) {
    let last = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < b.n; i++) {
      const t = b.time[i] as number;
      if (b.excluded[i] === 0 && t <= span.toS + 1e-9 && !Number.isNaN(b.vo2[i] as number)) last = t;
    }
    if (span.toS - last > Math.max(20, 5 * test.intervalS))
      return {
        because: `${whyMissing(test, "vo2", Math.max(last, span.fromS), span.toS)}: the peak may lie in the part that is missing`,
      };
  }
  const window = bestOf(test, "vo2", span, chosenS);
  if (window === undefined)
    return { because: `no window of ${chosenS} s in the ${span.phase} phase is filled with kept samples` };
  return { peak: { ...window, span, widthS: usableWidth(test, chosenS) } };
}

export interface BreathNoise {
  /** SD of one breath's uptake, L/min. */
  readonly sd: number;
  /** Times by which the variance of a mean exceeds sd²/n because neighbouring breaths resemble each other; 1 or more. */
  readonly shared: number;
}
const NOISE_S = 180;
/** Neighbours that are asked, and the most that is believed of them. */
const LAGS = 3;
const MOST_SHARED = 4;

/**
 * Noise of the breaths of the last three minutes. Their SD comes from second differences, in which a trend cancels; how
 * much neighbours share comes from what a cubic in time leaves: 1 + 2 Σ r(k), k = 1 to 3. Real breaths are not
 * independent, and a mean over alike breaths is less sure than its count says.
 */
export function breathNoise(test: Prepared, span: PhaseSpan): BreathNoise | undefined {
  if (!test.breathByBreath) return undefined;
  const b = test.breaths;
  const time: number[] = [];
  const uptake: number[] = [];
  for (let i = 0; i < b.n; i++) {
    const t = b.time[i] as number;
    const x = b.vo2[i] as number;
    if (
      b.excluded[i] !== 0 ||
      Number.isNaN(x) ||
      !(t > Math.max(span.fromS, span.toS - NOISE_S) && t <= span.toS + 1e-9)
    )
      continue;
    time.push(t);
    uptake.push(x);
  }
  if (uptake.length < 22) return undefined;
  const rest = besideCubic(time, uptake);
  let own = 0;
  for (const r of rest) own += r * r;
  let shared = 1;
  for (let k = 1; k <= LAGS && own > 0; k++) {
    let across = 0;
    for (let i = k; i < rest.length; i++) across += (rest[i] as number) * (rest[i - k] as number);
    shared += (2 * across) / own;
  }
  shared = Math.min(MOST_SHARED, Math.max(1, shared));
  let sum = 0;
  for (let i = 2; i < uptake.length; i++)
    sum += ((uptake[i] as number) - 2 * (uptake[i - 1] as number) + (uptake[i - 2] as number)) ** 2 / 6;
  const differences = Math.sqrt(sum / (uptake.length - 2)); // variance of x − 2y + z is 6 times that of one
  return { sd: Math.max(differences, Math.sqrt(own / (rest.length - 4))), shared };
}

/** What a least-squares cubic in time leaves. */
function besideCubic(time: readonly number[], xs: readonly number[]): Float64Array {
  const middle = mean(time);
  const half = Math.max(1, ((time.at(-1) as number) - (time[0] as number)) / 2);
  const rest = new Float64Array(xs);
  const basis: Float64Array[] = [];
  for (const power of [0, 1, 2, 3]) {
    const term = new Float64Array(time.length);
    for (let i = 0; i < term.length; i++) term[i] = (((time[i] as number) - middle) / half) ** power;
    const unit = unitBeside(term, basis);
    if (unit !== undefined) basis.push(unit);
  }
  removeBasis(rest, basis);
  return rest;
}

/**
 * A highest mean of many leans high: on generated tests with known truth by 0.6 standard errors of the mean. The
 * interval is laid round the value less that much.
 */
const LEAN = 0.6;

/** What breath noise alone does to the peak: a 95 % interval. Day-to-day variation is no part of it. */
export function peakError(test: Prepared, peak: Peak): MeasurementError | undefined {
  const noise = breathNoise(test, peak.span);
  if (noise === undefined) return undefined;
  const se = noise.sd * Math.sqrt(noise.shared / peak.n);
  return {
    low: peak.mean - (LEAN + 1.96) * se,
    high: peak.mean + (1.96 - LEAN) * se,
    from: `breath noise of ${toDecimals(noise.sd, 2)} L/min over ${peak.n} breaths; two tests on different days differ by more`,
  };
}

export const windowRefs = (peak: Peak, file: string): Ref[] => [
  { name: "series", value: file, unit: "" },
  { name: "window", value: Math.round(peak.widthS), unit: "s" },
  { name: "from", value: Math.round(peak.fromS), unit: "s" },
  { name: "to", value: Math.round(peak.toS), unit: "s" },
  { name: "samples", value: peak.n, unit: "" },
];
