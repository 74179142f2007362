/**
 * What every threshold method reads: bins with a smooth VO2 axis, and how a method answers.
 */

import { fitLine } from "../../kernel/statistics.js";
import type { BentFit } from "./bent-line.js";
import type { Bins } from "./bins.js";
import type { BentTerm } from "./profile.js";
import { type Smooth, smoothInTime } from "./smooth.js";

/** Half width of the window that smooths VO2 over time: three bins each side weigh half or more. */
const SMOOTH_S = 60;
/** Bins after the highest VO2 are passed over once VO2 has fallen by 2 %: it no longer says how hard the work is. */
const FALL = 0.98;
/** Bins that must lie on each side of a bend: one minute. */
export const SIDE = 3;

export interface Points {
  readonly bins: Bins;
  /** Smooth VO2, L/min: the axis. NaN in bins that are passed over. */
  readonly x: Float64Array;
  readonly axis: Smooth;
}

export function pointsOf(bins: Bins): Points {
  const axis = smoothInTime(bins.time, bins.vo2, SMOOTH_S);
  let top = 0;
  for (let i = 1; i < bins.n; i++) if ((axis.value[i] as number) > (axis.value[top] as number)) top = i;
  let n = bins.n;
  while (n > top + 1 && (axis.value[n - 1] as number) < FALL * (axis.value[top] as number)) n--;
  const x = axis.value.slice();
  for (let i = n; i < bins.n; i++) x[i] = Number.NaN;
  return { bins, x, axis };
}

/** The points whose y is known, with what a fit needs of them. */
export interface Channel {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly weight: Float64Array;
  readonly one: Float64Array;
  /** 1/x */
  readonly inverse: Float64Array;
  /** (dx/dt)/x: CO2 goes into and out of stores when VO2 moves fast, as after each step of load. */
  readonly stores: Float64Array;
  readonly index: readonly number[];
}

/** y of each bin (NaN = missing) → the fit's columns, missing ones dropped. */
export function channelOf(points: Points, y: Float64Array): Channel {
  const index: number[] = [];
  for (let i = 0; i < y.length; i++) if (Number.isFinite(y[i] as number) && (points.x[i] as number) > 0) index.push(i);
  const take = (xs: Float64Array) => {
    const taken = new Float64Array(index.length);
    for (let k = 0; k < taken.length; k++) taken[k] = xs[index[k] as number] as number;
    return taken;
  };
  const x = take(points.x);
  const inverse = new Float64Array(x.length);
  const stores = take(points.axis.slope);
  for (let k = 0; k < x.length; k++) {
    inverse[k] = 1 / (x[k] as number);
    stores[k] = (stores[k] as number) / (x[k] as number);
  }
  const one = new Float64Array(x.length).fill(1);
  return { x, y: take(y), weight: take(points.bins.count), one, inverse, stores, index };
}

/** A straight line in VCO2 against VO2 is a hyperbola in their ratio; its bend at v has this form. */
export const hyperbolicBend: BentTerm = (x, v, into) => {
  for (let i = 0; i < x.length; i++) into[i] = (x[i] as number) > v ? 1 - v / (x[i] as number) : 0;
};

/** What is known of VT2 when VT1 is sought: VT1 lies below it, and the curve may bend again there. */
export interface Upper {
  readonly below: number;
  readonly second: { readonly at: readonly number[]; readonly maybe: boolean; readonly gap: number };
}

export function upperOf(
  points: Points,
  vt2: { readonly vo2: number; readonly low: number; readonly high: number } | undefined,
): Upper {
  const lowest = Math.min(...points.x.filter(Number.isFinite));
  const highest = Math.max(...points.x.filter(Number.isFinite));
  const gap = 0.08 * (highest - lowest);
  const from = vt2?.low ?? lowest + 0.4 * (highest - lowest);
  const to = Math.min(vt2?.high ?? highest, highest);
  const at = Array.from({ length: SECONDS }, (_, k) => from + ((to - from) * (k + 0.5)) / SECONDS);
  return { below: vt2 === undefined ? highest : vt2.vo2 - gap, second: { at, maybe: vt2 === undefined, gap } };
}
const SECONDS = 12;

export type MethodName =
  | "V-slope"
  | "excess CO2"
  | "VE/VO2"
  | "end-tidal O2"
  | "VE on VCO2"
  | "VE/VCO2"
  | "end-tidal CO2";

export interface Found {
  readonly method: MethodName;
  /** L/min VO2, 95 % interval. */
  readonly vo2: number;
  readonly low: number;
  readonly high: number;
  /** Of the F test of the bend. */
  readonly probability: number;
}
export interface NotFound {
  readonly method: MethodName;
  readonly because: string;
}
export type Reading = Found | NotFound;
export const isFound = (reading: Reading): reading is Found => "vo2" in reading;

/** Probability of the F test above which a bend is not claimed. */
const ALPHA = 0.05;

/** The checks every method shares: interior minimum, F test, one minimum. Returns why not, or nothing. */
export function refusal(fit: BentFit, what: string): string | undefined {
  if (fit.change === 0) return `${what} does not turn upwards anywhere`;
  if (fit.edge) return `the best bend of ${what} lies within a minute of an end of the data, at ${litres(fit.at)}`;
  if (fit.probability > ALPHA)
    return `a bend in ${what} fits no better than none (F test, p = ${fit.probability.toFixed(3)}; needed ${ALPHA})`;
  if (fit.rival !== undefined)
    return `${what} bends about equally well at ${litres(fit.at)} and at ${litres(fit.rival)}`;
  return undefined;
}
export const litres = (vo2: number): string => `${vo2.toFixed(2)} L/min`;

/** The profile's interval, widened by the error of the axis at the bend. */
export function withAxisError(
  points: Points,
  method: MethodName,
  fit: Pick<BentFit, "at" | "low" | "high" | "probability">,
): Found {
  const { at, low, high, probability } = fit;
  let nearest = 0;
  for (let i = 1; i < points.x.length; i++)
    if (Math.abs((points.x[i] as number) - at) < Math.abs((points.x[nearest] as number) - at)) nearest = i;
  const axis = 1.96 * (points.axis.se[nearest] as number);
  return { method, vo2: at, low: at - Math.hypot(at - low, axis), high: at + Math.hypot(high - at, axis), probability };
}

/** y rises on x between the bounds by more than two standard errors; false where fewer than four points say so. */
export function risesBetween(x: Float64Array, y: Float64Array, from: number, to: number): boolean {
  const inside = [...x.keys()].filter((i) => (x[i] as number) > from && (x[i] as number) < to && Number.isFinite(y[i]));
  if (inside.length < 4) return false;
  const line = fitLine(
    inside.map((i) => x[i] as number),
    inside.map((i) => y[i] as number),
  );
  return line.slope > 2 * line.slopeSe;
}
