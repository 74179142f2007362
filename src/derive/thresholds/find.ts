/**
 * Both ventilatory thresholds of one incremental phase: VT2 first (ventilation on CO2 has no bend at VT1), then VT1
 * below it.
 */
import { type Bins, binBreaths, type GasColumns } from "./bins.js";
import { type Combined, combine } from "./combine.js";
import { endTidalCo2 } from "./end-tidal-co2.js";
import { endTidalO2 } from "./end-tidal-o2.js";
import { excessCo2 } from "./excess-co2.js";
import { type Points, pointsOf, type Reading, upperOf } from "./points.js";
import { vSlope } from "./v-slope.js";
import { ventilationOnCo2 } from "./ventilation-on-co2.js";
import { ventilatoryEquivalentCo2 } from "./ventilatory-equivalent-co2.js";
import { ventilatoryEquivalentO2 } from "./ventilatory-equivalent-o2.js";

/** Widening found by the coverage study (tests/tools/study-thresholds.ts), so that nominal 95 % intervals hold. */
const WIDEN_VT1 = 1.1;
const WIDEN_VT2 = 1.2;

export interface Thresholds {
  readonly points: Points;
  readonly vt1: Combined | undefined;
  readonly vt2: Combined | undefined;
  readonly vt1Readings: readonly Reading[];
  readonly vt2Readings: readonly Reading[];
}

export function findThresholds(breaths: GasColumns, fromS: number, toS: number): Thresholds {
  return thresholdsOf(binBreaths(breaths, fromS, toS));
}

export function thresholdsOf(bins: Bins): Thresholds {
  const points = pointsOf(bins);
  const lowest = 0;
  const vt2Readings = [
    ventilationOnCo2(points, lowest),
    ventilatoryEquivalentCo2(points, lowest),
    endTidalCo2(points, lowest),
  ];
  const vt2 = combine(vt2Readings, WIDEN_VT2);
  const upper = upperOf(points, vt2);
  const vt1Readings = [
    vSlope(points, upper),
    excessCo2(points, upper),
    ventilatoryEquivalentO2(points, upper),
    endTidalO2(points, upper),
  ];
  return { points, vt1: combine(vt1Readings, WIDEN_VT1), vt2, vt1Readings, vt2Readings };
}
