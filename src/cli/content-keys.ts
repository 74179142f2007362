/** What each visit's outputs depend on, as it lies on the disk when a build begins. */
import type { VisitBuilt } from "./build-client.js";
import { digestOf, type FileBytes, readFile, sha256 } from "./files.js";
import { programDigest } from "./freshness.js";
import { overrideFiles } from "./override-files.js";
import { type ClientFolder, filesIn, type Practice, readIfThere, SESSION, seriesDigests } from "./practice.js";
import { repeatDigests } from "./reliability-visits.js";

export interface Content {
  /** One digest of all: program, laboratory, client, the visit's files and those of the client's earlier visits. */
  readonly key: string;
  /** Name and SHA-256 of the client's file and of each file of the visit, in one text: an archive holds many. */
  readonly files: string;
}

const CLIENT = "client.yaml";

/** By the path of each visit of these clients. */
export async function contentsOf(
  practice: Practice,
  clients: readonly ClientFolder[],
): Promise<ReadonlyMap<string, Content>> {
  const own = [
    ...["norms", "profiles"].flatMap((folder) => filesIn(practice, folder, /\.ya?ml$/)),
    ...filesIn(practice, "retests", /\.csv$/),
    ...overrideFiles(practice),
  ];
  const lab = readFile(practice.root, "lab.yaml");
  const shared = [
    programDigest(practice.root),
    lab.sha256,
    await logoDigest(practice, lab),
    ...own.map((file) => `${file.path} ${file.sha256}`),
    ...repeatDigests(practice),
  ];
  const contents = new Map<string, Content>();
  for (const client of clients) {
    const clientDigest = clientDigestOf(practice, client);
    let chain = sha256([...shared, clientDigest].join("\n"));
    for (const visit of client.visits) {
      const series = seriesDigests(practice, visit);
      const session = digestOf(practice.root, `${visit.path}/${SESSION}`);
      const named = Object.entries(series).map(([name, digest]) => line(name, digest));
      chain = sha256([chain, visit.path, session, ...named].join("\n"));
      const files = [...named, line(SESSION, session), line(CLIENT, clientDigest)].join(BETWEEN);
      contents.set(visit.path, { key: chain, files });
    }
  }
  return contents;
}

/** Was a visit built from the content its key stands for? Not when a file of it was edited while the build went on. */
export function asPlanned(
  practice: Practice,
  client: ClientFolder,
  { sources }: Pick<VisitBuilt, "sources">,
  content: Content | undefined,
): boolean {
  const planned = new Set(content?.files.split(BETWEEN));
  return (
    planned.has(line(CLIENT, clientDigestOf(practice, client))) &&
    sources.every(({ file, sha256 }) => planned.has(line(file, sha256)))
  );
}

/** No name of a file holds it. */
const BETWEEN = "\0";
const line = (name: string, digest: string): string => `${name} ${digest}`;

const clientDigestOf = (practice: Practice, { path }: ClientFolder): string =>
  readIfThere(practice, `${path}/${CLIENT}`)?.sha256 ?? "no client file";

/** The laboratory's picture stands in every report; most have none, and nothing is parsed for them. */
async function logoDigest(practice: Practice, lab: FileBytes): Promise<string> {
  if (!/^\s*["']?logo/m.test(new TextDecoder().decode(lab.bytes))) return "";
  const { logo } = ((await import("./check-practice.js")).readDocument(practice.root, "lab.yaml").value ?? {}) as {
    logo?: unknown;
  };
  return (typeof logo === "string" && readIfThere(practice, logo)?.sha256) || "";
}
