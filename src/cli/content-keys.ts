/** What each visit's outputs depend on, as it lies on the disk when a build begins. */
import type { VisitBuilt } from "./build-client.js";
import { type FileBytes, readFile, sha256 } from "./files.js";
import { programDigest } from "./freshness.js";
import { overrideFiles } from "./override-files.js";
import { type ClientFolder, filesIn, type Practice, readIfThere, SESSION, seriesFiles } from "./practice.js";
import { repeatDigests } from "./reliability-visits.js";

export interface Content {
  /** One digest of all: program, laboratory, client, the visit's files and those of the client's earlier visits. */
  readonly key: string;
  /** SHA-256 of the client's file and of each file of the visit, by name. */
  readonly files: Readonly<Record<string, string>>;
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
      const series = Object.entries(seriesFiles(practice, visit)).map(([name, file]) => [name, file.sha256] as const);
      const session = readFile(practice.root, `${visit.path}/${SESSION}`).sha256;
      chain = sha256([chain, visit.path, session, ...series.map(([name, digest]) => `${name} ${digest}`)].join("\n"));
      contents.set(visit.path, {
        key: chain,
        files: { ...Object.fromEntries(series), [SESSION]: session, [CLIENT]: clientDigest },
      });
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
  return (
    clientDigestOf(practice, client) === content?.files[CLIENT] &&
    sources.every(({ file, sha256 }) => content?.files[file] === sha256)
  );
}

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
