/** The channels a resting measurement needs, whatever level the series was recorded at, and why one is absent. */
import type { Channel, Series } from "../../kernel/series.js";
import type { Visit } from "../../kernel/visit.js";
import { exchange } from "../gas/exchange.js";
import { oddBreathsAtRest } from "./odd-breaths.js";

export interface RestingChannels {
  readonly because?: undefined;
  readonly time: Float64Array;
  /** VO2 and VCO2 in L/min STPD, ventilation in L/min BTPS, frequency and heart rate in 1/min; NaN = missing. */
  readonly list: readonly Float64Array[];
  /** Per channel: the reason when it is absent. */
  readonly missing: readonly (string | undefined)[];
  /** Lines of the file whose breath is left out of the means, as a cough, swallow or sigh. */
  readonly leftOut: readonly number[];
}

/** Channels of the series, or the reason why the resting measurement cannot be used. */
export function restingChannels(visit: Visit, series: Series): RestingChannels | { readonly because: string } {
  const time = series.channels.time_s;
  if (time === undefined) return { because: `${series.file} has no time column` };
  const { room, rest } = visit.session;
  const gas = exchange({ series, room, choices: visit.choices, gasTemperatureC: rest?.gas_temperature_c });
  const refused = gas.refused.vo2 ?? gas.refused.vco2;
  if (refused !== undefined) return { because: refused };
  for (const [name, values] of [
    ["oxygen uptake", gas.vo2],
    ["carbon dioxide output", gas.vco2],
  ] as const)
    if (values.every(Number.isNaN)) return { because: `${series.file} holds no ${name}` };

  const heart = series.channels.heart_rate_bpm ?? new Float64Array(series.length).fill(Number.NaN);
  const ventilation = unstated(series) ? gas.ve.map(() => Number.NaN) : gas.ve;
  const absent = (xs: Float64Array) => (xs.every(Number.isNaN) ? `${series.file} holds none` : undefined);
  const odd = oddBreathsAtRest(time, [gas.vo2, gas.vco2, ventilation]);
  const kept = (xs: Float64Array) => xs.map((x, i) => (odd[i] === 1 ? Number.NaN : x));
  return {
    time,
    leftOut: Array.from(series.lines).filter((_, i) => odd[i] === 1),
    list: [...[gas.vo2, gas.vco2, ventilation, gas.breathingFrequency].map(kept), heart],
    missing: [
      undefined,
      undefined,
      unstated(series)
        ? "the gas condition of the volume is not stated in lab.yaml"
        : (gas.refused.ve ?? absent(ventilation)),
      absent(gas.breathingFrequency),
      absent(heart),
    ],
  };
}

/** Whether the series holds a volume whose gas condition nobody stated. Bags are saturated at their own temperature. */
function unstated(series: Series): boolean {
  const volume = (["ventilation_l_min", "tidal_volume_l"] as const satisfies readonly Channel[]).find(
    (channel) => series.channels[channel] !== undefined,
  );
  return volume !== undefined && series.conditions[volume] === undefined;
}
