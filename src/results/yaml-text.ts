/**
 * The few YAML shapes results.yaml is made of. Plain scalars wherever YAML reads them back as the same text, double
 * quotes (JSON strings are YAML) everywhere else. A general emitter would choose its own line breaks and quoting from
 * one version to the next; the notebook must not change because a package did.
 */
import { toDecimals } from "../kernel/rounding.js";

/** A number already printed, so that trailing zeros survive. */
export type Printed = { readonly digits: string };
export const printed = (value: number, decimals: number): Printed => ({ digits: toDecimals(value, decimals) });

export type Flow =
  | string
  | number
  | boolean
  | null
  | Printed
  | readonly Flow[]
  | { readonly [key: string]: Flow | undefined };

const RESOLVES = /^(?:[-+]?(?:\.?\d[\d_,.:eExob+-]*|\.inf)|0[xo][\da-f]+|\.nan|null|true|false|yes|no|on|off|y|n|~|)$/i;
const LONGEST_WORD = "false".length;
const STARTS_BADLY = /^[\s\-?:,[\]{}#&*!|>'"%@`=<]/;
/** Control, format (bidi marks among them), lone surrogate and line-separator characters. */
const NEEDS_ESCAPE = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u;

/** Signs that can matter inside a scalar, as bits; every other sign is 0. */
const BRACKET = 1;
const COLON_OR_HASH = 2;
const QUOTE = 4;
/** What the expressions above have to look at: control characters, and beyond ASCII all but common letters and signs. */
const ODD = 8;
const BITS = new Uint8Array(128);
BITS.fill(ODD, 0, 32);
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

function bitsOf(text: string): number {
  let bits = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    bits |= code < 128 ? (BITS[code] as number) : isCommon(code) ? 0 : ODD;
  }
  return bits;
}

/** Text as a YAML scalar that reads back as the same text, in block context or inside { } and [ ]. */
export function scalar(text: string, inFlow: boolean): string {
  const bits = bitsOf(text);
  if (isPlain(text, bits, inFlow)) return text;
  if ((bits & (QUOTE | ODD)) === 0) return `"${text}"`;
  return JSON.stringify(text).replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, escapeAll);
}

function isPlain(text: string, bits: number, inFlow: boolean): boolean {
  const first = text.charCodeAt(0) | 32;
  const isWord = first >= 97 && first <= 122; // a letter of ASCII
  if (!isWord && STARTS_BADLY.test(text)) return false;
  if ((!isWord || text.length <= LONGEST_WORD) && RESOLVES.test(text)) return false;
  if (text.endsWith(" ")) return false;
  return bits === 0 || hasNoMark(text, bits, inFlow);
}

const hasNoMark = (text: string, bits: number, inFlow: boolean): boolean =>
  !((bits & ODD) !== 0 && (NEEDS_ESCAPE.test(text) || /\s$/.test(text))) &&
  !((bits & COLON_OR_HASH) !== 0 && (/: |:$| #/.test(text) || (inFlow && /:\S*$/.test(text)))) &&
  !((bits & BRACKET) !== 0 && inFlow);

const escapeAll = (c: string) =>
  [...Array(c.length).keys()].map((i) => `\\u${c.charCodeAt(i).toString(16).padStart(4, "0")}`).join("");

/** A value on one line: {a: 1, b: [2, 3]}. Keys whose value is undefined are left out. */
export function flow(value: Flow): string {
  if (typeof value === "string") return scalar(value, true);
  if (typeof value !== "object" || value === null) return String(value);
  if (Array.isArray(value)) return `[${(value as readonly Flow[]).map(flow).join(", ")}]`;
  if (isPrinted(value)) return value.digits;
  let pairs = "";
  for (const [key, item] of Object.entries(value as Record<string, Flow | undefined>))
    if (item !== undefined) pairs += `${pairs === "" ? "" : ", "}${scalar(key, true)}: ${flow(item)}`;
  return `{${pairs}}`;
}

const isPrinted = (value: object): value is Printed => "digits" in value && typeof value.digits === "string";

/** A value after the colon of a block mapping. */
const after = (value: Flow): string => (typeof value === "string" ? scalar(value, false) : flow(value));

/** One `key: value` line of the document, or of a block with `indent` 2. */
export const line = (indent: 0 | 2, key: string, value: Flow): string =>
  `${indent === 0 ? "" : "  "}${scalar(key, false)}: ${after(value)}\n`;
