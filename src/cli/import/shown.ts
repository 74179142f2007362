/** How an import is told: what the file is, which column is what, the first rows as they will be read. */
import { CHANNELS, type Channel, type Series } from "../../kernel/series.js";
import { visible } from "../draw-diagnostic.js";
import type { Proposed } from "./propose.js";
import type { Sniffed } from "./sniff.js";

const NAMES = { ",": "commas", ";": "semicolons", "\t": "tabs", "|": "bars" } as const;

export function fileFacts(file: string, sniffed: Sniffed): string {
  const width = Math.max(sniffed.headers.length, sniffed.rows[0]?.length ?? 0);
  const parts = [
    `${sniffed.rows.length} rows of ${width} ${width === 1 ? "column" : "columns"}`,
    ...(width > 1 ? [`${NAMES[sniffed.delimiter]} between cells`] : []),
    sniffed.decimal === "," ? "decimal comma" : "decimal point",
    sniffed.headerLine === undefined ? "no headers" : `headers on line ${sniffed.headerLine}`,
    ...(sniffed.unitRow.length > 0 ? ["a row of units below"] : []),
    ...(sniffed.endsBefore === undefined
      ? []
      : [`a summary below the data, from ${JSON.stringify(sniffed.endsBefore)} on`]),
    ...(sniffed.encoding === undefined ? [] : [`written in ${sniffed.encoding}`]),
    ...(sniffed.marks.length === 0
      ? []
      : [`${sniffed.marks.map((m) => JSON.stringify(m)).join(" and ")} for no value`]),
  ];
  return `${visible(file)}: ${parts.join(", ")}`;
}

export function columnTable({ columns, passedOver }: Proposed): string {
  const rows = columns.map(({ channel, header, unit, condition }) => [channel, visible(header), unit, condition ?? ""]);
  const left = passedOver.map(({ header, because }) => `  passed over: ${visible(header)} (${because})`);
  return [aligned([["channel", "column", "unit", "gas"], ...rows]), ...left].join("\n");
}

/** The first rows, in the channels' own units: what every later step sees. */
export function firstRows(series: Series, count = 5): string {
  const channels = Object.keys(series.channels) as Channel[];
  const rows = Array.from({ length: Math.min(count, series.length) }, (_, i) =>
    channels.map((channel) => {
      const value = series.channels[channel]?.[i] ?? Number.NaN;
      return Number.isNaN(value) ? "-" : String(Number(value.toPrecision(5)));
    }),
  );
  const heads = channels.map((channel) => channel);
  const units = channels.map((channel) => CHANNELS[channel]);
  return aligned([heads, units, ...rows]);
}

function aligned(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, k) => Math.max(...rows.map((row) => [...(row[k] ?? "")].length)));
  return rows
    .map((row) =>
      `  ${row.map((cell, k) => cell + " ".repeat((widths[k] ?? 0) - [...cell].length)).join("  ")}`.trimEnd(),
    )
    .join("\n");
}
