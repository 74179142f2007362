/**
 * Free text that looks as if it named a person. Client ids are pseudonyms; this is the last look before a name is
 * archived. It is a hint, never an error: a protocol may be called after its author.
 */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import { isConfirmed } from "./confirmed.js";
import { show, words } from "./words.js";

const MAIL = /[^\s@]+@[^\s@]+\.[a-z]{2,}/i;
/** A trunk or country prefix and 7 to 13 digits, or groups of 3, 3 and 4: a row of work rates is neither. */
const PHONE = /(?<![\d.,:-])(?:(?:\+|00|0)[1-9](?:[ ()/-]{0,2}\d){6,12}|\(?\d{3}\)?[ -]\d{3}-\d{4})(?![\d.,:])/;
const NAME = /(?<![\p{L}.])(\p{Lu}\p{Ll}{2,}) (\p{Lu}\p{Ll}{2,})(?!\p{L})/gu;
/** Capitalised words of the trade and the calendar, which make no name. */
const NOT_A_NAME = new Set(
  "Monday Tuesday Wednesday Thursday Friday Saturday Sunday January February March April May June July August September October November December Borg Bruce Balke Douglas Weir Haldane Fick Dmax North South East West The This That These Test Retest Client Treadmill Protocol Modified After Before During With Without Room Visit".split(
    " ",
  ),
);
/** Free text is at most this long; looking further would only cost time. */
const LONGEST = 2000;
/** Keys whose text is free; others are lists, ids, dates and numbers. */
const FREE =
  /^(remarks|note|notes|practitioner|comment|description|goal|reference_note|medication_today|supplements|from|confirmed|reason|because|symptoms|label)$/;

export function personalFaults(document: Document): Diagnostic[] {
  const found: Diagnostic[] = [];
  const look = (text: string, path: readonly string[]): void => {
    const hit = personal(text.slice(0, LONGEST), path.includes("practitioner"));
    if (hit && !isConfirmed(document.value, path))
      found.push({
        code: "looks-personal",
        severity: "warning",
        at: document.place(path),
        ...words.personal(hit.what, show(hit.text), path.findLast((step) => !/^\d+$/.test(step)) ?? ""),
      });
  };
  const walk = (value: object, path: readonly string[], free: boolean): void => {
    for (const [key, inner] of Object.entries(value)) {
      const isText = typeof inner === "string";
      if (!isText && (typeof inner !== "object" || inner === null)) continue;
      const isFree = Array.isArray(value) ? free : FREE.test(key) || (free && path.includes("confirmed"));
      if (!isText) walk(inner, [...path, key], isFree);
      else if (isFree) look(inner, [...path, key]);
    }
  };
  if (typeof document.value === "object" && document.value !== null) walk(document.value, [], false);
  return found;
}

/** What of a text looks personal, and why; `isPerson` where a person is named on purpose, by role or initials. */
export function personal(text: string, isPerson: boolean): { what: string; text: string } | undefined {
  const mail = MAIL.exec(text);
  if (mail) return { what: "an e-mail address", text: mail[0] };
  const phone = PHONE.exec(text.replace(/\d{4}-\d{2}-\d{2}/g, (d) => "x".repeat(d.length)));
  if (phone) return { what: "a telephone number", text: phone[0] };
  for (const match of text.matchAll(NAME)) {
    const [whole, first = "", second = ""] = match;
    const starts = match.index === 0 && !isPerson && NOT_A_NAME.has(first);
    if (!starts && !NOT_A_NAME.has(first) && !NOT_A_NAME.has(second)) return { what: "a name", text: whole };
  }
  return undefined;
}
