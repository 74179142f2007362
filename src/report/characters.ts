/**
 * Characters that the report's own faces do not have are printed as their code, [U+3042]: a report never borrows a font
 * of the machine, which would look different on the next one and could leave an empty box.
 */
import type { Theme } from "./svg.js";

/** `html` is a whole document with its signs; its style is left as it is. */
export function printable(html: string, signs: ReadonlySet<string>, theme: Theme): string {
  const known = theme.widths["sans-regular"];
  if (known === undefined) return html;
  const printed = (sign: string): boolean => Object.hasOwn(known, sign) || SILENT.has(sign);
  // Nearly every page has only such: looking alone is much cheaper than writing the page anew.
  if ([...signs].every(printed)) return html;
  const from = bodyOf(html);
  return html.slice(0, from) + html.slice(from).replace(OTHERS, (sign) => (printed(sign) ? sign : code(sign)));
}

/** The signs of a document beyond ASCII, those of its style left out. */
export function signsOf(html: string): ReadonlySet<string> {
  const signs = new Set<string>();
  const other = new RegExp(OTHERS);
  other.lastIndex = bodyOf(html);
  for (let found = other.exec(html); found !== null; found = other.exec(html)) signs.add(found[0]);
  return signs;
}

const OTHERS = /[^\x20-\x7e\n\r\t]/gu;
const bodyOf = (html: string): number => Math.max(0, html.indexOf("</style>"));

const code = (sign: string): string => `[U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}]`;

/** Marks that have no shape of their own. */
const SILENT: ReadonlySet<string> = new Set(["\u00a0", "\u2009", "\u202f", "\u200b", "\u00ad"]);
