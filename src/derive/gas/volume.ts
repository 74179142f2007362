/** Volumes of a series: found in whatever way they were recorded, and brought from one gas condition to another. */
import { OutOfRange } from "../../kernel/formula.js";
import type { Choices } from "../../kernel/generated/choices.js";
import type { Room } from "../../kernel/generated/session.js";
import type { Channel, GasCondition, Series } from "../../kernel/series.js";
import { blank, hasValues, positive } from "../columns.js";
import { stationPressure } from "./air.js";
import { volumeFactor } from "./volume-factor.js";

export interface VolumeInput {
  readonly series: Series;
  readonly room: Room | undefined;
  readonly choices: Choices;
  /** Of the gas in the meter, where the series has no column for it. */
  readonly gasTemperatureC: number | undefined;
}

export interface Volume {
  readonly xs: Float64Array; // L/min
  readonly condition: GasCondition | undefined;
  readonly channel: Channel;
}

/** L/min in the condition it was recorded in: as a flow, from tidal volume and frequency, or from bags. */
export function expiredVolume(series: Series, frequency: Float64Array, notes: string[]): Volume {
  const n = series.length;
  const flow = positive(series.channels.ventilation_l_min, n);
  if (hasValues(flow))
    return { xs: flow, condition: series.conditions.ventilation_l_min, channel: "ventilation_l_min" };
  const bag = positive(series.channels.bag_volume_l, n);
  if (hasValues(bag)) {
    const seconds = positive(series.channels.bag_duration_s, n);
    return {
      xs: bag.map((litres, i) => (litres * 60) / (seconds[i] as number)),
      condition: series.conditions.bag_volume_l ?? "ATPS", // gas in a bag is saturated at its own temperature
      channel: "bag_volume_l",
    };
  }
  const tidal = positive(series.channels.tidal_volume_l, n);
  if (hasValues(tidal)) notes.push("ventilation is tidal volume times breathing frequency");
  return {
    xs: tidal.map((litres, i) => litres * (frequency[i] as number)),
    condition: series.conditions.tidal_volume_l,
    channel: "tidal_volume_l",
  };
}

/** As recorded; else, breath by breath, from the time between breaths. A step over a gap gives none. */
export function breathingFrequency(series: Series, notes: string[]): Float64Array {
  const n = series.length;
  const recorded = positive(series.channels.breathing_frequency_per_min, n);
  const time = series.channels.time_s;
  if (hasValues(recorded) || time === undefined || series.channels.tidal_volume_l === undefined) return recorded;
  const steps = time.map((t, i) => (i === 0 ? Number.NaN : t - (time[i - 1] as number)));
  const usual = Float64Array.from(steps.filter((s) => s > 0)).sort();
  const middle = usual[usual.length >> 1];
  if (middle === undefined || middle > 8) return recorded;
  notes.push("breathing frequency is taken from the time between breaths");
  return steps.map((s) => (s > 0 && s < 3 * middle ? 60 / s : Number.NaN));
}

/** A volume brought to another condition; refuse() hears why it cannot be. A condition that is not stated stays as it is. */
export function converted(
  input: VolumeInput,
  from: Volume,
  to: GasCondition,
  refuse: (why: string) => void,
): Float64Array {
  const { xs } = from;
  if (!hasValues(xs) || from.condition === to || from.condition === undefined) return xs;
  const pressure = stationPressure(input.room);
  if ("missing" in pressure) {
    refuse(`${pressure.missing}: ${from.condition} cannot be converted to ${to}`);
    return blank(xs.length);
  }
  const ambient = from.condition === "ambient";
  // Ambient air is at the temperature its humidity was read at; a meter's thermometer belongs to expired gas.
  const own = ambient ? undefined : input.series.channels.gas_temperature_c;
  const humidity = input.room?.humidity_pct === undefined ? Number.NaN : input.room.humidity_pct / 100;
  const still = ambient ? input.room?.temperature_c : input.gasTemperatureC;
  const needsTemperature = from.condition !== "BTPS" && from.condition !== "STPD";
  if (needsTemperature && still === undefined && (own === undefined || !hasValues(own))) {
    refuse(
      ambient
        ? "room temperature (room.temperature_c) is not stated"
        : "the temperature of the gas in the meter (gas_temperature_c) is not stated",
    );
    return blank(xs.length);
  }
  if (ambient && Number.isNaN(humidity)) {
    refuse("relative humidity (room.humidity_pct) is not stated");
    return blank(xs.length);
  }
  let before = Number.NaN;
  let factor = Number.NaN;
  const out = blank(xs.length);
  for (let i = 0; i < xs.length; i++) {
    const recorded = own?.[i];
    const here = recorded !== undefined && !Number.isNaN(recorded) ? recorded : (still ?? Number.NaN);
    const t = needsTemperature ? here : 37;
    if (!(t === before) || Number.isNaN(factor)) {
      if (Number.isNaN(t)) continue;
      try {
        factor = volumeFactor(from.condition, to, pressure.value, t, ambient ? humidity : 1);
      } catch (error) {
        if (!(error instanceof OutOfRange)) throw error;
        refuse(error.message);
        return blank(xs.length);
      }
      before = t;
    }
    out[i] = (xs[i] as number) * factor;
  }
  return out;
}
