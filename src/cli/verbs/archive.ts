import { randomBytes } from "node:crypto";
import { existsSync } from "node:fs";
import { join, resolve } from "node:path";
import type { RetestSet } from "../../compare/known.js";
import { archiveClient, archiveName } from "../archive.js";
import { RESULTS } from "../build-client.js";
import { readDocument } from "../check-practice.js";
import { Unreadable, writeAtomically } from "../files.js";
import { type ClientFolder, findPractice, openPractice, type Practice } from "../practice.js";
import { openReference } from "../reference.js";
import { repeatedClients } from "../reliability-visits.js";
import { sweepFolder } from "../sweep.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark archive CLIENT …  one ZIP a client: sessions, series, results, reports, schemas, methods, digests

  CLIENT          a client id, such as c-017
  --to DIR        where to write; without it, the folder you stand in
  --anonymous     for people who must not know who it is: another pseudonym, dates shifted, a birth date that tells
                  only the years of age, no free text, no names of files, raw files with their mapped columns only,
                  results computed anew, no reports, none of the laboratory's own tables. Rare values can still
                  point to a person: treat it as personal data where your code says so
  --secret WORDS  with --anonymous: what pseudonym and shift are made from. The same words give the same archive, and
                  who has them can undo the shift; without them a random secret is used and forgotten

The same files give the same archive, byte for byte. waymark verify FILE.zip checks it anywhere.
`;

export const verb: Verb = {
  help: HELP,
  options: { to: { type: "string" }, anonymous: { type: "boolean" }, secret: { type: "string" } },
  async run(words, flags, io) {
    if (words.length === 0) throw new WrongUse("archive takes one or more client ids");
    if (flags.secret !== undefined && !flags.anonymous) throw new WrongUse("--secret goes with --anonymous");
    if (typeof flags.secret === "string" && flags.secret.length < 8)
      throw new WrongUse("--secret needs eight characters or more: short ones can be guessed");
    const practice = openPractice(findPractice(io.cwd));
    const to = resolve(io.cwd, typeof flags.to === "string" ? flags.to : ".");
    if (!existsSync(to)) throw new Unreadable(to, "does not exist", "Make the folder first.");
    sweepFolder(to, ".");
    let repeats: readonly RetestSet[] | undefined;
    for (const id of words) {
      const client = clientOf(practice, id);
      if (flags.anonymous) {
        const { anonymousArchive } = await import("../anonymous/anonymous-archive.js");
        const secret = typeof flags.secret === "string" ? flags.secret : randomBytes(32).toString("hex");
        const made = await anonymousArchive(practice, client, secret);
        const path = join(to, `${made.id}.zip`);
        writeAtomically(path, made.bytes);
        io.out(`${path}\n`);
        continue;
      }
      const unbuilt = client.visits.filter((visit) => !existsSync(join(practice.root, visit.path, RESULTS)));
      if (unbuilt.length > 0)
        throw new Unreadable(
          `${unbuilt[0]?.path}/${RESULTS}`,
          "is not there",
          "Run waymark build first: an archive holds results.",
        );
      const path = join(to, archiveName(client));
      repeats ??= await repeatsOf(practice);
      writeAtomically(path, archiveClient(practice, client, repeats));
      io.out(`${path}\n`);
    }
    return 0;
  },
};

/** Pairs out of visits repeated for the laboratory's own error: they are no files, so an archive takes them along. */
async function repeatsOf(practice: Practice): Promise<readonly RetestSet[]> {
  if (repeatedClients(practice).length === 0) return [];
  const lab = readDocument(practice.root, "lab.yaml");
  return (await openReference(practice, lab)).reference.laboratoryRetests.filter((set) => set.file === undefined);
}

function clientOf(practice: Practice, id: string): ClientFolder {
  const client = practice.clients.find((c) => c.id === id);
  if (client === undefined)
    throw new Unreadable(
      id,
      "is no client of this practice",
      `There are: ${practice.clients.map((c) => c.id).join(", ")}.`,
    );
  return client;
}
