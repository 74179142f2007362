/** Makes a visit folder with a session file to fill in, like an earlier visit or from the first blocks. */
import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { readDate } from "../../validate/calendar.js";
import { readDocument } from "../check-practice.js";
import { Unreadable, writeAtomically } from "../files.js";
import type { GuideNode, SchemaOf } from "../guide.js";
import { type ClientFolder, findPractice, openPractice, type Practice, SESSION, select } from "../practice.js";
import { loadSchemas } from "../reference.js";
import { type Flags, type Io, WrongUse } from "../verb.js";
import { SCHEMA_FOLDER } from "./practice-files.js";
import { sessionText } from "./session-text.js";

const PURPOSES = ["baseline", "retest", "reliability", "other"];

export function newSession(words: readonly string[], flags: Flags, io: Io): void {
  const [id, ...rest] = words;
  if (id === undefined || rest.length > 0) throw new WrongUse("new session takes a client, such as c-017");
  const date = typeof flags.date === "string" ? flags.date : undefined;
  if (date === undefined || readDate(date) === undefined)
    throw new WrongUse(`new session needs the day of the visit: --date YEAR-MONTH-DAY${date ? `, not ${date}` : ""}`);
  const practice = openPractice(findPractice(io.cwd));
  const client = practice.clients.find((c) => c.id === id);
  if (client === undefined)
    throw new Unreadable(
      id,
      "is no client of this practice",
      practice.clients.length === 0
        ? "Make the first: waymark new client."
        : `There are: ${practice.clients.map((c) => c.id).join(", ")}. A new one: waymark new client.`,
    );
  const purpose =
    typeof flags.purpose === "string" ? flags.purpose : client.visits.length === 0 ? "baseline" : "retest";
  if (!PURPOSES.includes(purpose)) throw new WrongUse(`--purpose takes one of: ${PURPOSES.join(", ")}`);
  const label = typeof flags.label === "string" ? flags.label : purpose;
  if (!/^[a-z0-9][a-z0-9-]{0,39}$/.test(label))
    throw new WrongUse("--label takes small letters, digits and hyphens, such as retest-2");
  const path = `clients/${id}/${date}-${label}`;
  if (existsSync(join(practice.root, path)))
    throw new Unreadable(path, "is there already", "Give the second visit of a day another name: --label.");
  const like = typeof flags.like === "string" ? likeVisit(practice, client, flags.like, io.cwd) : undefined;
  const schemas = new Map(
    loadSchemas().map((schema) => [String(schema.$id).replace("https://waymark.invalid/schema/", ""), schema]),
  );
  const schemaOf: SchemaOf = (name) => schemas.get(name) as GuideNode | undefined;
  const header = { client: id, date, label, purpose, schema: `../../../${SCHEMA_FOLDER}/session.schema.json` };
  mkdirSync(join(practice.root, path), { recursive: true });
  writeAtomically(join(practice.root, path, SESSION), sessionText(header, like?.value, schemaOf));
  io.out(
    [
      `${path}/${SESSION}`,
      "",
      like === undefined
        ? "It holds the first blocks as comments; waymark guide lists them all."
        : `Protocol, instruments and postures are those of ${like.path}; no measured value was copied.`,
      "Put the instruments' files beside it, fill in what you measure, then: waymark check",
      "",
    ].join("\n"),
  );
}

function likeVisit(practice: Practice, client: ClientFolder, asked: string, cwd: string) {
  const last = client.visits.at(-1)?.path;
  const paths = /^last$/i.test(asked) ? (last ? [last] : []) : named(practice, client, asked, cwd);
  if (paths.length === 0)
    throw new Unreadable(
      client.path,
      "has no earlier visit",
      "Name one of another client: --like c-017/2026-03-02-baseline.",
    );
  if (paths.length > 1) throw new WrongUse(`--like ${asked} names ${paths.length} visits; it takes one`);
  const path = paths[0] as string;
  const { value } = readDocument(practice.root, `${path}/${SESSION}`);
  if (value === undefined)
    throw new Unreadable(`${path}/${SESSION}`, "cannot be read as YAML", "waymark check says what is wrong with it.");
  return { path, value };
}

/** A visit by its folder name among the client's own, else by its path. */
function named(practice: Practice, client: ClientFolder, asked: string, cwd: string): string[] {
  const own = client.visits.find((visit) => visit.name === asked);
  return own ? [own.path] : [...select(practice, [asked], cwd)];
}
