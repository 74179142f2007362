/** Small tables that become a block of a session: lactate steps and body composition regions. */
import { converter } from "../../kernel/channel-units.js";
import { roundTo } from "../../kernel/rounding.js";
import type { Channel } from "../../kernel/series.js";
import { readNumber } from "../../read/number.js";
import type { Proposal, Proposed } from "./propose.js";
import type { Sniffed } from "./sniff.js";
import { bare, REGION_COLUMNS, REGIONS } from "./synonyms.js";

export interface BlockRead {
  readonly block: "lactate" | "dxa";
  /** Keys of the block in order. */
  readonly keys: Readonly<Record<string, unknown>>;
  readonly notes: readonly string[];
}

const STEP_KEYS: readonly Channel[] = [
  "power_w",
  "speed_km_h",
  "lactate_mmol_l",
  "heart_rate_bpm",
  "vo2_l_min",
  "vco2_l_min",
  "rpe",
];
const REST = /^(rest|ruhe|baseline|pre|vor|0)$/i;

/** One row a step. A first row without load, or called rest, is the lactate before the first step. */
export function lactateBlock(sniffed: Sniffed, proposed: Proposed): BlockRead | undefined {
  const used = STEP_KEYS.flatMap((channel) => proposed.columns.filter((column) => column.channel === channel));
  if (!used.some((column) => column.channel === "lactate_mmol_l")) return undefined;
  const notes: string[] = proposed.columns.flatMap((column) => column.assumed);
  let rest: number | undefined;
  const steps: Record<string, number>[] = [];
  for (const row of sniffed.rows) {
    const step: Record<string, number> = {};
    for (const column of used) {
      const value = valueIn(row, column, sniffed);
      if (value !== undefined) step[column.channel] = value;
    }
    const load = step.power_w ?? step.speed_km_h;
    const calledRest = row.some((cell) => REST.test(cell) && !/^0$/.test(cell));
    if (
      steps.length === 0 &&
      rest === undefined &&
      step.lactate_mmol_l !== undefined &&
      (calledRest || load === undefined || load === 0)
    ) {
      rest = step.lactate_mmol_l;
      notes.push(`the first row is the value at rest: ${rest} mmol/L`);
    } else if (Object.keys(step).length > 0) steps.push(step);
  }
  return { block: "lactate", keys: { ...(rest === undefined ? {} : { rest_lactate_mmol_l: rest }), steps }, notes };
}

/** In the channel's own unit; undefined for a mark, and for the zero of a value that cannot be zero. */
function valueIn(row: readonly string[], { channel, header, unit }: Proposal, sniffed: Sniffed): number | undefined {
  const number = readNumber(row[sniffed.headers.indexOf(header)] ?? "", sniffed.decimal);
  const value = converter(channel, unit)?.(number) ?? Number.NaN;
  if (Number.isNaN(value) || (value === 0 && channel !== "power_w" && channel !== "speed_km_h")) return undefined;
  return roundTo(value, 4);
}

const REGION_OF = new Map(
  Object.entries(REGIONS).flatMap(([key, names]) => names.map((name) => [bare(name), key] as const)),
);
const COLUMN_OF = new Map(
  Object.entries(REGION_COLUMNS).flatMap(([key, names]) => names.map((name) => [bare(name), key] as const)),
);

/** One row a region; masses in grams or kilograms, as the headers say. */
export function dxaBlock(sniffed: Sniffed): BlockRead | undefined {
  const columns = sniffed.headers.map((header, k) => {
    const name = bare(header.replace(/[([{][^)\]}]*[)\]}]/g, " ").replace(/[_ ](g|kg|g_cm2)$/i, ""));
    const kilograms = /\bkg\b/i.test(`${header.replaceAll("_", " ")} ${sniffed.unitRow[k] ?? ""}`);
    return { key: COLUMN_OF.get(name), kilograms };
  });
  const named = columns.findIndex((column) => column.key === "region");
  const at = Math.max(named, 0);
  const notes: string[] = [];
  const keys: Record<string, Record<string, number>> = {};
  for (const row of sniffed.rows) {
    const region = REGION_OF.get(bare(row[at] ?? ""));
    if (region === undefined) {
      notes.push(`the row ${JSON.stringify(row[at] ?? "")} names no region that is known here; passed over`);
      continue;
    }
    const values = columns.flatMap(({ key, kilograms }, k): [string, number][] => {
      const value = readNumber(row[k] ?? "", sniffed.decimal);
      if (key === undefined || key === "region" || Number.isNaN(value)) return [];
      if (key === "bmd_g_cm2") return region === "whole" ? [[key, value]] : [];
      return [[key, kilograms ? roundTo(value * 1000, 3) : value]];
    });
    if (values.length > 0) keys[region] = Object.fromEntries(values);
  }
  const ordered = Object.keys(REGIONS).flatMap((region) => (keys[region] ? [[region, keys[region]] as const] : []));
  return ordered.length === 0 ? undefined : { block: "dxa", keys: Object.fromEntries(ordered), notes };
}

/** Text with one number a line and no header: the time between beats, with a header put above it. */
export function beatsText(sniffed: Sniffed): { text: string; unit: "ms" | "s"; beats: number } | undefined {
  if (sniffed.headers.length > 0 || sniffed.rows.some((row) => row.length !== 1)) return undefined;
  const values = sniffed.rows.map((row) => readNumber(row[0] ?? "", sniffed.decimal));
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const unit = middle >= 240 && middle <= 2500 ? "ms" : middle >= 0.24 && middle <= 2.5 ? "s" : undefined;
  if (unit === undefined) return undefined;
  return { text: `RR (${unit})\n${sniffed.rows.map((row) => row[0]).join("\n")}\n`, unit, beats: values.length };
}
