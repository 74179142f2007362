/**
 * One client's record for people who must not know who it is about: another pseudonym, dates shifted by an offset that
 * only a secret tells, no free text, no reports. Results are computed anew from what is left, so that they agree with it.
 */
import { createHmac } from "node:crypto";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { stringify } from "yaml";
import { addDays } from "../../kernel/days.js";
import { delimiterOf } from "../../read/csv-table.js";
import { decodeLeniently } from "../../read/decode.js";
import type { SeriesMapping } from "../../read/series.js";
import { writeResults } from "../../results/write.js";
import { references } from "../../validate/references.js";
import { MANIFEST, type Manifest, version } from "../archive.js";
import { computeClient, RESULTS } from "../build-client.js";
import { readDocument } from "../check-practice.js";
import { readFile, sha256, Unreadable } from "../files.js";
import type { GuideNode, SchemaOf } from "../guide.js";
import { type ClientFolder, openPractice, type Practice, SESSION } from "../practice.js";
import { loadSchemas, openReference } from "../reference.js";
import { pack } from "../zip.js";
import { bandBirth } from "./birth.js";
import { plainFile, plainMapping } from "./raw-file.js";
import { type Scrubbing, scrub, WITHHELD } from "./scrub.js";

type Mapping = Readonly<Record<string, unknown>>;

export interface AnonymousArchive {
  /** "p-3f2a…": says nothing to who has not the secret. */
  readonly id: string;
  readonly bytes: Uint8Array;
}

/** The same files and secret give the same bytes. Throws Unreadable when a file holds an error. */
export async function anonymousArchive(
  practice: Practice,
  client: ClientFolder,
  secret: string,
): Promise<AnonymousArchive> {
  const word = (what: string) => createHmac("sha256", secret).update(`${what} ${client.id}`).digest("hex");
  const id = `p-${word("id").slice(0, 10)}`;
  const texts = scrubbed(practice, client, id, word);
  const folder = mkdtempSync(join(tmpdir(), "waymark-anonymous-"));
  try {
    for (const [path, text] of Object.entries(texts)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    const files = { ...texts, ...(await results(folder, client)) };
    return { id, bytes: packed(id, files) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function results(folder: string, original: ClientFolder): Promise<Record<string, string>> {
  const practice = openPractice(folder);
  const lab = readDocument(folder, "lab.yaml");
  const { reference } = await openReference(practice, lab);
  const [client] = practice.clients;
  const computed = client && computeClient({ practice, lab, reference }, client);
  const error = computed?.diagnostics.find((d) => d.severity === "error");
  if (computed === undefined || error !== undefined)
    throw new Unreadable(
      original.path,
      `cannot be made anonymous (${error?.code ?? "no visit"}: ${error?.found ?? ""})`,
      "Run waymark check; a file without errors can.",
    );
  return Object.fromEntries(
    computed.visits.map(({ visit, results }) => [`${visit.path}/${RESULTS}`, writeResults(results).toString()]),
  );
}

/** Files of the new practice by path: laboratory, client, sessions and raw series. */
function scrubbed(
  practice: Practice,
  client: ClientFolder,
  id: string,
  word: (what: string) => string,
): Record<string, string> {
  const lab = mappingIn(practice, "lab.yaml");
  const person = mappingIn(practice, `${client.path}/client.yaml`);
  const sessions = client.visits.map((visit) => ({ visit, value: mappingIn(practice, `${visit.path}/${SESSION}`) }));
  const dates = new Set([lab, person, ...sessions.map((s) => s.value)].flatMap(datesIn));
  const days = offset(word("days"), dates);
  const schemas = new Map(
    loadSchemas().map((schema) => [String(schema.$id).replace("https://waymark.invalid/schema/", ""), schema]),
  );
  const schemaOf: SchemaOf = (name) => schemas.get(name) as GuideNode | undefined;
  const by: Scrubbing = {
    shift: (date) => addDays(date, days),
    stand: (text) => `name ${word(`name ${text}`).slice(0, 6)}`,
    schemaOf,
  };
  const clean = (value: Mapping, name: string) => {
    const schema = schemaOf(name) ?? {};
    return (scrub(value, schema, schema, by) ?? {}) as Record<string, unknown>;
  };
  const visitDates = sessions.map(({ value }) => by.shift(String(value.date)));
  const files: Record<string, string> = {};
  const write = (path: string, value: unknown) => {
    files[path] = stringify(value, { lineWidth: 0 });
  };
  const instruments = (lab.instruments ?? {}) as Record<string, Mapping>;
  const kept = clean(lab, "laboratory.schema.json");
  const plain = Object.fromEntries(
    Object.entries((kept.instruments ?? {}) as Record<string, Mapping>).map(([key, entry]) => [
      key,
      entry.columns === undefined ? entry : plainMapping(entry),
    ]),
  );
  const { retests: _, ...laboratory } = kept;
  write("lab.yaml", { ...laboratory, name: WITHHELD, ...(kept.instruments ? { instruments: plain } : {}) });
  write(`clients/${id}/client.yaml`, {
    ...clean(person, "client.schema.json"),
    id,
    birth_date: bandBirth(by.shift(String(person.birth_date)), visitDates),
  });
  sessions.forEach(({ visit, value }, i) => {
    const label = `visit-${i + 1}`;
    const folder = `clients/${id}/${visitDates[i]}-${label}`;
    const names = new Map<string, string>();
    for (const { file, instrument } of references(value).series) {
      const mapping = instruments[instrument ?? ""] as SeriesMapping | undefined;
      if (mapping?.columns === undefined || names.has(file)) continue;
      const bytes = readFile(practice.root, `${visit.path}/${file}`).bytes;
      const columns = Object.entries(mapping.columns) as Parameters<typeof delimiterOf>[2];
      const delimiter = delimiterOf(
        decodeLeniently(bytes, mapping.encoding),
        mapping,
        columns,
        mapping.header_row ?? 1,
      );
      const name = `series-${names.size + 1}.csv`;
      names.set(file, name);
      files[`${folder}/${name}`] = plainFile(bytes, mapping, delimiter);
    }
    write(
      `${folder}/${SESSION}`,
      withSeries({ ...clean(value, "session.schema.json"), client: id, label }, value, names),
    );
  });
  return files;
}

/** Puts the new file names where the old session named a series. */
function withSeries(session: Mapping, original: Mapping, names: ReadonlyMap<string, string>): Mapping {
  return Object.fromEntries(
    Object.entries(session).map(([key, block]) => {
      const old = (original[key] as Mapping | undefined)?.series;
      const name = typeof old === "string" ? names.get(old) : undefined;
      return [key, name === undefined ? block : { ...(block as Mapping), series: name }];
    }),
  );
}

/** Back by one to nine years, and so that no shifted date falls on one that was there. */
function offset(hex: string, dates: ReadonlySet<string>): number {
  let days = -365 - (Number.parseInt(hex.slice(0, 8), 16) % 3000);
  while ([...dates].some((date) => dates.has(addDays(date, days)))) days--;
  return days;
}

function datesIn(value: unknown): string[] {
  if (typeof value === "string") return /^\d{4}-\d{2}-\d{2}$/.test(value) ? [value] : [];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(datesIn) : [];
}

function mappingIn(practice: Practice, path: string): Mapping {
  const { value } = readDocument(practice.root, path);
  if (typeof value !== "object" || value === null)
    throw new Unreadable(path, "cannot be read as YAML", "waymark check says what is wrong with it.");
  return value as Mapping;
}

function packed(id: string, texts: Readonly<Record<string, string>>): Uint8Array {
  const files = Object.fromEntries(Object.entries(texts).map(([path, text]) => [path, new TextEncoder().encode(text)]));
  const manifest: Manifest = {
    format: "waymark archive 1",
    client: id,
    program: `waymark ${version()}`,
    rebuild: `unpack, then: npx waymark@${version()} build --no-cache`,
    sha256: Object.fromEntries(
      Object.keys(files)
        .sort()
        .map((path) => [path, sha256(files[path] as Uint8Array)]),
    ),
  };
  return pack({ ...files, [MANIFEST]: new TextEncoder().encode(`${JSON.stringify(manifest, null, 2)}\n`) });
}
