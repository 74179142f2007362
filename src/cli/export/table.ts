/** Every recorded number of every visit as one tidy table: one row a number, for a statistics program. */

import { createHmac } from "node:crypto";
import { daysBetween } from "../../kernel/days.js";
import type { Entry } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import type { Results } from "../../kernel/results.js";
import { toDecimals } from "../../kernel/rounding.js";

const HEADERS = [
  "client",
  "day",
  "date",
  "label",
  "purpose",
  "sex",
  "age_years",
  "measure",
  "title",
  "value",
  "unit",
  "state",
  "because",
] as const;

/**
 * CSV by RFC 4180. With a secret, clients get other pseudonyms, dates become days since the first visit, labels and reasons
 * are left out and ages are whole years, so that rows cannot be laid beside the practice.
 */
export function tidyTable(visits: readonly Results[], secret?: string): string {
  const first = new Map<string, string>();
  for (const { client, date } of visits) {
    const known = first.get(client);
    if (known === undefined || date < known) first.set(client, date);
  }
  const rows = visits.flatMap((results) => {
    const shared = [
      secret === undefined
        ? results.client
        : `p-${createHmac("sha256", secret).update(results.client).digest("hex").slice(0, 10)}`,
      String(daysBetween(first.get(results.client) ?? results.date, results.date)),
      secret === undefined ? results.date : "",
      secret === undefined ? (results.label ?? "") : "",
      results.purpose,
      results.sex,
      secret === undefined ? toDecimals(results.ageYears, 1) : String(Math.floor(results.ageYears)),
    ];
    return results.entries.flatMap((entry) => {
      const cells = cellsOf(entry, secret === undefined);
      return cells === undefined ? [] : [[...shared, entry.id, measureInfo(entry.id)?.title ?? "", ...cells]];
    });
  });
  return `${[HEADERS, ...rows].map((row) => row.map(cell).join(",")).join("\r\n")}\r\n`;
}

/** value, unit, state, because. Tables, changes and remarks are no single measurement of this visit. */
function cellsOf(entry: Entry, withReasons: boolean): string[] | undefined {
  const told = (text: string) => (withReasons ? text : "");
  switch (entry.kind) {
    case "quantity":
      return [toDecimals(entry.value, entry.decimals), entry.unit, "given", told(entry.note ?? "")];
    case "not given":
      return ["", "", "not given", told(entry.because)];
    case "judgement":
      return ["", "", entry.verdict.replace(/\d{4}-\d{2}-\d{2}/g, "a day"), told(entry.because)];
    default:
      return undefined;
  }
}

/** Quoted where needed; text that a spreadsheet would run as a formula is told to be text. A negative number stays one. */
export function cell(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) && !/^-?\d+(\.\d+)?$/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
