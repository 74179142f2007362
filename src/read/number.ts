/** Numbers and times as instruments write them. Each returns NaN for text that is no such number; callers say so. */
const PLAIN = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,3})?$/;

/** A cell with decimal point or comma. Thousands separators, hexadecimal and "Infinity" are not numbers here. */
export function readNumber(cell: string, decimal: "." | ","): number {
  if (decimal === "," && cell.includes(".")) return Number.NaN;
  const text = decimal === "," ? cell.replace(",", ".") : cell;
  return PLAIN.test(text) ? finite(Number(text)) : Number.NaN;
}

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
