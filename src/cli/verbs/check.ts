import { checkPractice, readDocument, sourceText } from "../check-practice.js";
import { drawDiagnostics, drawSummary, listDiagnostics } from "../draw-diagnostic.js";
import { findPractice, openPractice, select } from "../practice.js";
import { openReference } from "../reference.js";
import type { Verb } from "../verb.js";

const HELP = `waymark check [PATH …]  say what is wrong in the files, change nothing

  PATH      a practice, a client folder or a visit folder; without one, the practice you stand in
  --json    a list of problems on stdout: file, line, column, endColumn, severity, code, message,
            found, expected, why, fix (1-based; endColumn is the column after the last one marked)

Errors cannot be right and stop a build. Warnings are unusual and stay in the report until the file
says confirmed: and why. Exit code 1 when there is an error, 0 otherwise.
`;

export const verb: Verb = {
  help: HELP,
  options: { json: { type: "boolean" } },
  async run(words, flags, io) {
    const practice = openPractice(findPractice(words[0] ?? io.cwd));
    const chosen = select(practice, words, io.cwd);
    const lab = readDocument(practice.root, "lab.yaml");
    const { reference, diagnostics } = await openReference(practice, lab);
    const problems = [...diagnostics, ...checkPractice(practice, lab, chosen, reference.checker)];
    if (flags.json) io.out(`${JSON.stringify(listDiagnostics(problems), null, 2)}\n`);
    else {
      if (problems.length > 0) io.say(`${drawDiagnostics(problems, sourceText(practice))}\n\n`);
      io.say(`${drawSummary(problems)} ${chosen.size} ${chosen.size === 1 ? "visit" : "visits"} read.\n`);
    }
    return problems.some((problem) => problem.severity === "error") ? 1 : 0;
  },
};
