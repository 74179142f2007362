import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { isRebuilt, MANIFEST, type Manifest } from "../archive.js";
import { openCrew } from "../crew.js";
import { readFile, sha256, Unreadable } from "../files.js";
import { findPractice, openPractice, type Practice, RESULTS, select } from "../practice.js";
import type { ExitCode, Io, Verb } from "../verb.js";
import { textOf, unpack } from "../zip.js";

const HELP = `waymark verify [PATH …]     compute again and compare with the recorded results
waymark verify FILE.zip     check an archive's digests, then the same
waymark verify REPORT.pdf   find the results a report was printed from, by the digest in it

Nothing is written. For each difference it says which input, formula, table or choice moved.
Exit code 0 when everything agrees, 1 when something does not.
`;

export const verb: Verb = {
  help: HELP,
  options: {},
  async run(words, _flags, io) {
    const file = words[0];
    if (file !== undefined && /\.(pdf|html)$/i.test(file)) return verifyReport(resolve(io.cwd, file), io);
    if (file !== undefined && /\.zip$/i.test(file)) return verifyArchive(resolve(io.cwd, file), io);
    const practice = openPractice(findPractice(file ?? io.cwd));
    return verifyPractice(practice, select(practice, words, io.cwd), io);
  },
};

/** Computes every chosen visit again, on all processors, and tells of clients in the order of their folders. */
async function verifyPractice(practice: Practice, chosen: ReadonlySet<string>, io: Io): Promise<ExitCode> {
  const crew = await openCrew(practice, { editions: [] }, chosen.size);
  let same = 0;
  let different = 0;
  try {
    const clients = practice.clients.filter((client) => client.visits.some((visit) => chosen.has(visit.path)));
    const answers = clients.map((client) => crew.verify(client, chosen));
    for (const answer of answers) answer.catch(() => undefined); // reported when its turn comes
    for (const answer of answers) {
      const client = await answer;
      same += client.same;
      different += client.different;
      if (client.text !== "") io.out(client.text);
    }
  } finally {
    await crew.close();
  }
  io.out(
    `${same} of ${same + different} ${same + different === 1 ? "visit agrees" : "visits agree"} with what is computed now.\n`,
  );
  return different === 0 ? 0 : 1;
}

async function verifyArchive(path: string, io: Io): Promise<ExitCode> {
  const files = unpack(path, bytesOf(path));
  const manifestBytes = files[MANIFEST];
  if (manifestBytes === undefined)
    throw new Unreadable(path, `has no ${MANIFEST}`, "Only archives made by waymark archive can be verified.");
  const manifest = JSON.parse(textOf(manifestBytes)) as Manifest;
  const named = Object.entries(manifest.sha256);
  const wrong = named.filter(
    ([name, digest]) => files[name] === undefined || sha256(files[name] as Uint8Array) !== digest,
  );
  const extra = Object.keys(files).filter((name) => name !== MANIFEST && manifest.sha256[name] === undefined);
  for (const [name] of wrong)
    io.out(`${name}: ${files[name] === undefined ? "is missing" : "is not what the manifest says"}\n`);
  for (const name of extra) io.out(`${name}: is not in the manifest\n`);
  if (wrong.length + extra.length > 0) return 1;
  io.out(`${named.length} files agree with the manifest (${manifest.program}).\n`);
  const folder = mkdtempSync(join(tmpdir(), "waymark-verify-"));
  try {
    for (const [name, bytes] of Object.entries(files)) {
      if (name === MANIFEST || name.startsWith("schema/")) continue;
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), bytes);
    }
    const practice = openPractice(folder);
    const rebuilt = new Set(practice.clients.flatMap((client) => client.visits.map((visit) => visit.path)));
    if (named.some(([name]) => isRebuilt(name))) return await verifyPractice(practice, rebuilt, io);
    return 0;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Where a report carries the digest of its results.yaml: a PDF in its metadata, whole; a page in the foot of its printed
 * pages, the first twelve digits, in every edition and language.
 */
const DIGEST = /<dc:identifier>[^<]* ([0-9a-f]{64})<\/dc:identifier>|@bottom-left\{content:"[^"]*?([0-9a-f]{12})"\}/;

/** The practice around a report tells whether its digest is still that of the recorded results. */
function verifyReport(path: string, io: Io): ExitCode {
  const digest = DIGEST.exec(Buffer.from(bytesOf(path)).toString("latin1"));
  const found = digest?.[1] ?? digest?.[2];
  if (found === undefined)
    throw new Unreadable(path, "carries no digest of results", "Only reports built by this program can be verified.");
  const practice = openPractice(findPractice(dirname(path)));
  const visits = practice.clients.flatMap((client) => client.visits);
  const match = visits.find((visit) => {
    try {
      return readFile(practice.root, `${visit.path}/${RESULTS}`).sha256.startsWith(found);
    } catch {
      return false;
    }
  });
  io.out(
    match
      ? `yes: printed from ${match.path}/${RESULTS} (${found.slice(0, 12)})\n`
      : `no: no results in this practice have the digest ${found.slice(0, 12)}; the report is older or newer than what is recorded\n`,
  );
  return match ? 0 : 1;
}

function bytesOf(path: string): Uint8Array {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat === undefined) throw new Unreadable(path, "does not exist", "Check the path.");
  if (stat.size > 500_000_000)
    throw new Unreadable(path, "is larger than 500 MB", "That is no report or archive of one client.");
  return readFileSync(path);
}
