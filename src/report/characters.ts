/**
 * Characters that the report's own faces do not have are printed as their code, [U+3042]: a report never borrows a font
 * of the machine, which would look different on the next one and could leave an empty box.
 */
import type { Theme } from "./svg.js";

/** Signs of the common faces: Latin letters of English and German, and what our own words and sources hold besides. */
export const COMMON: string = [
  String.fromCodePoint(...Array.from({ length: 0x7f - 0x20 }, (_, i) => 0x20 + i)),
  "\u00a0\u00ad\u2009\u200b\u2011\u202f\u0304\u0307",
  "°±²³µ·¹½×÷ÄÅÖÜßáäéóöøúüćšžΣΩδηπτφχ–—‘’‚“”„…′″⁰⁴⁵⁶⁷⁸⁹⁺⁻₀₁₂₃₄₅₆₇₈₉₍₎→−√≈≠≤≥□▼○●",
].join("");
const common: ReadonlySet<string> = new Set(COMMON);

/** Whether a whole document, its style left out, is written in common signs: nearly every page is. */
export function isCommon(html: string): boolean {
  // One class of all rare signs would be looked through sign by sign, twenty times as slowly.
  const other = /[^\x20-\x7e\n\r\t]/g;
  other.lastIndex = bodyOf(html);
  while (other.test(html)) if (!common.has(html.charAt(other.lastIndex - 1))) return false;
  return true;
}

/** `html` is a whole document; its style is left as it is. */
export function printable(html: string, theme: Theme): string {
  const known = theme.widths["sans-regular"];
  if (known === undefined) return html;
  const from = bodyOf(html);
  const printed = (sign: string): boolean => Object.hasOwn(known, sign) || SILENT.has(sign);
  return (
    html.slice(0, from) +
    html.slice(from).replace(/[^\x20-\x7e\n\r\t]/gu, (sign) => (printed(sign) ? sign : code(sign)))
  );
}

const bodyOf = (html: string): number => Math.max(0, html.indexOf("</style>"));

const code = (sign: string): string => `[U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}]`;

/** Marks that have no shape of their own. */
const SILENT: ReadonlySet<string> = new Set(["\u00a0", "\u2009", "\u202f", "\u200b", "\u00ad"]);
