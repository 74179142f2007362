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
  readonly file: string;
  /** Asked only of a visit that is reported. */
  readonly at: () => Place;
}

/**
 * The words of a session that validatePractice needs; undefined when they are faulty, which is reported elsewhere.
 * `again` reads the session once more for its places, so that an archive need not be held in memory.
 */
export function practiceMember(session: Document, again: () => Document = () => session): PracticeMember | undefined {
  if (typeof session.value !== "object" || session.value === null) return undefined;
  const { client, date, label } = session.value as Readonly<Record<string, unknown>>;
  if (typeof client !== "string" || typeof date !== "string" || !readDate(date)) return undefined;
  const named = typeof label === "string" ? label : undefined;
  return {
    client,
    date,
    label: named,
    file: session.file,
    at: () => again().place([named === undefined ? "date" : "label"]),
  };
}

/** Two visits of a client on one day with one label. (Two clients with one id cannot be: ids are folder names.) */
export function validatePractice(members: readonly PracticeMember[]): Diagnostic[] {
  const found: Diagnostic[] = [];
  const visits = new Map<string, string>();
  for (const { client, date, label, file, at } of members) {
    const key = JSON.stringify([client, date, label ?? ""]);
    const other = visits.get(key);
    if (other === undefined) visits.set(key, file);
    else
      found.push({
        code: "same-visit-twice" satisfies Code,
        severity: "error",
        at: at(),
        ...words.sameVisitTwice(date, label, other),
      });
  }
  return found;
}
