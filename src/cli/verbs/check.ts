import { join } from "node:path";
import { createInterface } from "node:readline/promises";
import type { Diagnostic } from "../../kernel/diagnostic.js";
import { checkPractice, readDocument, sourceText } from "../check-practice.js";
import { drawDiagnostics, drawSummary, listDiagnostics } from "../draw-diagnostic.js";
import { writeAtomically } from "../files.js";
import { unifiedDiff } from "../line-diff.js";
import { findPractice, openPractice, type Practice, select } from "../practice.js";
import { openReference } from "../reference.js";
import { type RepairedFile, repairedFiles } from "../repair.js";
import { type ExitCode, type Flags, type Io, type Verb, WrongUse } from "../verb.js";

const HELP = `waymark check [PATH …]  say what is wrong in the files, change nothing

  PATH      a practice, a client folder or a visit folder; without one, the practice you stand in
  --json    a list of problems on stdout: file, line, column, endColumn, severity, code, message,
            found, expected, why, fix (1-based; endColumn is the column after the last one marked)
  --fix     show the safe repairs as a diff: misspelt keys, decimal commas, missing quotes, clear slips
            of a unit. On a terminal it asks before it writes; elsewhere nothing is written without --yes
  --yes     with --fix: write the repairs, then check again

Errors cannot be right and stop a build. Warnings are unusual and stay in the report until the file
says confirmed: and why. Exit code 1 when there is an error, 0 otherwise.
`;

const ROUNDS = 5;

export const verb: Verb = {
  help: HELP,
  options: { json: { type: "boolean" }, fix: { type: "boolean" }, yes: { type: "boolean" } },
  async run(words, flags, io) {
    if (flags.yes && !flags.fix) throw new WrongUse("--yes goes with --fix");
    const practice = openPractice(findPractice(words[0] ?? io.cwd));
    const chosen = select(practice, words, io.cwd);
    let problems = await found(practice, chosen);
    // A misspelt block hides what is wrong inside it until its name is mended.
    for (
      let round = 0;
      flags.fix && round < ROUNDS && (await mended(practice, problems, flags, io, round > 0));
      round++
    )
      problems = await found(practice, chosen);
    return told(practice, problems, chosen.size, flags, io);
  },
};

async function found(practice: Practice, chosen: ReadonlySet<string>): Promise<Diagnostic[]> {
  const lab = readDocument(practice.root, "lab.yaml");
  const { reference, diagnostics } = await openReference(practice, lab);
  return [...diagnostics, ...checkPractice(practice, lab, chosen, reference.checker)];
}

function told(practice: Practice, problems: readonly Diagnostic[], visits: number, flags: Flags, io: Io): ExitCode {
  if (flags.json) io.out(`${JSON.stringify(listDiagnostics(problems), null, 2)}\n`);
  else {
    if (problems.length > 0) io.say(`${drawDiagnostics(problems, sourceText(practice))}\n\n`);
    io.say(`${drawSummary(problems)} ${visits} ${visits === 1 ? "visit" : "visits"} read.\n`);
  }
  return problems.some((problem) => problem.severity === "error") ? 1 : 0;
}

/** Shows the safe repairs and writes them when that is wanted; true when files changed. */
async function mended(
  practice: Practice,
  problems: readonly Diagnostic[],
  flags: Flags,
  io: Io,
  again: boolean,
): Promise<boolean> {
  const files = repairedFiles(problems, (file) => readDocument(practice.root, file).text);
  if (files.length === 0) {
    if (!again) io.say("Nothing here can be mended safely without you.\n\n");
    return false;
  }
  const talk = flags.json ? io.say : io.out;
  for (const { file, before, after } of files) talk(`${unifiedDiff(file, before, after)}\n`);
  const total = files.reduce((sum, file) => sum + file.repairs, 0);
  const named = `${total} ${total === 1 ? "repair" : "repairs"} in ${files.length} ${files.length === 1 ? "file" : "files"}`;
  if (!flags.yes && !(await agreed(`Write ${named}? [y/N] `, io))) {
    io.say(`\n${named} shown, nothing written. To write: waymark check --fix --yes\n\n`);
    return false;
  }
  for (const { file, after } of files as readonly RepairedFile[]) writeAtomically(join(practice.root, file), after);
  io.say(`\n${named} written; checked again:\n\n`);
  return true;
}

/** Asks on a terminal; anywhere else the answer is no. */
async function agreed(question: string, io: Io): Promise<boolean> {
  if (!io.terminal || process.stdin.isTTY !== true) return false;
  const prompt = createInterface({ input: process.stdin, output: process.stderr });
  try {
    return /^y(es)?$/i.test((await prompt.question(question)).trim());
  } finally {
    prompt.close();
  }
}
