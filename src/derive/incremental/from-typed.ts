/** Samples typed by hand in the session file: one a stage or one a Douglas bag. */
import type { DouglasBag, Incremental, TypedStage } from "../../kernel/generated/session.js";
import type { Series } from "../../kernel/series.js";
import type { Visit } from "../../kernel/visit.js";
import { blank } from "../columns.js";
import { fromSeries } from "./from-series.js";
import type { Samples } from "./samples.js";

const column = <T>(rows: readonly T[], pick: (row: T) => number | undefined) =>
  Float64Array.from(rows, (row) => pick(row) ?? Number.NaN);

export function fromStages(rows: readonly TypedStage[], block: Incremental): Samples {
  const n = rows.length;
  const length = block.protocol?.stage_length_s;
  const timed = rows.every((row) => row.end_s !== undefined) || length !== undefined;
  const measured = rows.some((row) => row.vo2_l_min !== undefined || row.vco2_l_min !== undefined);
  return {
    n,
    line: new Int32Array(n),
    level: measured ? "stage means" : "workload only",
    timed,
    refused: measured ? {} : { vo2: "gas exchange was not measured", vco2: "gas exchange was not measured" },
    notes: [
      "stage means typed by hand",
      ...(timed ? [] : ["the stages have no times (end_s or protocol.stage_length_s)"]),
    ],
    time: Float64Array.from(rows, (row, i) => row.end_s ?? (i + 1) * (length ?? 1)),
    vo2: column(rows, (row) => row.vo2_l_min),
    vco2: column(rows, (row) => row.vco2_l_min),
    ve: column(rows, (row) => row.ventilation_l_min),
    breathingFrequency: column(rows, (row) => row.breathing_frequency_per_min),
    heartRate: column(rows, (row) => row.heart_rate_bpm),
    petO2: blank(n),
    petCO2: blank(n),
    spo2: column(rows, (row) => row.spo2_pct),
    speed: column(rows, (row) => row.speed_km_h),
    grade: column(rows, (row) => row.grade_pct),
    power: column(rows, (row) => row.power_w),
    cadence: blank(n),
    rpe: column(rows, (row) => row.rpe),
  };
}

/** Bags become a series of their own, so that one piece of code computes uptake. */
export function fromBags(rows: readonly DouglasBag[], visit: Visit): Samples {
  const timed = rows.every((row) => row.start_s !== undefined);
  const fraction = (percent: number | undefined) => (percent === undefined ? Number.NaN : percent / 100);
  const series: Series = {
    file: visit.file,
    length: rows.length,
    lines: new Int32Array(rows.length),
    missing: {},
    conditions: { bag_volume_l: "ATPS" },
    channels: {
      time_s: Float64Array.from(rows, (row, i) =>
        row.start_s === undefined || !timed ? i + 1 : row.start_s + row.duration_s,
      ),
      bag_volume_l: column(rows, (row) => row.volume_l),
      bag_duration_s: column(rows, (row) => row.duration_s),
      feo2: Float64Array.from(rows, (row) => fraction(row.o2_pct)),
      feco2: Float64Array.from(rows, (row) => fraction(row.co2_pct)),
      gas_temperature_c: column(rows, (row) => row.gas_temperature_c),
      heart_rate_bpm: column(rows, (row) => row.heart_rate_bpm),
      rpe: column(rows, (row) => row.rpe),
      speed_km_h: column(rows, (row) => row.speed_km_h),
      grade_pct: column(rows, (row) => row.grade_pct),
      power_w: column(rows, (row) => row.power_w),
    },
  };
  const samples = fromSeries(visit, series);
  return { ...samples, timed, notes: ["Douglas bags typed by hand", ...samples.notes] };
}
