/**
 * Customary units beside the metric ones, in the client's edition of a practice that asks for them: "66.8 kg (147.3 lb)".
 * Exact factors of NIST Special Publication 811 (2008), appendix B.
 */
import type { Speech } from "../../kernel/speech.js";

const FACTORS: Readonly<Record<string, readonly [unit: string, factor: number]>> = {
  kg: ["lb", 1 / 0.45359237],
  cm: ["in", 1 / 2.54],
  "km/h": ["mph", 1 / 1.609344],
  km: ["mi", 1 / 1.609344],
};
/** A number and a unit that is not part of another: not mL/kg/min, kg/m² nor a range's first number. */
const METRIC = /([+−]?)(\d+(?:[.,]\d+)?)[ \u00a0](kg|cm|km\/h|km)(?![\w/²·])/g;

export function customaryBeside(speech: Speech, text: string): string {
  return text.replace(METRIC, (whole, sign: string, digits: string, unit: string) => {
    const [name, factor] = FACTORS[unit] ?? [];
    if (name === undefined || factor === undefined) return whole;
    const decimals = digits.split(/[.,]/)[1]?.length ?? 0;
    const value = Number(digits.replace(",", ".")) * factor;
    return `${whole} (${sign}${speech.number(value, decimals)}\u00a0${name})`;
  });
}
