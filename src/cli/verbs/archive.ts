import { existsSync } from "node:fs";
import { join, resolve } from "node:path";
import { archiveClient, archiveName } from "../archive.js";
import { RESULTS } from "../build-client.js";
import { Unreadable, writeAtomically } from "../files.js";
import { findPractice, openPractice } from "../practice.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark archive CLIENT …  one ZIP a client: sessions, series, results, reports, schemas, digests

  CLIENT     a client id, such as c-017
  --to DIR   where to write; without it, the folder you stand in

The same files give the same archive, byte for byte. waymark verify FILE.zip checks it anywhere.
`;

export const verb: Verb = {
  help: HELP,
  options: { to: { type: "string" } },
  async run(words, flags, io) {
    if (words.length === 0) throw new WrongUse("archive takes one or more client ids");
    const practice = openPractice(findPractice(io.cwd));
    const to = resolve(io.cwd, typeof flags.to === "string" ? flags.to : ".");
    if (!existsSync(to)) throw new Unreadable(to, "does not exist", "Make the folder first.");
    for (const id of words) {
      const client = practice.clients.find((c) => c.id === id);
      if (client === undefined)
        throw new Unreadable(
          id,
          "is no client of this practice",
          `There are: ${practice.clients.map((c) => c.id).join(", ")}.`,
        );
      const unbuilt = client.visits.filter((visit) => !existsSync(join(practice.root, visit.path, RESULTS)));
      if (unbuilt.length > 0)
        throw new Unreadable(
          `${unbuilt[0]?.path}/${RESULTS}`,
          "is not there",
          "Run waymark build first: an archive holds results.",
        );
      const path = join(to, archiveName(client));
      writeAtomically(path, archiveClient(practice, client));
      io.out(`${path}\n`);
    }
    return 0;
  },
};
