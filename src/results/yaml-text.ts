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
const STARTS_BADLY = /^[\s\-?:,[\]{}#&*!|>'"%@`=<]/;
/** Control, format (bidi marks among them), lone surrogate and line-separator characters. */
const NEEDS_ESCAPE = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u;

/** Words that are plain at a glance: nearly every text of a notebook. */
const AT_A_GLANCE = /^[A-Za-z][A-Za-z0-9_ /.()%-]*[A-Za-z0-9_/.()%-]$/;
const NO_WORD = /^(?:null|true|false|yes|no|on|off)$/i;

/** Text as a YAML scalar that reads back as the same text, in block context or inside { } and [ ]. */
export function scalar(text: string, inFlow: boolean): string {
  if (AT_A_GLANCE.test(text) && !(text.length <= 5 && NO_WORD.test(text))) return text;
  const plain =
    !RESOLVES.test(text) &&
    !STARTS_BADLY.test(text) &&
    !NEEDS_ESCAPE.test(text) &&
    !/: |:$| #|\s$/.test(text) &&
    !(inFlow && /[,[\]{}]|:\S*$/.test(text));
  return plain ? text : JSON.stringify(text).replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, escapeAll);
}
const escapeAll = (c: string) =>
  [...Array(c.length).keys()].map((i) => `\\u${c.charCodeAt(i).toString(16).padStart(4, "0")}`).join("");

/** A value on one line: {a: 1, b: [2, 3]}. Keys whose value is undefined are left out. */
export function flow(value: Flow): string {
  if (value === null || typeof value === "number" || typeof value === "boolean") return String(value);
  if (typeof value === "string") return scalar(value, true);
  if (Array.isArray(value)) return `[${(value as readonly Flow[]).map(flow).join(", ")}]`;
  if (isPrinted(value)) return value.digits;
  const pairs = Object.entries(value as Record<string, Flow | undefined>).filter(([, v]) => v !== undefined);
  return `{${pairs.map(([k, v]) => `${scalar(k, true)}: ${flow(v as Flow)}`).join(", ")}}`;
}

const isPrinted = (value: Flow): value is Printed =>
  typeof value === "object" && value !== null && "digits" in value && typeof value.digits === "string";

/** One `key: value` line of a block mapping. */
export const line = (indent: number, key: string, value: Flow): string =>
  `${" ".repeat(indent)}${scalar(key, false)}: ${typeof value === "string" ? scalar(value, false) : flow(value)}`;
