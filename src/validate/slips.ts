/** Values that look as if they were in another unit. */

import { roundTo } from "../kernel/rounding.js";
import { CM_PER_INCH, KG_PER_POUND, KPA_PER_MMHG } from "../kernel/unit.js";
import type { SchemaNode, Slip } from "./schema-words.js";

/** Slips that a unit invites everywhere; a schema's own `slips` go before them. */
const BY_UNIT: Readonly<Record<string, readonly Slip[]>> = {
  cm: [
    { factor: 100, looks: "metres" },
    { factor: 0.1, looks: "millimetres" },
    { factor: CM_PER_INCH, looks: "inches" },
  ],
  mm: [{ factor: 10, looks: "centimetres" }],
  kg: [
    { factor: KG_PER_POUND, looks: "pounds" },
    { factor: 0.001, looks: "grams" },
  ],
  "%": [{ factor: 100, looks: "a fraction" }],
  fraction: [{ factor: 0.01, looks: "a percentage" }],
  mmHg: [{ factor: 1 / KPA_PER_MMHG, looks: "kPa" }],
  kPa: [{ factor: KPA_PER_MMHG, looks: "mmHg" }],
  L: [{ factor: 0.001, looks: "mL" }],
  mL: [{ factor: 1000, looks: "L" }],
  "L/min": [{ factor: 0.001, looks: "mL/min" }],
  "mL/min": [{ factor: 1000, looks: "L/min" }],
  "km/h": [{ factor: 3.6, looks: "m/s" }],
  "1/min": [{ factor: 60, looks: "1/s" }],
};

/** The slips that would make the value usual (or possible, where no usual range is given). */
export function fittingSlips(value: number, schema: SchemaNode): readonly Slip[] {
  const low = schema.usual?.[0] ?? schema.minimum ?? schema.exclusiveMinimum;
  const high = schema.usual?.[1] ?? schema.maximum ?? schema.exclusiveMaximum;
  if (low === undefined || high === undefined || value <= 0) return [];
  const fits = ({ factor }: Slip) => value * factor >= low && value * factor <= high;
  const own = (schema.slips ?? []).filter(fits);
  return own.length > 0 ? own : (BY_UNIT[schema.unit ?? ""] ?? []).filter(fits);
}

/** "like metres: write 168", for each unit that would fit: where several do, a person has to choose. */
export const readings = (slips: readonly Slip[], value: number, written?: string): string[] =>
  slips.map(({ looks, factor }) => `like ${looks}: write ${correctedText(value, factor, written)}`);

/** The value in the right unit, with as many digits as the file wrote and at least three. */
export function correctedText(value: number, factor: number, written?: string): string {
  const digits = Math.max(
    3,
    (written ?? String(value))
      .replace(/[eE].*$/, "")
      .replace(/\D/g, "")
      .replace(/^0+/, "").length,
  );
  const corrected = value * factor;
  return String(roundTo(corrected, digits - 1 - Math.floor(Math.log10(Math.abs(corrected)))));
}
