/** Writes generated rows as the CSV text some instrument might give: chosen columns, units, separators, decimal mark. */
import type { GeneratedTest, Row } from "./breaths.js";

export interface CsvColumn {
  readonly channel: keyof Row;
  /** Header cell. */
  readonly title: string;
  /** Cell of a unit row; given for all columns or for none. */
  readonly unit?: string;
  /** Written value = value × factor. */
  readonly factor?: number;
  readonly decimals: number;
}
export interface CsvStyle {
  readonly separator: "," | ";" | "\t";
  readonly decimal: "." | ",";
  /** How a reading of 0 in a gas, volume or heart-rate channel is written. */
  readonly missing: "0" | "" | "-";
  readonly lineEnd: "\n" | "\r\n";
  readonly byteOrderMark: boolean;
}
export const PLAIN: CsvStyle = { separator: ",", decimal: ".", missing: "0", lineEnd: "\n", byteOrderMark: false };
export const COMMA: CsvStyle = { separator: ";", decimal: ",", missing: "-", lineEnd: "\r\n", byteOrderMark: true };

export const LITRES: readonly CsvColumn[] = [
  { channel: "time", title: "time_s", decimals: 1 },
  { channel: "vo2", title: "vo2_l_min", decimals: 3 },
  { channel: "vco2", title: "vco2_l_min", decimals: 3 },
  { channel: "ve", title: "ventilation_l_min", decimals: 1 },
  { channel: "vt", title: "tidal_volume_l", decimals: 2 },
  { channel: "bf", title: "breathing_frequency_per_min", decimals: 1 },
  { channel: "peto2", title: "peto2_mmhg", decimals: 1 },
  { channel: "petco2", title: "petco2_mmhg", decimals: 1 },
  { channel: "hr", title: "heart_rate_bpm", decimals: 0 },
  { channel: "speed", title: "speed_km_h", decimals: 2 },
  { channel: "grade", title: "grade_pct", decimals: 1 },
  { channel: "power", title: "power_w", decimals: 0 },
];
/** The same in mL/min and kPa with a row of units. */
export const MILLILITRES: readonly CsvColumn[] = LITRES.map((column) => {
  if (column.channel === "vo2" || column.channel === "vco2")
    return { ...column, title: column.channel.toUpperCase(), unit: "mL/min", factor: 1000, decimals: 0 };
  if (column.channel === "peto2" || column.channel === "petco2")
    return { ...column, title: column.channel.toUpperCase(), unit: "kPa", factor: 0.133322, decimals: 2 };
  return { ...column, unit: "" };
});

const LOADS: readonly (keyof Row)[] = ["speed", "grade", "power", "time"];

export function csvText(test: GeneratedTest, columns: readonly CsvColumn[] = LITRES, style: CsvStyle = PLAIN): string {
  const lines = [columns.map((c) => c.title).join(style.separator)];
  if (columns.some((c) => c.unit !== undefined)) lines.push(columns.map((c) => c.unit ?? "").join(style.separator));
  for (const row of test.rows)
    lines.push(
      columns
        .map((c) => {
          const value = row[c.channel];
          if (value === 0 && !LOADS.includes(c.channel)) return style.missing;
          return (value * (c.factor ?? 1)).toFixed(c.decimals).replace(".", style.decimal);
        })
        .join(style.separator),
    );
  return (style.byteOrderMark ? "\uFEFF" : "") + lines.join(style.lineEnd) + style.lineEnd;
}
