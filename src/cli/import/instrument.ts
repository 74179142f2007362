/** What is sniffed and proposed, as an instrument of lab.yaml. */
import type { Channel } from "../../kernel/series.js";
import type { Entry } from "./lab-entry.js";
import type { Proposed } from "./propose.js";
import type { Sniffed } from "./sniff.js";

/** `kind` where the user named one. */
export function instrumentEntry(sniffed: Sniffed, { columns }: Proposed, kind?: string): Entry {
  const channels = new Set(columns.map((column) => column.channel));
  const measures = measuresOf(channels);
  return {
    kind: kind ?? kindOf(channels),
    ...(measures.length === 0 ? {} : { measures }),
    ...(sniffed.encoding === undefined ? {} : { encoding: sniffed.encoding }),
    ...(sniffed.headers.length < 2 && sniffed.decimal === "."
      ? {}
      : { delimiter: sniffed.delimiter === "\t" ? "tab" : sniffed.delimiter }),
    ...(sniffed.decimal === "," ? { decimal: "," } : {}),
    ...((sniffed.headerLine ?? 1) === 1 ? {} : { header_row: sniffed.headerLine }),
    ...(sniffed.skipped === 0 ? {} : { skip_rows: sniffed.skipped }),
    ...(sniffed.endsBefore === undefined ? {} : { ends_before: [sniffed.endsBefore] }),
    ...(sniffed.marks.length === 0 ? {} : { missing: sniffed.marks }),
    columns: Object.fromEntries(
      columns.map(({ channel, header, unit, condition }) => [
        channel,
        { column: header, unit, ...(condition === undefined ? {} : { condition }) },
      ]),
    ),
  };
}

function kindOf(channels: ReadonlySet<Channel>): string {
  if (channels.has("bag_volume_l")) return "douglas bag system";
  if (channels.has("vo2_l_min") || channels.has("feo2") || channels.has("ventilation_l_min"))
    return "gas exchange system";
  if (channels.has("lactate_mmol_l")) return "lactate analyser";
  if (channels.has("rr_ms") || channels.has("heart_rate_bpm")) return "heart-rate monitor";
  return channels.has("spo2_pct") ? "pulse oximeter" : "other";
}

function measuresOf(channels: ReadonlySet<Channel>): string[] {
  const any = (...names: Channel[]) => names.some((name) => channels.has(name));
  return [
    any("vo2_l_min", "vco2_l_min", "feo2", "feco2", "peto2_mmhg", "petco2_mmhg") ? "gas analyser" : "",
    any("ventilation_l_min", "inspired_ventilation_l_min", "tidal_volume_l", "vo2_l_min", "bag_volume_l")
      ? "flow sensor"
      : "",
    any("heart_rate_bpm", "rr_ms") ? "heart-rate monitor" : "",
    any("lactate_mmol_l") ? "lactate analyser" : "",
    any("spo2_pct") ? "pulse oximeter" : "",
  ].filter((name) => name !== "");
}
