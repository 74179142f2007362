/**
 * The few YAML shapes results.yaml is made of, put down as bytes one after the other: no string is joined. Plain scalars
 * wherever YAML reads them back as the same text, double quotes (JSON strings are YAML) everywhere else. A general emitter
 * would choose its own line breaks and quoting from one version to the next; the notebook must not change because a
 * package did.
 */
import { toDecimals, wholeAtDecimals } from "../kernel/rounding.js";

export type Flow = string | number | boolean | null | readonly Flow[] | { readonly [key: string]: Flow | undefined };

/** The sheet that is being written: used again for the next document, larger when one needs it. */
let sheet = Buffer.allocUnsafe(1 << 18);
let end = 0;

/** Bytes of the document that `write` puts down; one at a time. */
export function bytesOf(write: () => void): Buffer {
  end = 0;
  write();
  return Buffer.from(sheet.subarray(0, end));
}

/** Most bytes that one UTF-16 unit becomes. */
const WIDEST = 3;

function makeRoom(bytes: number): void {
  if (end + bytes <= sheet.length) return;
  const larger = Buffer.allocUnsafe(2 * (end + bytes));
  larger.set(sheet.subarray(0, end));
  sheet = larger;
}

/** Codes of signs. */
const [NEWLINE, SPACE, COMMA, MINUS, POINT, ZERO, COLON, OPEN, CLOSE] = [10, 32, 44, 45, 46, 48, 58, 123, 125] as const;

function mark(code: number): void {
  makeRoom(1);
  sheet[end++] = code;
}

/** Text as it stands: marks, and keys that the program chose. */
export function put(text: string): void {
  makeRoom(WIDEST * text.length);
  let at = end;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code >= 128) {
      end += sheet.write(text, end);
      return;
    }
    sheet[at++] = code;
  }
  end = at;
}

const RESOLVES = /^(?:[-+]?(?:\.?\d[\d_,.:eExob+-]*|\.inf)|0[xo][\da-f]+|\.nan|null|true|false|yes|no|on|off|y|n|~|)$/i;
const LONGEST_WORD = "false".length;
const STARTS_BADLY = /^[\s\-?:,[\]{}#&*!|>'"%@`=<]/;
/** Control, format (bidi marks among them), lone surrogate and line-separator characters. */
const NEEDS_ESCAPE = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u;

/** Bytes that can matter inside a scalar, as bits; every other byte is 0. */
const BRACKET = 1;
const COLON_OR_HASH = 2;
const QUOTE = 4;
/** What the expressions above have to look at: control characters, and beyond ASCII all but common letters and signs. */
const ODD = 8;
/** A byte of a character beyond ASCII. */
const WIDE = 16;
const BITS = new Uint8Array(256);
BITS.fill(ODD, 0, 32);
BITS.fill(WIDE, 128);
for (const [signs, bit] of [
  [",[]{}", BRACKET],
  [":#", COLON_OR_HASH],
  ['"\\', QUOTE],
  ["\u007f", ODD],
] as const)
  for (const sign of signs) BITS[sign.charCodeAt(0)] = bit;

/** Latin, Greek and Cyrillic letters, dashes and quotation marks, super- and subscripts, arrows and mathematical signs. */
const isCommon = (code: number): boolean =>
  (code > 0xa0 && code < 0x600 && code !== 0xad) ||
  (code >= 0x2010 && code < 0x2028) ||
  (code >= 0x2070 && code < 0x3000);

/** Text as a YAML scalar that reads back as the same text, in block context or inside { } and [ ]. */
export function scalar(text: string, inFlow: boolean): void {
  makeRoom(WIDEST * text.length);
  const after = end + sheet.write(text, end);
  let bits = 0;
  for (let at = end; at < after; at++) bits |= BITS[sheet[at] as number] as number;
  if ((bits & WIDE) !== 0 && !isCommonText(text)) bits |= ODD;
  if (isPlain(text, bits & ~WIDE, inFlow)) end = after;
  else put(quoted(text, bits));
}

function isCommonText(text: string): boolean {
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code >= 128 && !isCommon(code)) return false;
  }
  return true;
}

const quoted = (text: string, bits: number): string =>
  (bits & (QUOTE | ODD)) === 0 ? `"${text}"` : JSON.stringify(text).replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, escapeAll);

function isPlain(text: string, bits: number, inFlow: boolean): boolean {
  if (text === "" || text.charCodeAt(text.length - 1) === SPACE) return false;
  const first = text.charCodeAt(0) | 32;
  const isWord = first >= 97 && first <= 122; // a letter of ASCII
  if (!isWord && STARTS_BADLY.test(text)) return false;
  if ((!isWord || text.length <= LONGEST_WORD) && RESOLVES.test(text)) return false;
  return bits === 0 || hasNoMark(text, bits, inFlow);
}

const hasNoMark = (text: string, bits: number, inFlow: boolean): boolean =>
  !((bits & ODD) !== 0 && (NEEDS_ESCAPE.test(text) || /\s$/.test(text))) &&
  !((bits & COLON_OR_HASH) !== 0 && (/: |:$| #/.test(text) || (inFlow && /:\S*$/.test(text)))) &&
  !((bits & BRACKET) !== 0 && inFlow);

const escapeAll = (c: string) =>
  [...Array(c.length).keys()].map((i) => `\\u${c.charCodeAt(i).toString(16).padStart(4, "0")}`).join("");

/** A number with exactly `decimals` digits after the point, as toDecimals prints it. */
export function decimal(value: number, decimals: number): void {
  const whole = wholeAtDecimals(value, decimals);
  if (whole === undefined) {
    put(toDecimals(value, decimals));
    return;
  }
  let rest = Math.abs(whole);
  let digits = decimals + 1;
  for (let scale = 10 ** digits; rest >= scale; scale *= 10) digits++;
  makeRoom(digits + 2);
  if (whole < 0) sheet[end++] = MINUS;
  end += decimals === 0 ? digits : digits + 1;
  let at = end;
  for (let place = 0; place < digits; place++) {
    if (place === decimals && place > 0) sheet[--at] = POINT;
    const tens = Math.floor(rest / 10);
    sheet[--at] = ZERO + rest - tens * 10;
    rest = tens;
  }
}

/** A value on one line: {a: 1, b: [2, 3]}. Keys whose value is undefined are left out. */
export function flow(value: Flow): void {
  if (typeof value === "string") scalar(value, true);
  else if (typeof value !== "object" || value === null) put(String(value));
  else if (Array.isArray(value)) list(value);
  else {
    mark(OPEN);
    for (const [name, item] of Object.entries(value as Record<string, Flow | undefined>)) namedField(name, item);
    mark(CLOSE);
  }
}

function list(items: readonly Flow[]): void {
  put("[");
  items.forEach((item, i) => {
    if (i > 0) comma();
    flow(item);
  });
  put("]");
}

function comma(): void {
  mark(COMMA);
  mark(SPACE);
}

function colon(): void {
  mark(COLON);
  mark(SPACE);
}

/** Between the pairs of a mapping. No value ends in an opening brace: in here it would stand in quotes. */
function next(): void {
  if (sheet[end - 1] !== OPEN) comma();
}

/** One pair inside braces that are open, under any name; nothing when there is no value. */
export function namedField(name: string, value: Flow | undefined): void {
  if (value === undefined) return;
  next();
  scalar(name, true);
  colon();
  flow(value);
}

/** The same under a key that the program chose. */
export function field(key: string, value: Flow | undefined): void {
  if (value === undefined) return;
  next();
  put(key);
  colon();
  flow(value);
}

export function decimalField(key: string, value: number | undefined, decimals: number): void {
  if (value === undefined) return;
  next();
  put(key);
  colon();
  decimal(value, decimals);
}

/** A line of the document, or of a block with `indent` 2, up to its value. */
function lineKey(indent: 0 | 2, key: string): void {
  if (indent === 2) put("  ");
  put(key);
  colon();
}

/** One `key: value` line under a key that the program chose. */
export function line(indent: 0 | 2, key: string, value: Flow): void {
  lineKey(indent, key);
  rest(value);
}

/** One line of a block under any name. */
export function namedLine(name: string, value: Flow): void {
  put("  ");
  scalar(name, false);
  colon();
  rest(value);
}

function rest(value: Flow): void {
  if (typeof value === "string") scalar(value, false);
  else flow(value);
  mark(NEWLINE);
}

export function decimalLine(key: string, value: number, decimals: number): void {
  lineKey(2, key);
  decimal(value, decimals);
  mark(NEWLINE);
}

/** A line whose value is a mapping in braces, filled by `fields`. */
export function mapLine(indent: 0 | 2, key: string, fields: () => void): void {
  lineKey(indent, key);
  mark(OPEN);
  fields();
  put("}\n");
}
