/**
 * Characters that the report's own faces do not have are printed as their code, [U+3042]: a report never borrows a font
 * of the machine, which would look different on the next one and could leave an empty box.
 */
import type { Theme } from "./svg.js";

/** `html` is a whole document; its style is left as it is. */
export function printable(html: string, theme: Theme): string {
  const known = theme.widths["sans-regular"];
  if (known === undefined) return html;
  const from = Math.max(0, html.indexOf("</style>"));
  return html.slice(0, from) + withCodes(html.slice(from), known);
}

const withCodes = (text: string, known: Readonly<Record<string, number>>): string =>
  text.replace(/[^\x20-\x7e\n\r\t]/gu, (sign) => (Object.hasOwn(known, sign) || SILENT.has(sign) ? sign : code(sign)));

const code = (sign: string): string => `[U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}]`;

/** Marks that have no shape of their own. */
const SILENT: ReadonlySet<string> = new Set(["\u00a0", "\u2009", "\u202f", "\u200b", "\u00ad"]);
