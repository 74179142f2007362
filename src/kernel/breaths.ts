/**
 * The samples of an incremental test after preparing: every channel in one unit and gas condition, phases named,
 * excluded samples marked. A sample is a breath, a mixing-chamber interval or a Douglas bag. Nothing is filled,
 * smoothed or removed: whoever averages skips `excluded` and NaN himself.
 */
export const PHASES = ["rest", "warm-up", "incremental", "recovery", "verification"] as const;
export type Phase = (typeof PHASES)[number];

export interface Breaths {
  readonly n: number;
  /** s, as in the file; never falls among kept samples. A sample stands for the time since the one before it. */
  readonly time: Float64Array;
  /** L/min STPD; NaN = missing, here and below. */
  readonly vo2: Float64Array;
  /** L/min STPD */
  readonly vco2: Float64Array;
  /** L/min BTPS */
  readonly ve: Float64Array;
  /** 1/min */
  readonly breathingFrequency: Float64Array;
  /** beats/min */
  readonly heartRate: Float64Array;
  /** mmHg, end-tidal */
  readonly petO2: Float64Array;
  /** mmHg, end-tidal */
  readonly petCO2: Float64Array;
  /** % */
  readonly spo2: Float64Array;
  /** km/h */
  readonly speed: Float64Array;
  /** % */
  readonly grade: Float64Array;
  /** W */
  readonly power: Float64Array;
  /** 1/min */
  readonly cadence: Float64Array;
  /** 6 to 20 */
  readonly rpe: Float64Array;
  /** 0 kept; else 1 + index into CLEANING_RULES. */
  readonly excluded: Uint8Array;
  /** Index into PHASES. */
  readonly phase: Uint8Array;
  /** 1-based line of the file each sample stands on; 0 when typed by hand. */
  readonly line: Int32Array;
}

/** Why a sample was excluded: `excluded` holds 1 + the index. */
export const CLEANING_RULES = ["time-not-rising", "outside-possible", "local-outlier"] as const;
export type CleaningRule = (typeof CLEANING_RULES)[number];
