/** The channels of a test as arrays of one length, before cleaning: from a series, typed stages or typed bags. */
import type { RawLevel } from "../gas/exchange.js";

/** Channels of the kernel's Breaths that hold numbers; all NaN where missing. */
const CHANNEL_NAMES = [
  "time",
  "vo2",
  "vco2",
  "ve",
  "breathingFrequency",
  "heartRate",
  "petO2",
  "petCO2",
  "spo2",
  "speed",
  "grade",
  "power",
  "cadence",
  "rpe",
] as const;
export type BreathChannel = Exclude<(typeof CHANNEL_NAMES)[number], "time">;

/** Plain names for tables and sentences. */
/** Units as a text says them; perceived exertion has none. */
export const CHANNEL_UNITS: Readonly<Record<BreathChannel, string>> = {
  vo2: "L/min",
  vco2: "L/min",
  ve: "L/min",
  breathingFrequency: "per min",
  heartRate: "per min",
  petO2: "mmHg",
  petCO2: "mmHg",
  spo2: "%",
  speed: "km/h",
  grade: "%",
  power: "W",
  cadence: "per min",
  rpe: "",
};

export const CHANNEL_TITLES: Readonly<Record<BreathChannel, string>> = {
  vo2: "oxygen uptake",
  vco2: "carbon dioxide output",
  ve: "ventilation",
  breathingFrequency: "breathing frequency",
  heartRate: "heart rate",
  petO2: "end-tidal oxygen",
  petCO2: "end-tidal carbon dioxide",
  spo2: "oxygen saturation",
  speed: "speed",
  grade: "grade",
  power: "power",
  cadence: "cadence",
  rpe: "perceived exertion",
};

export type Columns = { readonly [Name in (typeof CHANNEL_NAMES)[number]]: Float64Array };

export interface Samples extends Columns {
  readonly n: number;
  readonly line: Int32Array;
  readonly level: RawLevel;
  /** False when no clock is known: time then only counts the samples. */
  readonly timed: boolean;
  readonly refused: { readonly vo2?: string; readonly vco2?: string; readonly ve?: string };
  readonly notes: readonly string[];
}
