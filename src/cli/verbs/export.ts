import { resolve } from "node:path";
import type { Results } from "../../kernel/results.js";
import { recorded } from "../build-client.js";
import { fhirBundle } from "../export/fhir.js";
import { tidyTable } from "../export/table.js";
import { Unreadable, writeAtomically } from "../files.js";
import { findPractice, openPractice, select } from "../practice.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark export --table [PATH …]  every recorded number of the visits as one CSV, one row a number
waymark export --fhir [PATH …]   an HL7 FHIR R4 Bundle of Observations, with LOINC and UCUM codes where they exist

  PATH           a practice, a client folder or a visit folder; without one, the practice you stand in
  --to FILE      where to write; without it, to stdout
  --secret WORDS with --table: other pseudonyms made from these words, days instead of dates, whole years of
                 age, no labels and reasons. Keep the words: the same ones give the same pseudonyms again

Reads results.yaml: build first. Client ids are pseudonyms; with other knowledge a person may still be told
from such a table, so treat it as personal data.
`;

export const verb: Verb = {
  help: HELP,
  options: {
    table: { type: "boolean" },
    fhir: { type: "boolean" },
    to: { type: "string" },
    secret: { type: "string" },
  },
  async run(words, flags, io) {
    if ((flags.table === true) === (flags.fhir === true)) throw new WrongUse("export takes --table or --fhir");
    if (flags.secret !== undefined && !flags.table) throw new WrongUse("--secret goes with --table");
    if (typeof flags.secret === "string" && flags.secret.length < 8)
      throw new WrongUse("--secret needs eight characters or more: short ones can be guessed");
    const practice = openPractice(findPractice(words[0] ?? io.cwd));
    const chosen = select(practice, words, io.cwd);
    const visits = practice.clients
      .flatMap((client) => client.visits)
      .filter((visit) => chosen.has(visit.path))
      .map((visit): Results => {
        const results = recorded(practice, visit);
        if (results === undefined)
          throw new Unreadable(
            `${visit.path}/results.yaml`,
            "is not there or cannot be read",
            "Run waymark build first.",
          );
        return results;
      });
    const text = flags.fhir
      ? fhirBundle(visits)
      : tidyTable(visits, typeof flags.secret === "string" ? flags.secret : undefined);
    if (typeof flags.to === "string") {
      writeAtomically(resolve(io.cwd, flags.to), text);
      io.say(`${flags.to}: ${visits.length} ${visits.length === 1 ? "visit" : "visits"}\n`);
    } else io.out(text);
    return 0;
  },
};
