import { join } from "node:path";
import type { Diagnostic } from "../../kernel/diagnostic.js";
import type { Laboratory } from "../../kernel/generated/laboratory.js";
import { buildClient, RESULTS, type VisitBuilt } from "../build-client.js";
import { readDocument, sourceText } from "../check-practice.js";
import { drawDiagnostics, drawSummary } from "../draw-diagnostic.js";
import { readFile, sha256 } from "../files.js";
import { isFresh, outputsOf, programDigest, readRecord, writeRecord } from "../freshness.js";
import { lockPractice } from "../lock.js";
import { moved } from "../moved.js";
import {
  type ClientFolder,
  filesIn,
  findPractice,
  openPractice,
  type Practice,
  SESSION,
  select,
  seriesFiles,
} from "../practice.js";
import { openProgress } from "../progress.js";
import { laboratoryRetests, loadReference } from "../reference.js";
import type { Verb } from "../verb.js";

const HELP = `waymark build [PATH …]  write results.yaml and the reports of visits that changed

  PATH         a practice, a client folder or a visit folder; without one, the practice you stand in
  --no-pdf     write HTML only (a PDF needs a Chromium; HTML never does)
  --no-report  write results.yaml only
  --no-cache   build every chosen visit, changed or not; the files come out the same

A client whose files hold an error gets nothing written; the others are built. Exit code 1 then.
`;

export const verb: Verb = {
  help: HELP,
  options: { "no-pdf": { type: "boolean" }, "no-report": { type: "boolean" }, "no-cache": { type: "boolean" } },
  async run(words, flags, io) {
    const practice = openPractice(findPractice(words[0] ?? io.cwd));
    const chosen = select(practice, words, io.cwd);
    const release = lockPractice(practice.root);
    try {
      const record = readRecord(practice.root, flags["no-cache"] !== true);
      const keys = freshKeys(practice);
      const outputs = [RESULTS];
      const stale = new Set(
        [...chosen].filter((path) => !isFresh(join(practice.root, path), record[path], keys.get(path) ?? "", outputs)),
      );
      const progress = openProgress(stale.size, io, () => performance.now());
      const problems: Diagnostic[] = [];
      const built: VisitBuilt[] = [];
      if (stale.size > 0) {
        const lab = readDocument(practice.root, "lab.yaml");
        const retests = laboratoryRetests(practice, (lab.value ?? {}) as Laboratory);
        problems.push(...retests.diagnostics);
        const shop = { practice, lab, reference: await loadReference(retests.sets) };
        for (const client of practice.clients) {
          if (!client.visits.some((visit) => stale.has(visit.path))) continue;
          progress.step(client.id);
          const outcome = buildClient(shop, client, stale);
          problems.push(...outcome.diagnostics);
          built.push(...outcome.visits);
          for (const { visit } of outcome.visits)
            record[visit.path] = {
              key: keys.get(visit.path) ?? "",
              outputs: outputsOf(join(practice.root, visit.path), outputs),
            };
        }
        writeRecord(practice.root, record);
      }
      progress.end();
      if (problems.length > 0)
        io.say(`${drawDiagnostics(problems, sourceText(practice))}\n\n${drawSummary(problems)}\n`);
      io.out(summary(built, chosen.size, stale.size));
      return problems.some((problem) => problem.severity === "error") ? 1 : 0;
    } finally {
      release();
    }
  },
};

function summary(built: readonly VisitBuilt[], chosen: number, stale: number): string {
  const lines = built.map(({ visit, before, results, wrote }) => {
    const moves = before ? moved(before, results).length : undefined;
    const what =
      moves === undefined
        ? "new"
        : moves === 0
          ? "no number moved"
          : `${moves} ${moves === 1 ? "finding" : "findings"} moved`;
    return `${visit.path}  ${what}  ${wrote.join(" ")}`;
  });
  const fresh = chosen - stale;
  return `${[...lines, `${built.length} of ${chosen} visits built${fresh > 0 ? `, ${fresh} unchanged` : ""}.`].join("\n")}\n`;
}

/** Per visit, a digest of everything its outputs depend on: program, laboratory, client, its files and those of earlier visits. */
function freshKeys(practice: Practice): Map<string, string> {
  const shared = [programDigest(), readFile(practice.root, "lab.yaml").sha256, ...folderDigests(practice)];
  const keys = new Map<string, string>();
  for (const client of practice.clients) {
    let chain = sha256([...shared, clientDigest(practice, client)].join("\n"));
    for (const visit of client.visits) {
      const files = seriesFiles(practice, visit);
      const session = readFile(practice.root, `${visit.path}/${SESSION}`).sha256;
      const parts = Object.entries(files).map(([name, file]) => `${name} ${file.sha256}`);
      chain = sha256([chain, visit.path, session, ...parts].join("\n"));
      keys.set(visit.path, chain);
    }
  }
  return keys;
}

const clientDigest = (practice: Practice, client: ClientFolder): string => {
  try {
    return readFile(practice.root, `${client.path}/client.yaml`).sha256;
  } catch {
    return "no client file";
  }
};

/** The practice's own tables and retests: they reach every visit. */
const folderDigests = (practice: Practice): string[] =>
  [...filesIn(practice, "norms", /\.ya?ml$/), ...filesIn(practice, "retests", /\.csv$/)].map(
    (file) => `${file.path} ${file.sha256}`,
  );
