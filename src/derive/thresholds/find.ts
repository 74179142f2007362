/**
 * Both ventilatory thresholds of one incremental phase: VT2 first (ventilation on CO2 has no bend at VT1), then VT1
 * below it.
 */
import { type Bins, binBreaths, type GasColumns } from "./bins.js";
import { type Combined, combine } from "./combined-threshold.js";
import { endTidalCo2 } from "./end-tidal-co2.js";
import { endTidalO2 } from "./end-tidal-o2.js";
import { excessCo2 } from "./excess-co2.js";
import { isFound, type MethodName, type Points, pointsOf, type Reading, upperOf } from "./points.js";
import { vSlope } from "./v-slope.js";
import { ventilationOnCo2 } from "./ventilation-on-co2.js";
import { ventilatoryEquivalentCo2 } from "./ventilatory-equivalent-co2.js";
import { ventilatoryEquivalentO2 } from "./ventilatory-equivalent-o2.js";

/** Widening found by the coverage study (tests/tools/study-thresholds.ts), so that nominal 95 % intervals hold. */
const WIDEN_VT1 = 0.95;
const WIDEN_VT2 = 1.1;

export type Verdict = Combined | { readonly because: string };

export interface Thresholds {
  readonly points: Points;
  readonly vt1: Verdict;
  readonly vt2: Verdict;
  readonly vt1Readings: readonly Reading[];
  readonly vt2Readings: readonly Reading[];
}

/**
 * breaths of one test, its incremental phase (fromS, toS], and VO2peak in L/min where it is known.
 *
 * The first minute is dropped and stays dropped: sought again with it, a threshold was "identified" in one of five
 * generated tests that began above it, and its interval held the truth in two of three.
 */
export const findThresholds = (breaths: GasColumns, fromS: number, toS: number, peak?: number): Thresholds =>
  thresholdsOf(binBreaths(breaths, fromS, toS), peak);

function thresholdsOf(bins: Bins, peak?: number): Thresholds {
  const points = pointsOf(bins);
  const because = unfit(bins);
  if (because !== undefined) {
    const none = (methods: readonly MethodName[]) => methods.map((method) => ({ method, because }));
    return {
      points,
      vt1Readings: none(VT1_METHODS),
      vt2Readings: none(VT2_METHODS),
      vt1: { because },
      vt2: { because },
    };
  }
  const top = peak ?? Math.max(...points.x.filter(Number.isFinite));
  const vt2Readings = [
    ventilationOnCo2(points, LOWEST * top),
    ventilatoryEquivalentCo2(points, LOWEST * top),
    endTidalCo2(points, LOWEST * top),
  ].map((reading) => insidePeak(reading, top));
  const vt2 = judge(vt2Readings, WIDEN_VT2);
  // A VT2 too doubtful to be given still tells where the curves may bend a second time.
  const upper = upperOf(points, combine(vt2Readings, WIDEN_VT2));
  const vt1Readings = [
    vSlope(points, upper),
    excessCo2(points, upper),
    ventilatoryEquivalentO2(points, upper),
    endTidalO2(points, upper),
  ].map((reading) => insidePeak(reading, top));
  return { points, vt1: judge(vt1Readings, WIDEN_VT1), vt2, vt1Readings, vt2Readings };
}

const VT1_METHODS: readonly MethodName[] = ["V-slope", "excess CO2", "VE/VO2", "end-tidal O2"];
const VT2_METHODS: readonly MethodName[] = ["VE on VCO2", "VE/VCO2", "end-tidal CO2"];
/** Share of VO2peak inside which a bend is called a threshold; nearer the ends it cannot be told from start and stop. */
const LOWEST = 0.4;
const HIGHEST = 0.95;
/** Fewest intervals, and share of them that must hold VCO2. */
const FEWEST = 12;
const CO2_SHARE = 0.8;

/** Why no threshold can be sought at all. */
function unfit(bins: Bins): string | undefined {
  if (bins.n < FEWEST)
    return `the incremental phase holds ${bins.n} intervals of 15 s after its first minute; ${FEWEST} are needed`;
  const alive = bins.rer.filter(Number.isFinite).length;
  if (alive === 0) return "CO2 output was not recorded in the incremental phase";
  if (alive < CO2_SHARE * bins.n)
    return `CO2 output is missing in ${bins.n - alive} of ${bins.n} intervals of 15 s of the incremental phase`;
  return undefined;
}

function insidePeak(reading: Reading, peak: number): Reading {
  if (!isFound(reading)) return reading;
  const share = reading.vo2 / peak;
  if (share >= LOWEST && share <= HIGHEST) return reading;
  return {
    method: reading.method,
    because: `its bend lies at ${(100 * share).toFixed(0)} % of the peak; outside ${100 * LOWEST} to ${100 * HIGHEST} % it cannot be told from the start or end of the test`,
  };
}

/** F test below which one method alone is believed. */
const SURE = 0.001;

/** Two methods, V-slope, or one beyond doubt: a single bend in ventilation is too often a change of breathing. */
function judge(readings: readonly Reading[], widen: number): Verdict {
  const found = readings.filter(isFound);
  const combined = combine(found, widen);
  const first = found[0];
  if (combined === undefined || first === undefined)
    return { because: `not identified, because ${reasonOf(readings)}` };
  if (found.length > 1 || first.method === "V-slope" || first.probability < SURE) return combined;
  return {
    because: `not identified, because only ${first.method} shows it, with p = ${first.probability.toFixed(3)}; two methods or p below ${SURE} are asked`,
  };
}

const reasonOf = (readings: readonly Reading[]): string => {
  const first = readings[0];
  return first === undefined || isFound(first) ? "no method shows it" : first.because;
};
