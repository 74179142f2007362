/** Numbers and times as instruments write them. Each returns NaN for text that is no such number; callers say so. */
const PLAIN = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,3})?$/;

/** A cell with decimal point or comma. Thousands separators, hexadecimal and "Infinity" are not numbers here. */
export function readNumber(cell: string, decimal: "." | ","): number {
  const plain = digitsOnly(cell, decimal === "." ? 46 : 44);
  if (!Number.isNaN(plain)) return plain;
  if (decimal === ",") {
    if (cell.includes(".")) return Number.NaN;
    const text = cell.replace(",", ".");
    return PLAIN.test(text) ? finite(Number(text)) : Number.NaN;
  }
  return PLAIN.test(cell) ? finite(Number(cell)) : Number.NaN;
}

/**
 * A number of up to 15 digits and one mark, without sign or exponent; NaN for everything else. A whole number below
 * 2^53 over a power of ten is the same double that the text names (both are exact, and a division rounds once).
 */
function digitsOnly(cell: string, mark: number): number {
  if (cell.length === 0 || cell.length > 16) return Number.NaN;
  let whole = 0;
  let digits = 0;
  let places = -1;
  for (let i = 0; i < cell.length; i++) {
    const c = cell.charCodeAt(i);
    if (c >= 48 && c <= 57) {
      whole = whole * 10 + c - 48;
      digits++;
      if (places >= 0) places++;
    } else if (c === mark && places < 0) places = 0;
    else return Number.NaN;
  }
  if (digits === 0 || digits > 15) return Number.NaN;
  return places > 0 ? whole / (TENS[places] as number) : whole;
}
const TENS = Array.from({ length: 16 }, (_, i) => Number(`1e${i}`));

const finite = (x: number) => (Number.isFinite(x) ? x : Number.NaN);

/**
 * Seconds of h:mm:ss, with a decimal fraction of the seconds after either mark: the colons already say that it is a
 * time. Hours may exceed 23 for an elapsed time.
 */
export function readHours(cell: string): number {
  const match = /^(\d{1,3}):([0-5]?\d):([0-5]?\d(?:[.,]\d+)?)$/.exec(cell);
  return match ? Number(match[1]) * 3600 + Number(match[2]) * 60 + seconds(match[3]) : Number.NaN;
}

/** Seconds of mm:ss, with a decimal fraction of the seconds. Minutes may exceed 59; an hour in front is accepted. */
export function readMinutes(cell: string): number {
  const match = /^(\d{1,5}):([0-5]?\d(?:[.,]\d+)?)$/.exec(cell);
  return match ? Number(match[1]) * 60 + seconds(match[2]) : readHours(cell);
}

const seconds = (text: string | undefined) => Number((text ?? "").replace(",", "."));
