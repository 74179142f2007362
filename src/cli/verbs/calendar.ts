import { judgementOf } from "../../kernel/entries.js";
import type { Laboratory } from "../../kernel/generated/laboratory.js";
import type { Results } from "../../kernel/results.js";
import { speechOf } from "../../kernel/speech.js";
import { calendarOf } from "../../plan/calendar.js";
import { recorded } from "../build-client.js";
import { readDocument } from "../check-practice.js";
import { Unreadable } from "../files.js";
import { findPractice, openPractice, select } from "../practice.js";
import { dressed } from "../press.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark calendar VISIT           the signed plan of a visit as an iCalendar text (RFC 5545)

  VISIT     a visit folder, or c-017/2026-03-02-baseline

Prints to standard output, in the language of the laboratory's reports: waymark calendar c-017/2026-03-02-baseline > plan.ics
A later visit's calendar carries the same names, so that a calendar program replaces what was laid out anew.
Reads results.yaml: build first. A plan that nobody signed has no calendar.
`;

export const verb: Verb = {
  help: HELP,
  options: {},
  async run(words, _flags, io) {
    const [path, ...rest] = words;
    if (path === undefined || rest.length > 0) throw new WrongUse("calendar takes one visit");
    const practice = openPractice(findPractice(io.cwd));
    const paths = [...select(practice, [path], io.cwd)];
    if (paths.length > 1) throw new WrongUse(`${path} names ${paths.length} visits; calendar takes one`);
    const visit = practice.clients.flatMap((client) => client.visits).find((one) => one.path === paths[0]);
    const results = visit && recorded(practice, visit);
    if (visit === undefined || results === undefined)
      throw new Unreadable(`${paths[0]}/results.yaml`, "is not there or cannot be read", "Run waymark build first.");
    const laboratory = (readDocument(practice.root, "lab.yaml").value ?? {}) as Partial<Laboratory>;
    const text = calendarOf(results, speechOf(dressed(practice, laboratory.language).words));
    if (text === undefined)
      throw new Unreadable(`${visit.path}/results.yaml`, "holds no plan that may go to the client", whyNot(results));
    io.out(text);
    return 0;
  },
};

function whyNot(results: Results): string {
  return judgementOf(results, "programme_state")?.because ?? "client.yaml has no plan block.";
}
