/** Which column is which channel, in which unit: by the trade's names, then by what values are possible. */
import { converter, MEDIAN_RANGE, unitsOf } from "../../kernel/channel-units.js";
import { CHANNELS, type Channel, type GasCondition } from "../../kernel/series.js";
import { median } from "../../kernel/statistics.js";
import { readNumber } from "../../read/number.js";
import { knownUnit, partsOf, withoutUnit } from "./column-words.js";
import type { Sniffed } from "./sniff.js";
import { bare, SYNONYMS } from "./synonyms.js";

export interface Proposal {
  readonly channel: Channel;
  readonly header: string;
  readonly unit: string;
  readonly condition?: GasCondition;
  /** How sure: what was read, and what was only assumed. */
  readonly assumed: readonly string[];
}
export interface Proposed {
  readonly columns: readonly Proposal[];
  readonly passedOver: readonly { readonly header: string; readonly because: string }[];
  /** Sentences on what a person must still say. */
  readonly missing: readonly string[];
}
/** What the user said of a channel; it goes before every guess. */
export type Told = Readonly<Partial<Record<Channel, { header?: string; unit?: string; condition?: GasCondition }>>>;

const VOLUMES: readonly Channel[] = [
  "ventilation_l_min",
  "inspired_ventilation_l_min",
  "tidal_volume_l",
  "bag_volume_l",
];
const BY_NAME = new Map(
  (Object.entries(SYNONYMS) as [Channel, readonly string[]][]).flatMap(([channel, names]) =>
    [...names, channel].map((name) => [bare(name), channel] as const),
  ),
);

export function propose(sniffed: Sniffed, told: Told = {}): Proposed {
  const toldHeaders = new Map(
    Object.entries(told).flatMap(([channel, said]) => (said?.header ? [[said.header, channel as Channel]] : [])),
  );
  const columns: Proposal[] = [];
  const passedOver: { header: string; because: string }[] = [];
  sniffed.headers.forEach((header, k) => {
    if (header === "") return;
    const { name, unit: written, condition } = partsOf(header, sniffed.unitRow[k] ?? "");
    const channel = toldHeaders.get(header) ?? channelOf(name, written, told);
    if (channel === undefined) {
      passedOver.push({
        header,
        because: /kg/i.test(`${name} ${written}`)
          ? "per kilogram is computed from the mass of the visit"
          : "no channel goes by this name",
      });
      return;
    }
    if (columns.some((column) => column.channel === channel)) {
      passedOver.push({
        header,
        because: `${channel} is taken from ${columns.find((c) => c.channel === channel)?.header}`,
      });
      return;
    }
    const cells = sniffed.rows.map((row) => row[k] ?? "");
    if (!cells.some((cell) => /\d/.test(cell))) {
      passedOver.push({ header, because: "the column is empty" });
      return;
    }
    columns.push(proposal(channel, header, written, condition, cells, sniffed, told));
  });
  return { columns: inOrder(columns), passedOver, missing: missingFrom(columns) };
}

function proposal(
  channel: Channel,
  header: string,
  written: string,
  condition: GasCondition | undefined,
  cells: readonly string[],
  sniffed: Sniffed,
  told: Told,
): Proposal {
  const assumed: string[] = [];
  const stated = told[channel]?.unit ?? knownUnit(written, channel);
  const unit =
    channel === "time_s"
      ? timeUnit(cells, told[channel]?.unit, written, header, assumed)
      : (stated ?? guessUnit(channel, cells, sniffed.decimal, assumed));
  const gas = told[channel]?.condition ?? condition;
  if ((channel === "vo2_l_min" || channel === "vco2_l_min") && gas === undefined) {
    assumed.push(`${header} is STPD, as uptake and output are defined`);
    return { channel, header, unit, condition: "STPD", assumed };
  }
  return { channel, header, unit, ...(gas === undefined ? {} : { condition: gas }), assumed };
}

function channelOf(name: string, unit: string, told: Told): Channel | undefined {
  if (/kg/i.test(unit) || /\/\s*kg|per\s*kg|pro\s*kg/i.test(name)) return undefined;
  const exact = BY_NAME.get(bare(name));
  const channel = exact ?? BY_NAME.get(bare(withoutUnit(name)));
  // "RR" is a rate of breathing, or, in milliseconds or seconds, the time between beats.
  const settled =
    channel === "breathing_frequency_per_min" && bare(name) === "rr" && /^m?s$/i.test(unit) ? "rr_ms" : channel;
  return settled !== undefined && told[settled]?.header !== undefined ? undefined : settled;
}

/** The first unit in which the middle of the column is possible for a client. */
function guessUnit(channel: Channel, cells: readonly string[], decimal: "." | ",", assumed: string[]): string {
  const own = CHANNELS[channel];
  const numbers = cells.map((cell) => readNumber(cell, decimal)).filter((x) => !Number.isNaN(x) && x !== 0);
  const range = MEDIAN_RANGE[channel];
  const units = [own, ...unitsOf(channel).filter((unit) => unit !== own)].filter((unit) => converter(channel, unit));
  const fits =
    range && numbers.length > 0
      ? units.filter((unit) => {
          const middle = converter(channel, unit)?.(median(numbers)) ?? Number.NaN;
          return middle >= range[0] && middle <= range[1];
        })
      : units;
  const unit = fits[0] ?? own;
  assumed.push(
    `${channel} is in ${unit}: no unit is written${range && fits.length > 0 ? ", and the values are possible in it" : ""}`,
  );
  return unit;
}

function timeUnit(
  cells: readonly string[],
  toldUnit: string | undefined,
  written: string,
  header: string,
  assumed: string[],
): string {
  if (toldUnit !== undefined) return toldUnit;
  const first = cells.find((cell) => cell !== "") ?? "";
  const clock = /clock|uhrzeit|time of day/i.test(header);
  if (/^\d{1,3}:\d{2}:\d{2}/.test(first)) {
    const hours = Number(first.split(":")[0]);
    if (clock || hours >= 5) {
      if (!clock) assumed.push(`${header} is the time of day, since it begins at ${first}`);
      return "clock";
    }
    return "h:mm:ss";
  }
  if (/^\d{1,5}:\d{2}/.test(first)) return "mm:ss";
  const unit = knownUnit(written, "time_s");
  if (unit !== undefined) return unit;
  assumed.push(`${header} is in s: no unit is written`);
  return "s";
}

const ORDER = Object.keys(CHANNELS);
const inOrder = (columns: readonly Proposal[]) =>
  [...columns].sort((a, b) => ORDER.indexOf(a.channel) - ORDER.indexOf(b.channel));

function missingFrom(columns: readonly Proposal[]): string[] {
  const has = (channel: Channel) => columns.some((column) => column.channel === channel);
  const gas = has("vo2_l_min") || has("feo2") || has("ventilation_l_min");
  return [
    ...columns
      .filter((column) => VOLUMES.includes(column.channel) && column.condition === undefined)
      .map(
        (column) =>
          `the gas condition of ${column.header}: --condition ${column.channel}=BTPS (or ATPS, STPD, ATPD, ambient)`,
      ),
    ...(has("time_s") || has("rr_ms") || has("lactate_mmol_l") ? [] : ["a column of time: --column time_s=HEADER"]),
    ...(gas && !has("vo2_l_min") && !has("feo2") ? ["oxygen uptake: --column vo2_l_min=HEADER"] : []),
    ...(gas && has("vo2_l_min") && !has("vco2_l_min") ? ["carbon dioxide output: --column vco2_l_min=HEADER"] : []),
  ];
}
