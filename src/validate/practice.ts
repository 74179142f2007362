/** Faults between the visits of a practice. Only a few words of each visit are kept, so an archive of any size fits. */
import type { Diagnostic, Place } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import { readDate } from "./calendar.js";
import type { Code } from "./codes.js";
import { words } from "./words.js";

/** What of one visit the whole practice is compared by. */
export interface PracticeMember {
  readonly client: string;
  readonly date: string;
  readonly label: string | undefined;
  readonly at: Place;
}

/** The words of a session that validatePractice needs; undefined when they are faulty, which is reported elsewhere. */
export function practiceMember(session: Document): PracticeMember | undefined {
  if (typeof session.value !== "object" || session.value === null) return undefined;
  const { client, date, label } = session.value as Readonly<Record<string, unknown>>;
  if (typeof client !== "string" || typeof date !== "string" || !readDate(date)) return undefined;
  const named = typeof label === "string" ? label : undefined;
  return { client, date, label: named, at: session.place([named === undefined ? "date" : "label"]) };
}

/** Two visits of a client on one day with one label. (Two clients with one id cannot be: ids are folder names.) */
export function validatePractice(members: readonly PracticeMember[]): Diagnostic[] {
  const found: Diagnostic[] = [];
  const visits = new Map<string, string>();
  for (const { client, date, label, at } of members) {
    const key = JSON.stringify([client, date, label ?? ""]);
    const other = visits.get(key);
    if (other === undefined) visits.set(key, at.file);
    else
      found.push({
        code: "same-visit-twice" satisfies Code,
        severity: "error",
        at,
        ...words.sameVisitTwice(date, label, other),
      });
  }
  return found;
}
