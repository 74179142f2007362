/**
 * Ventilation, uptake and output of a series, whatever level it was recorded at: measured uptake, ventilation with
 * gas fractions, or bags. Every channel comes out as L/min (ventilation BTPS, gases STPD) or with the reason why not.
 */
import { OutOfRange } from "../../kernel/formula.js";
import type { Channel } from "../../kernel/series.js";
import { blank, hasValues, positive } from "../columns.js";
import { inspiredGas } from "./air.js";
import { HIGHEST_FIO2, haldane } from "./haldane.js";
import { breathingFrequency, converted, expiredVolume, type VolumeInput } from "./volume.js";

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

export function exchange(input: VolumeInput): Exchange {
  const { series } = input;
  const n = series.length;
  const channel = (name: Channel) => positive(series.channels[name], n);
  const notes: string[] = [];
  const refused: { vo2?: string; vco2?: string; ve?: string } = {};

  const frequency = breathingFrequency(series, notes);
  const volume = expiredVolume(series, frequency, notes);

  const ve = converted(input, volume, "BTPS", (why) => {
    refused.ve = why;
  });
  const vo2 = channel("vo2_l_min");
  const vco2 = channel("vco2_l_min");
  if (hasValues(vo2) || hasValues(vco2)) {
    const enriched = input.room?.fio2 !== undefined && input.room.fio2 > HIGHEST_FIO2 ? input.room.fio2 : undefined;
    if (enriched !== undefined) {
      refused.vo2 = `inspired oxygen was ${enriched}: with little nitrogen a small error of a fraction becomes a large one of uptake, so uptake in oxygen-enriched gas is not given`;
      return {
        level: "measured uptake",
        vo2: blank(n),
        vco2: converted(
          input,
          { xs: vco2, condition: series.conditions.vco2_l_min ?? "STPD", channel: "vco2_l_min" },
          "STPD",
          (why) => {
            refused.vco2 = why;
          },
        ),
        ve,
        breathingFrequency: frequency,
        refused,
        notes,
      };
    }
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
  const level: RawLevel = hasValues(channel("bag_volume_l")) ? "bags" : "gas fractions";
  const none = (why: string): Exchange => {
    for (const key of ["vo2", "vco2"] as const) refused[key] = why;
    return { level, vo2: blank(n), vco2: blank(n), ve, breathingFrequency: frequency, refused, notes };
  };
  if (!hasValues(feo2) && !hasValues(feco2))
    return { ...none("gas exchange was not measured"), level: hasValues(volume.xs) ? level : "workload only" };
  if (!hasValues(feo2) || !hasValues(feco2))
    return none(`the expired ${hasValues(feo2) ? "carbon dioxide" : "oxygen"} fraction was not recorded`);

  const measured = hasValues(volume.xs) ? "expired" : "inspired";
  const source =
    measured === "expired"
      ? volume
      : {
          xs: channel("inspired_ventilation_l_min"),
          condition: series.conditions.inspired_ventilation_l_min,
          channel: "inspired_ventilation_l_min" as const,
        };
  if (!hasValues(source.xs)) return none("ventilation was not recorded");
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
  const perRow = hasValues(fio2);
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
  if (!hasValues(vo2)) return none(lastReason || "the inspired carbon dioxide fraction is not stated");
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
