/**
 * A raw series after reading: one row a sample (breath, mixing interval, stage, second), every channel in the one
 * unit its id states, a missing value as NaN. Nothing is smoothed, filled or removed here.
 */
export const CHANNELS = {
  time_s: "s",
  vo2_l_min: "L/min", // STPD
  vco2_l_min: "L/min", // STPD
  ventilation_l_min: "L/min", // in the gas condition `conditions.ventilation_l_min` states
  inspired_ventilation_l_min: "L/min",
  tidal_volume_l: "L",
  breathing_frequency_per_min: "1/min",
  feo2: "fraction", // mixed expired O2, dry
  feco2: "fraction",
  fio2: "fraction", // inspired O2, dry
  fico2: "fraction",
  peto2_mmhg: "mmHg",
  petco2_mmhg: "mmHg",
  heart_rate_bpm: "1/min",
  spo2_pct: "%",
  speed_km_h: "km/h",
  grade_pct: "%",
  power_w: "W",
  cadence_rpm: "1/min",
  lactate_mmol_l: "mmol/L",
  rpe: "6-20",
  rr_ms: "ms",
  bag_volume_l: "L",
  bag_duration_s: "s",
  gas_temperature_c: "°C",
  distance_m: "m",
} as const;
export type Channel = keyof typeof CHANNELS;

/** Gas condition of a volume: as measured and saturated, body, standard dry, or ambient at a known humidity. */
export type GasCondition = "ATPS" | "BTPS" | "STPD" | "ATPD" | "ambient";

export interface Series {
  /** File name as the session wrote it. */
  readonly file: string;
  readonly length: number;
  readonly channels: Readonly<Partial<Record<Channel, Float64Array>>>;
  readonly conditions: Readonly<Partial<Record<Channel, GasCondition>>>;
  /** Line of the file each sample stands on, 1-based: so that a remark can name it. */
  readonly lines: Int32Array;
  /** Per channel, how many cells were marks for "missing" (0, blank, "-"). */
  readonly missing: Readonly<Partial<Record<Channel, number>>>;
}
