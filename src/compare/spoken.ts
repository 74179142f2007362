/** How the sentences of this stage write units and dates: as one says them, in English. */
import { toDecimals } from "../kernel/rounding.js";

const MONTHS = "January February March April May June July August September October November December".split(" ");

/** "2026-03-02" → "2 March 2026"; a text that is no date stays as it is. */
export function spokenDate(iso: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso) ?? [];
  const name = MONTHS[Number(month) - 1];
  return name === undefined ? iso : `${Number(day)} ${name} ${year}`;
}

/** A unit as a sentence says it: a ratio has none, and a rate counts beats, breaths or whatever the measure counts. */
function spokenUnit(measure: string, unit: string): string {
  if (unit === "ratio" || unit === "1") return "";
  if (unit !== "1/min") return unit;
  return /heart_rate|pulse/.test(measure) ? "beats/min" : /breathing/.test(measure) ? "breaths/min" : "per minute";
}

/** "41.8 mL/kg/min", "0.46", "58 beats/min". */
export const spoken = (measure: string, value: number, decimals: number, unit: string): string =>
  `${toDecimals(value, decimals)} ${spokenUnit(measure, unit)}`.trim();
