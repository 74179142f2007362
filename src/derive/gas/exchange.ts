/**
 * Ventilation, uptake and output of a series, whatever level it was recorded at: measured uptake, ventilation with
 * gas fractions, or bags. Every channel comes out as L/min (ventilation BTPS, gases STPD) or with the reason why not.
 */
import { OutOfRange } from "../../kernel/formula.js";
import type { Choices } from "../../kernel/generated/choices.js";
import type { Room } from "../../kernel/generated/session.js";
import type { Channel, GasCondition, Series } from "../../kernel/series.js";
import { inspiredGas, stationPressure } from "./air.js";
import { HIGHEST_FIO2, haldane } from "./haldane.js";
import { volumeFactor } from "./volume-factor.js";

export type RawLevel = "measured uptake" | "gas fractions" | "bags" | "stage means" | "workload only";

export interface Exchange {
  readonly level: RawLevel;
  readonly vo2: Float64Array;
  readonly vco2: Float64Array;
  readonly ve: Float64Array;
  readonly breathingFrequency: Float64Array;
  /** Why a channel has no value at all. */
  readonly refused: { readonly vo2?: string; readonly vco2?: string; readonly ve?: string };
  readonly notes: readonly string[];
}
export interface ExchangeInput {
  readonly series: Series;
  readonly room: Room | undefined;
  readonly choices: Choices;
  /** Of the gas in the meter, where the series has no column for it. */
  readonly gasTemperatureC: number | undefined;
}

const blank = (n: number) => new Float64Array(n).fill(Number.NaN);
const positive = (xs: Float64Array | undefined, n: number): Float64Array => {
  const out = blank(n);
  if (xs !== undefined) for (let i = 0; i < n; i++) if ((xs[i] as number) > 0) out[i] = xs[i] as number;
  return out;
};
const has = (xs: Float64Array) => xs.some((x) => !Number.isNaN(x));

export function exchange(input: ExchangeInput): Exchange {
  const { series } = input;
  const n = series.length;
  const channel = (name: Channel) => positive(series.channels[name], n);
  const notes: string[] = [];
  const refused: { vo2?: string; vco2?: string; ve?: string } = {};

  const frequency = breathingFrequency(series, notes);
  const volume = expiredVolume(series, frequency, notes);
  const inspiredVolume = channel("inspired_ventilation_l_min");
  const bags = has(channel("bag_volume_l"));

  const ve = converted(input, volume, "BTPS", (why) => {
    refused.ve = why;
  });
  const vo2 = channel("vo2_l_min");
  const vco2 = channel("vco2_l_min");
  if (has(vo2) || has(vco2)) {
    const out = (xs: Float64Array, name: "vo2_l_min" | "vco2_l_min", key: "vo2" | "vco2") => {
      const condition = series.conditions[name];
      if (condition === undefined || condition === "STPD") return xs;
      return converted(input, { xs, condition, channel: name }, "STPD", (why) => {
        refused[key] = why;
      });
    };
    return {
      level: "measured uptake",
      vo2: out(vo2, "vo2_l_min", "vo2"),
      vco2: out(vco2, "vco2_l_min", "vco2"),
      ve,
      breathingFrequency: frequency,
      refused,
      notes,
    };
  }

  const feo2 = channel("feo2");
  const feco2 = channel("feco2");
  const level: RawLevel = bags ? "bags" : "gas fractions";
  const none = (why: string): Exchange => {
    for (const key of ["vo2", "vco2"] as const) refused[key] = why;
    return { level, vo2: blank(n), vco2: blank(n), ve, breathingFrequency: frequency, refused, notes };
  };
  if (!has(feo2) && !has(feco2))
    return { ...none("gas exchange was not measured"), level: has(volume.xs) ? level : "workload only" };
  if (!has(feo2) || !has(feco2))
    return none(`the expired ${has(feo2) ? "carbon dioxide" : "oxygen"} fraction was not recorded`);

  const measured = has(volume.xs) ? "expired" : "inspired";
  const source =
    measured === "expired"
      ? volume
      : {
          xs: inspiredVolume,
          condition: series.conditions.inspired_ventilation_l_min,
          channel: "inspired_ventilation_l_min" as const,
        };
  if (!has(source.xs)) return none("ventilation was not recorded");
  if (source.condition === undefined)
    return none("the gas condition of ventilation (ATPS, BTPS, STPD …) is not stated in the column mapping");
  let stopped = "";
  const standard = converted(input, source, "STPD", (why) => {
    stopped = why;
  });
  if (stopped !== "") return none(stopped);

  const fio2 = channel("fio2");
  const fico2 = series.channels.fico2 ?? blank(n);
  const stated = inspiredGas(input.room, input.choices);
  const perRow = has(fio2);
  if (!perRow && "missing" in stated) return none(stated.missing);
  const back = "value" in stated ? stated.value : undefined;
  if (!perRow && back !== undefined) {
    if (back.fio2 > HIGHEST_FIO2)
      return none(`inspired oxygen was ${back.fio2}: uptake is not computed for oxygen-enriched gas`);
    notes.push(`inspired gas ${back.from}`);
  }
  let refusedRows = 0;
  let lastReason = "";
  for (let i = 0; i < n; i++) {
    const o2 = perRow ? (fio2[i] as number) : (back?.fio2 as number);
    const co2 = perRow && !Number.isNaN(fico2[i] as number) ? (fico2[i] as number) : back?.fico2;
    const flow = standard[i] as number;
    if (Number.isNaN(flow + o2 + (feo2[i] as number) + (feco2[i] as number)) || co2 === undefined) continue;
    try {
      const out = haldane(flow, feo2[i] as number, feco2[i] as number, o2, co2, measured);
      vo2[i] = out.vo2 > 0 ? out.vo2 : Number.NaN;
      vco2[i] = out.vco2 > 0 ? out.vco2 : Number.NaN;
      if (measured === "inspired") ve[i] = out.expired;
    } catch (error) {
      if (!(error instanceof OutOfRange)) throw error;
      refusedRows++;
      lastReason = error.message;
    }
  }
  if (!has(vo2)) return none(lastReason || "the inspired carbon dioxide fraction is not stated");
  if (refusedRows > 0) notes.push(`${refusedRows} rows without uptake: ${lastReason}`);
  if (measured === "inspired") {
    const body = converted(
      input,
      { xs: ve, condition: "STPD", channel: "inspired_ventilation_l_min" },
      "BTPS",
      (why) => {
        refused.ve = why;
      },
    );
    return { level, vo2, vco2, ve: body, breathingFrequency: frequency, refused, notes };
  }
  return { level, vo2, vco2, ve, breathingFrequency: frequency, refused, notes };
}

interface Volume {
  readonly xs: Float64Array; // L/min
  readonly condition: GasCondition | undefined;
  readonly channel: Channel;
}

/** L/min in the condition it was recorded in: as a flow, from tidal volume and frequency, or from bags. */
function expiredVolume(series: Series, frequency: Float64Array, notes: string[]): Volume {
  const n = series.length;
  const flow = positive(series.channels.ventilation_l_min, n);
  if (has(flow)) return { xs: flow, condition: series.conditions.ventilation_l_min, channel: "ventilation_l_min" };
  const bag = positive(series.channels.bag_volume_l, n);
  if (has(bag)) {
    const seconds = positive(series.channels.bag_duration_s, n);
    return {
      xs: bag.map((litres, i) => (litres * 60) / (seconds[i] as number)),
      condition: series.conditions.bag_volume_l ?? "ATPS", // gas in a bag is saturated at its own temperature
      channel: "bag_volume_l",
    };
  }
  const tidal = positive(series.channels.tidal_volume_l, n);
  if (has(tidal)) notes.push("ventilation is tidal volume times breathing frequency");
  return {
    xs: tidal.map((litres, i) => litres * (frequency[i] as number)),
    condition: series.conditions.tidal_volume_l,
    channel: "tidal_volume_l",
  };
}

/** As recorded; else, breath by breath, from the time between breaths. A step over a gap gives none. */
function breathingFrequency(series: Series, notes: string[]): Float64Array {
  const n = series.length;
  const recorded = positive(series.channels.breathing_frequency_per_min, n);
  const time = series.channels.time_s;
  if (has(recorded) || time === undefined || series.channels.tidal_volume_l === undefined) return recorded;
  const steps = time.map((t, i) => (i === 0 ? Number.NaN : t - (time[i - 1] as number)));
  const usual = Float64Array.from(steps.filter((s) => s > 0)).sort();
  const middle = usual[usual.length >> 1];
  if (middle === undefined || middle > 8) return recorded;
  notes.push("breathing frequency is taken from the time between breaths");
  return steps.map((s) => (s > 0 && s < 3 * middle ? 60 / s : Number.NaN));
}

/** A volume brought to another condition; refuse() hears why it cannot be. A condition that is not stated stays as it is. */
function converted(input: ExchangeInput, from: Volume, to: GasCondition, refuse: (why: string) => void): Float64Array {
  const { xs } = from;
  if (!has(xs) || from.condition === to || from.condition === undefined) return xs.slice();
  const pressure = stationPressure(input.room);
  if ("missing" in pressure) {
    refuse(`${pressure.missing}: ${from.condition} cannot be converted to ${to}`);
    return blank(xs.length);
  }
  const ambient = from.condition === "ambient";
  const own = input.series.channels.gas_temperature_c;
  const humidity = input.room?.humidity_pct === undefined ? Number.NaN : input.room.humidity_pct / 100;
  const still = ambient ? input.room?.temperature_c : input.gasTemperatureC;
  const needsTemperature = from.condition !== "BTPS" && from.condition !== "STPD";
  if (needsTemperature && still === undefined && (own === undefined || !has(own))) {
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
