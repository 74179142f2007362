/** Samples of a raw series. A mark for "missing" (0 in a channel that cannot be 0) becomes NaN; nothing else changes. */

import type { Series } from "../../kernel/series.js";
import type { Visit } from "../../kernel/visit.js";
import { blank, positive } from "../columns.js";
import { exchange } from "../gas/exchange.js";
import type { Samples } from "./samples.js";

export function fromSeries(visit: Visit, series: Series): Samples {
  const n = series.length;
  const gas = exchange({
    series,
    room: visit.session.room,
    choices: visit.choices,
    gasTemperatureC: visit.session.incremental?.gas_temperature_c,
  });
  const none = blank(n); // shared: cleaning only ever takes values away
  const asRead = (xs: Float64Array | undefined) => xs ?? none;
  const above0 = (xs: Float64Array | undefined) => (xs === undefined ? none : positive(xs, n));
  const c = series.channels;
  const notes = [...gas.notes];
  const volume = c.ventilation_l_min ? "ventilation_l_min" : c.tidal_volume_l ? "tidal_volume_l" : undefined;
  if (gas.level === "measured uptake" && volume !== undefined && series.conditions[volume] === undefined)
    notes.push("the gas condition of ventilation is not stated; it is shown as recorded");
  return {
    n,
    line: series.lines,
    level: gas.level,
    timed: c.time_s !== undefined,
    refused: gas.refused,
    notes,
    time: c.time_s?.slice() ?? Float64Array.from({ length: n }, (_, i) => i + 1),
    vo2: gas.vo2,
    vco2: gas.vco2,
    ve: gas.ve,
    breathingFrequency: gas.breathingFrequency,
    heartRate: above0(c.heart_rate_bpm),
    petO2: above0(c.peto2_mmhg),
    petCO2: above0(c.petco2_mmhg),
    spo2: above0(c.spo2_pct),
    speed: asRead(c.speed_km_h),
    grade: asRead(c.grade_pct),
    power: asRead(c.power_w),
    cadence: asRead(c.cadence_rpm),
    rpe: above0(c.rpe),
  };
}
