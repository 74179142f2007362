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
  const printed = (sign: string): boolean => Object.hasOwn(known, sign) || SILENT.has(sign);
  // Nearly every page has no such character: looking alone is much cheaper than writing the page anew.
  const other = /[^\x20-\x7e\n\r\t]/g;
  other.lastIndex = from;
  while (other.test(html))
    if (!printed(html.charAt(other.lastIndex - 1)))
      return (
        html.slice(0, from) +
        html.slice(from).replace(/[^\x20-\x7e\n\r\t]/gu, (sign) => (printed(sign) ? sign : code(sign)))
      );
  return html;
}

const code = (sign: string): string => `[U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}]`;

/** Marks that have no shape of their own. */
const SILENT: ReadonlySet<string> = new Set(["\u00a0", "\u2009", "\u202f", "\u200b", "\u00ad"]);
