/**
 * Units that a raw file may use for a channel, and how each becomes the channel's own unit. Factors are exact by
 * definition except lactate (molar mass 90.08 g/mol). A power of ten is a division, so that 1523 mL/min and
 * 1.523 L/min give the same double.
 */
import { CHANNELS, type Channel } from "./series.js";

export type Convert = (x: number) => number;
/** The conversion of a value that is in the channel's own unit. */
export const same: Convert = (x) => x;
const times =
  (factor: number): Convert =>
  (x) =>
    x * factor;
const over =
  (divisor: number): Convert =>
  (x) =>
    x / divisor;

/** Pressure: 760 mmHg = 101.325 kPa by definition of the standard atmosphere. */
const MMHG_PER_KPA = 760 / 101.325;

const FLOW = { "L/min": same, "mL/min": over(1000), "L/s": times(60), "mL/s": (x: number) => (x * 60) / 1000 };
const VOLUME = { L: same, mL: over(1000) };
const FRACTION = { fraction: same, "%": over(100) };
const PERCENT = { "%": same, fraction: times(100) };
const PRESSURE = { mmHg: same, kPa: times(MMHG_PER_KPA), hPa: (x: number) => (x / 10) * MMHG_PER_KPA };
const RATE = { "1/min": same, "1/s": times(60) };
/** s and ms: the column holds the time one breath or beat takes. */
const FREQUENCY = { ...RATE, s: (x: number) => 60 / x, ms: (x: number) => 60_000 / x };
const DURATION = { s: same, min: times(60), ms: over(1000) };
const SECONDS = { ...DURATION, "h:mm:ss": same, "mm:ss": same, clock: same };

const UNITS: Readonly<Record<Channel, Readonly<Record<string, Convert>>>> = {
  time_s: SECONDS,
  vo2_l_min: FLOW,
  vco2_l_min: FLOW,
  ventilation_l_min: FLOW,
  inspired_ventilation_l_min: FLOW,
  tidal_volume_l: VOLUME,
  breathing_frequency_per_min: FREQUENCY,
  feo2: FRACTION,
  feco2: FRACTION,
  fio2: FRACTION,
  fico2: FRACTION,
  peto2_mmhg: PRESSURE,
  petco2_mmhg: PRESSURE,
  heart_rate_bpm: FREQUENCY,
  spo2_pct: PERCENT,
  speed_km_h: { "km/h": same, "m/s": times(3.6), "m/min": times(0.06), mph: times(1.609344) },
  grade_pct: { ...PERCENT, degrees: (x) => 100 * Math.tan((x * Math.PI) / 180) },
  power_w: { W: same, kW: times(1000) },
  cadence_rpm: RATE,
  lactate_mmol_l: { "mmol/L": same, "mg/dL": over(9.008) },
  rpe: { "6-20": same },
  rr_ms: { ms: same, s: times(1000) },
  bag_volume_l: VOLUME,
  bag_duration_s: DURATION,
  gas_temperature_c: { "°C": same, "°F": (x) => ((x - 32) * 5) / 9, K: (x) => x - 273.15 },
  distance_m: { m: same, km: times(1000) },
};

export const channelNames = Object.keys(CHANNELS) as Channel[];
export const isChannel = (name: string): name is Channel => Object.hasOwn(CHANNELS, name);
export const unitsOf = (channel: Channel): readonly string[] => Object.keys(UNITS[channel]);

/** The conversion to the channel's own unit, or undefined when the channel is never given in that unit. */
export function converter(channel: Channel, unit: string): Convert | undefined {
  const units = UNITS[channel];
  return Object.hasOwn(units, unit) ? units[unit] : undefined;
}

/**
 * Channels that cannot be zero in a living client breathing ordinary gas: a 0 there is an instrument's way to write
 * "no value". Speed, grade, power, cadence, time and distance can be zero.
 */
export const ZERO_IS_MISSING: ReadonlySet<Channel> = new Set<Channel>([
  "vo2_l_min",
  "vco2_l_min",
  "ventilation_l_min",
  "inspired_ventilation_l_min",
  "tidal_volume_l",
  "breathing_frequency_per_min",
  "feo2",
  "feco2",
  "fio2",
  "peto2_mmhg",
  "petco2_mmhg",
  "heart_rate_bpm",
  "spo2_pct",
  "lactate_mmol_l",
  "rpe",
  "rr_ms",
  "bag_volume_l",
  "bag_duration_s",
]);

/** Between these the median of a whole channel must lie, from newborn rest to the largest athlete; else the unit is wrong. */
export const MEDIAN_RANGE: Readonly<Partial<Record<Channel, readonly [number, number]>>> = {
  vo2_l_min: [0.05, 9],
  vco2_l_min: [0.05, 11],
  ventilation_l_min: [1, 300],
  inspired_ventilation_l_min: [1, 300],
  tidal_volume_l: [0.05, 7],
  breathing_frequency_per_min: [3, 120],
  feo2: [0.03, 1],
  feco2: [0.001, 0.12],
  fio2: [0.05, 1],
  fico2: [0, 0.1],
  peto2_mmhg: [15, 760],
  petco2_mmhg: [8, 100],
  heart_rate_bpm: [25, 240],
  spo2_pct: [40, 100],
  lactate_mmol_l: [0.1, 35],
  rpe: [6, 20],
  rr_ms: [240, 2500],
  bag_volume_l: [1, 400],
  gas_temperature_c: [-30, 60],
};
