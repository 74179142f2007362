/**
 * The only place that rounds. Half away from zero on the shortest decimal that names the number, because
 * (2.675).toFixed(2) is "2.67" while every reader of 2.675 expects 2.68.
 */

/** value as text with exactly `decimals` digits after the point; never "-0". Throws RangeError for a value that is not finite. */
export function toDecimals(value: number, decimals: number): string {
  const signedWhole = wholeAtDecimals(value, decimals);
  if (signedWhole === undefined) {
    const text = roundTo(value, decimals).toFixed(decimals);
    return text.startsWith("-0") && /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
  }
  // Whole numbers are printed several times as fast as toFixed prints: digits before the point, then those after it.
  if (decimals === 0) return String(signedWhole);
  const whole = Math.abs(signedWhole);
  const scale = SCALES[decimals] as number;
  const before = Math.floor(whole / scale);
  return `${signedWhole < 0 ? "-" : ""}${before}.${String(whole - before * scale).padStart(decimals, "0")}`;
}

/**
 * The digits of value at `decimals` as a whole number: −1.25 at 2 is −125. Undefined for numbers so large, or decimals
 * so many or below zero, that this is not exact. Throws RangeError for a value that is not finite.
 */
export function wholeAtDecimals(value: number, decimals: number): number | undefined {
  if (!Number.isFinite(value)) throw new RangeError(`cannot print ${value}`);
  const rounded = roundTo(value, decimals);
  const scale = SCALES[decimals];
  const whole = Math.round(Math.abs(rounded) * (scale ?? Number.NaN));
  if (scale === undefined || !(whole < 1e9)) return undefined;
  return rounded < 0 ? -whole : whole;
}

/** value rounded to `decimals` (negative decimals round to tens, hundreds). */
export function roundTo(value: number, decimals: number): number {
  const scale = SCALES[decimals];
  const scaled = Math.abs(value) * (scale ?? Number.NaN);
  if (scale !== undefined && scaled < 1e12) {
    // Far from a tie the product's own rounding error (one part in 10^16) cannot matter, and whole ÷ power of ten is exact.
    const whole = Math.round(scaled);
    if (Math.abs(scaled - Math.floor(scaled) - 0.5) > 1e-3) return signed(whole / scale, value);
  }
  return signed(roundText(Math.abs(value), decimals), value);
}

const SCALES = [1, 10, 100, 1000, 10_000, 100_000, 1_000_000];
const signed = (rounded: number, value: number): number => (value < 0 && rounded !== 0 ? -rounded : rounded);

/** By way of the shortest decimal that names the number: exact at ties. */
function roundText(value: number, decimals: number): number {
  const [mantissa, exponent = "0"] = String(value).split("e");
  const shifted = Math.round(Number(`${mantissa}e${Number(exponent) + decimals}`));
  const [m, e = "0"] = String(shifted).split("e");
  return Number(`${m}e${Number(e) - decimals}`);
}

/** Compares as integers of the last printed digit, so that "≥ 0.4" holds for 1.6 − 1.2. Returns −1, 0 or 1. */
export function compareAtDecimals(a: number, b: number, decimals: number): -1 | 0 | 1 {
  const scale = 10 ** decimals;
  const x = Math.round(roundTo(a, decimals) * scale);
  const y = Math.round(roundTo(b, decimals) * scale);
  return x < y ? -1 : x > y ? 1 : 0;
}
