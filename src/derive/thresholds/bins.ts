/**
 * Non-overlapping 15-s means of the incremental phase, its first minute dropped.
 *
 * Single breaths bias a two-line fit (the error of VO2 stands on the x axis), and overlapping means make neighbours
 * alike, so that intervals from them are false. Ratios are ratios of sums over breaths that hold both channels:
 * what a breath's depth does to both cancels there.
 */
import type { Breaths } from "../../kernel/breaths.js";

/** What the fits read of a test's samples; `excluded` samples are passed over. */
export type GasColumns = Pick<
  Breaths,
  "n" | "time" | "vo2" | "vco2" | "ve" | "petO2" | "petCO2" | "heartRate" | "excluded"
>;

export interface Bins {
  readonly n: number;
  /** Mean time of the breaths, s. */ readonly time: Float64Array;
  readonly vo2: Float64Array;
  /** Breaths in the bin. */ readonly count: Float64Array;
  /** VCO2/VO2, VE/VO2, VE/VCO2, and end-tidal pressures; NaN where the bin has none. */
  readonly rer: Float64Array;
  readonly veVo2: Float64Array;
  readonly veVco2: Float64Array;
  readonly petO2: Float64Array;
  readonly petCO2: Float64Array;
  /** 1/min */ readonly heartRate: Float64Array;
}

export const BIN_S = 15;
const DROPPED_S = 60;

/** Bins from fromS + dropS to toS; a last bin shorter than half a bin joins the one before it. */
export function binBreaths(breaths: GasColumns, fromS: number, toS: number, dropS: number = DROPPED_S): Bins {
  const start = fromS + dropS;
  const whole = Math.floor((toS - start) / BIN_S);
  const rest = toS - start - whole * BIN_S;
  const last = Math.max(0, rest >= BIN_S / 2 ? whole : whole - 1);
  const zeros = () => new Float64Array(last + 1);
  const count = zeros();
  const time = zeros();
  const vo2 = zeros();
  const carbon = ratioSums(zeros); // VCO2 over VO2
  const airToO2 = ratioSums(zeros);
  const airToCo2 = ratioSums(zeros);
  const endO2 = ratioSums(zeros);
  const endCo2 = ratioSums(zeros);
  const beats = ratioSums(zeros);
  for (let i = 0; i < breaths.n; i++) {
    const t = breaths.time[i] as number;
    const o = breaths.vo2[i] as number;
    if (!(t > start && t <= toS && o > 0) || breaths.excluded[i] !== 0) continue;
    const k = Math.min(last, Math.ceil((t - start) / BIN_S) - 1);
    count[k] = (count[k] as number) + 1;
    time[k] = (time[k] as number) + t;
    vo2[k] = (vo2[k] as number) + o;
    const c = breaths.vco2[i] as number;
    const v = breaths.ve[i] as number;
    add(carbon, k, c, o);
    add(airToO2, k, v, o);
    add(airToCo2, k, v, c);
    add(endO2, k, breaths.petO2[i] as number, 1);
    add(endCo2, k, breaths.petCO2[i] as number, 1);
    add(beats, k, breaths.heartRate[i] as number, 1);
  }
  const kept: number[] = [];
  for (let k = 0; k <= last; k++) if ((count[k] as number) > 0) kept.push(k);
  const mean = (sums: Float64Array) => Float64Array.from(kept, (k) => (sums[k] as number) / (count[k] as number));
  const ratio = ({ top, bottom }: RatioSums) =>
    Float64Array.from(kept, (k) =>
      (bottom[k] as number) > 0 ? (top[k] as number) / (bottom[k] as number) : Number.NaN,
    );
  return {
    n: kept.length,
    time: mean(time),
    vo2: mean(vo2),
    count: Float64Array.from(kept, (k) => count[k] as number),
    rer: ratio(carbon),
    veVo2: ratio(airToO2),
    veVco2: ratio(airToCo2),
    petO2: ratio(endO2),
    petCO2: ratio(endCo2),
    heartRate: ratio(beats),
  };
}

interface RatioSums {
  readonly top: Float64Array;
  readonly bottom: Float64Array;
}
const ratioSums = (zeros: () => Float64Array): RatioSums => ({ top: zeros(), bottom: zeros() });

function add(sums: RatioSums, k: number, top: number, bottom: number): void {
  if (!(top > 0 && bottom > 0)) return;
  sums.top[k] = (sums.top[k] as number) + top;
  sums.bottom[k] = (sums.bottom[k] as number) + bottom;
}
