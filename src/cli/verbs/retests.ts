import { resolve } from "node:path";
import type { Laboratory } from "../../kernel/generated/laboratory.js";
import { speechOf } from "../../kernel/speech.js";
import { readDocument, sourceText } from "../check-practice.js";
import { drawDiagnostics, drawSummary } from "../draw-diagnostic.js";
import { Unreadable, writeAtomically } from "../files.js";
import { type OwnRetests, ownRetests } from "../own-retests.js";
import { findPractice, openPractice, type Practice } from "../practice.js";
import { dressed, wordsOf } from "../press.js";
import { asProblem } from "../report-overrides.js";
import { retestFacts, retestOrigin } from "../retest-facts.js";
import { flagsOf, retestPage } from "../retest-page.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark retests [MEASURE]  how much results vary in this laboratory when nothing has changed

  MEASURE      an id of results.yaml, such as vo2_peak; without one, every measure with pairs
  --html FILE  write the same as a page, with a plot of differences against means for each measure
  --json       the numbers as data

Pairs come from the files that lab.yaml names under retests, and from visits with the purpose reliability
whose label holds the word ("2026-03-05-reliability"). Given are the typical error (raw and in percent),
intraclass correlations, mean shift, limits of agreement, detectable change, least significant change, how
many pairs are needed, and what to look at: pairs that look like a slip of the pen, a shift that looks like
learning, fewer than ten pairs. Exit code 1 when a file is faulty: a faulty file counts for nothing.
`;

export const verb: Verb = {
  help: HELP,
  options: { html: { type: "string" }, json: { type: "boolean" } },
  async run(words, flags, io) {
    if (words.length > 1) throw new WrongUse("retests takes one measure at most");
    const practice = openPractice(findPractice(io.cwd));
    const lab = readDocument(practice.root, "lab.yaml");
    const { sets, diagnostics } = await ownRetests(practice, lab);
    const wanted = sets.filter(({ set }) => words[0] === undefined || set.measure === words[0]);
    if (diagnostics.length > 0)
      io.say(`${drawDiagnostics(diagnostics, sourceText(practice))}\n\n${drawSummary(diagnostics)}\n`);
    const faulty = diagnostics.some((diagnostic) => diagnostic.severity === "error");
    if (words[0] !== undefined && wanted.length === 0 && !faulty)
      throw new Unreadable(
        words[0],
        "has no test-retest pairs here",
        "waymark retests lists the measures that have some.",
      );
    if (typeof flags.html === "string") {
      const laboratory = (lab.value ?? { waymark: "laboratory 1", name: "" }) as Laboratory;
      const page = await pageOf(practice, wanted, laboratory);
      writeAtomically(resolve(io.cwd, flags.html), page);
      io.say(`wrote ${flags.html}\n`);
    }
    if (flags.json) io.out(`${JSON.stringify(wanted.map(asData), null, 2)}\n`);
    else if (typeof flags.html !== "string") io.out(`${asText(wanted)}\n`);
    return faulty ? 1 : 0;
  },
};

/** The page in the practice's own dress; a fault of that is a fault of its files. */
async function pageOf(practice: Practice, sets: readonly OwnRetests[], laboratory: Laboratory): Promise<string> {
  try {
    return await retestPage(sets, laboratory, dressed(practice, laboratory.language));
  } catch (error) {
    throw asProblem(error, practice);
  }
}

const asData = ({ set, title, unit, decimals, report, because }: OwnRetests) => ({
  ...set,
  title,
  unit,
  decimals,
  ...(report === undefined ? { not_given: because } : report),
});

function asText(sets: readonly OwnRetests[]): string {
  const speech = speechOf(wordsOf("en"));
  if (sets.length === 0) return speech.say("retests.none");
  return sets
    .map((own) => {
      const facts = retestFacts(own, speech);
      const width = Math.max(0, ...facts.map(({ name }) => name.length));
      const flags = flagsOf(
        own,
        (because) => speech.say("retests.cannot", { because }),
        speech.say("retests.no_flags"),
      );
      return [
        `${own.set.measure}  ${own.title}`,
        `  ${retestOrigin(own, speech)}`,
        ...facts.map(({ name, value }) => `  ${name.padEnd(width)}  ${value}`),
        `  ${speech.say("retests.flags")}`,
        ...flags.map((flag) => `    ${flag}`),
      ].join("\n");
    })
    .join("\n\n");
}
