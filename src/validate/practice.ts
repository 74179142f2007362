/** Faults between the visits of a practice. Only a few words of each visit are kept, so an archive of any size fits. */
import type { Diagnostic, Place } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import { readDate } from "./calendar.js";
import type { Code } from "./codes.js";
import { words } from "./words.js";

/** What of one visit the whole practice is compared by. */
export interface PracticeMember {
  readonly client?: { readonly id: string; readonly at: Place };
  readonly session?: {
    readonly client: string;
    readonly date: string;
    readonly label: string | undefined;
    readonly at: Place;
  };
}

/** The words of one visit that validatePractice needs; what is faulty there is left out here. */
export function practiceMember(client: Document | undefined, session: Document): PracticeMember {
  const { id } = mapping(client);
  const { client: owner, date, label } = mapping(session);
  return {
    ...(client && typeof id === "string" ? { client: { id, at: client.place(["id"]) } } : {}),
    ...(typeof owner === "string" && typeof date === "string" && readDate(date)
      ? {
          session: {
            client: owner,
            date,
            label: typeof label === "string" ? label : undefined,
            at: session.place([typeof label === "string" ? "label" : "date"]),
          },
        }
      : {}),
  };
}

const mapping = (document: Document | undefined): Readonly<Record<string, unknown>> =>
  typeof document?.value === "object" && document.value !== null ? (document.value as Record<string, unknown>) : {};

/** Two visits of a client on one day with one label; two client folders with one id. */
export function validatePractice(members: readonly PracticeMember[]): Diagnostic[] {
  const found: Diagnostic[] = [];
  const visits = new Map<string, string>();
  const clients = new Map<string, string>();
  const reported = new Set<string>();
  const error = (code: Code, at: Place, why: ReturnType<typeof words.sameVisitTwice>) =>
    found.push({ code, severity: "error", at, ...why });
  for (const { client, session } of members) {
    if (client) {
      const other = clients.get(client.id);
      if (other === undefined) clients.set(client.id, client.at.file);
      else if (other !== client.at.file && !reported.has(client.at.file)) {
        reported.add(client.at.file);
        error("same-client-twice", client.at, words.sameClientTwice(client.id, other));
      }
    }
    if (session) {
      const key = JSON.stringify([session.client, session.date, session.label ?? ""]);
      const other = visits.get(key);
      if (other === undefined) visits.set(key, session.at.file);
      else error("same-visit-twice", session.at, words.sameVisitTwice(session.date, session.label, other));
    }
  }
  return found;
}
