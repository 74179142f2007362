import { realpathSync } from "node:fs";
import { join, relative } from "node:path";
import { buildPractice, type Noted } from "../build-practice.js";
import { drawDiagnostics, drawSummary } from "../draw-diagnostic.js";
import { EDITIONS } from "../editions.js";
import { lockPractice } from "../lock.js";
import { overviewKey } from "../overview-key.js";
import { findPractice, openPractice, type Practice, select } from "../practice.js";
import { openProgress } from "../progress.js";
import { inShard, readShard } from "../shard.js";
import { changedSince } from "../since.js";
import { openStop } from "../stop.js";
import { sweepPractice } from "../sweep.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark build [PATH …]  write results.yaml and the reports of visits that changed

  PATH            a practice, a client folder or a visit folder; without one, the practice you stand in
  --edition NAME  practitioner, client or referral; may be given more than once; without it, all three
  --since REV     only visits that a change since this Git revision can touch, uncommitted changes among them
  --no-pdf        write HTML only (a PDF needs a Chromium; HTML never does)
  --no-report     write results.yaml only, and no pages
  --no-index      leave out the pages of practice and clients (index.html, clients/…/index.html)
  --shard I/N     only the I-th of N shares of the clients, dealt out by a digest of their ids: the same on every
                  machine, disjoint, and together all. Several machines build one share each; what they have
                  written, copied together with .waymark/built, is what one machine would have written, and the
                  next build without --shard adds the pages of practice and clients and nothing else
  --no-cache      build every chosen visit, changed or not; the files come out the same

A client whose files hold an error gets nothing written; the others are built. Exit code 1 then.
`;

export const verb: Verb = {
  help: HELP,
  options: {
    edition: { type: "string", multiple: true },
    since: { type: "string" },
    "no-pdf": { type: "boolean" },
    "no-report": { type: "boolean" },
    "no-index": { type: "boolean" },
    "no-cache": { type: "boolean" },
    shard: { type: "string" },
  },
  async run(words, flags, io) {
    const practice = openPractice(findPractice(words[0] ?? io.cwd));
    const shard = typeof flags.shard === "string" ? readShard(flags.shard) : undefined;
    const asked = select(practice, words, io.cwd);
    const since = typeof flags.since === "string" ? changedSince(practice, flags.since) : undefined;
    const selected = since === undefined ? asked : new Set([...asked].filter((path) => since.has(path)));
    const chosen =
      shard === undefined ? selected : new Set([...selected].filter((path) => inShard(clientOf(path), shard)));
    const editions = flags["no-report"] ? [] : editionsOf(flags.edition);
    const release = lockPractice(practice.root, shard);
    const stop = openStop(io, release);
    try {
      sweepPractice(practice, shard);
      const { problems, built, fresh, failures, closed } = await buildPractice(
        practice,
        { chosen, editions, pdf: flags["no-pdf"] !== true, useCache: flags["no-cache"] !== true, stopping: stop.asked },
        (total) => openProgress(total, io, () => performance.now()),
      );
      if (problems.length > 0) {
        const { sourceText } = await import("../check-practice.js");
        io.say(`${drawDiagnostics(problems, sourceText(practice))}\n\n${drawSummary(problems)}\n`);
      }
      for (const failure of failures) io.say(`waymark: ${failure}\n`);
      const unwanted =
        editions.length === 0 || flags["no-index"] || shard !== undefined || stop.asked() || failures.length > 0;
      const written = unwanted ? Promise.resolve([]) : pagesWritten(practice, built, flags["no-cache"] === true);
      const pages = await written.finally(() => closed);
      io.out(summary(built, chosen.size, fresh, pages));
      if (editions.length > 0) io.out(whereabouts(practice.root, io.cwd));
      if (stop.asked()) return stop.code();
      return failures.length > 0 || problems.some((problem) => problem.severity === "error") ? 1 : 0;
    } finally {
      stop.close();
      release();
    }
  },
};

/** Pages of practice and clients; what draws them is loaded only when something changed. `force`: write all. */
async function pagesWritten(practice: Practice, built: readonly Noted[], force: boolean): Promise<readonly string[]> {
  const key = overviewKey(practice);
  if (key.same && built.length === 0 && !force) return [];
  return (await import("../overview.js")).writeOverview(practice, key, built, force);
}

/** "clients/c-017/2026-03-02-baseline": the folder of a client bears its id. */
const clientOf = (visit: string): string => visit.split("/")[1] ?? "";

function editionsOf(asked: unknown) {
  const names = (asked as string[] | undefined) ?? EDITIONS;
  return names.map((name) => {
    const edition = EDITIONS.find((e) => e === name);
    if (edition === undefined) throw new WrongUse(`there is no edition "${name}"; there are ${EDITIONS.join(", ")}`);
    return edition;
  });
}

function summary(built: readonly Noted[], chosen: number, fresh: number, pages: readonly string[]): string {
  const lines = built.map(({ visit, moves, wrote }) => {
    const what =
      moves === undefined
        ? "new"
        : moves === 0
          ? "no finding moved"
          : `${moves} ${moves === 1 ? "finding" : "findings"} moved`;
    return `${visit.path}  ${what}\n  ${wrote.join("  ")}`;
  });
  const counts = new Map<string, number>();
  for (const choice of built.flatMap((visit) => visit.choices)) counts.set(choice, (counts.get(choice) ?? 0) + 1);
  const choices =
    counts.size === 0
      ? []
      : [
          "A choice is no longer what earlier reports were made with:",
          ...[...counts].map(([choice, n]) => `  ${choice} (${n} ${n === 1 ? "visit" : "visits"})`),
          "  To keep a client on the earlier one, write it under choices: in its client.yaml and build again.",
        ];
  const first = pages[0];
  const written =
    first === undefined
      ? []
      : [pages.length === 1 ? `${first} written` : `${first} and ${pages.length - 1} more pages written`];
  return `${[...lines, ...choices, ...written, `${built.length} of ${chosen} visits built${fresh > 0 ? `, ${fresh} unchanged` : ""}.`].join("\n")}\n`;
}

/** Where a reader who does not stand in the practice finds its pages. */
function whereabouts(root: string, cwd: string): string {
  const path = relative(realpathSync(cwd), root);
  return path === "" ? "" : `The files are in ${path}; open ${join(path, "index.html")} first.\n`;
}
