import { listTables, type TableListing } from "../../norms/list-tables.js";
import { personOf } from "../../norms/person.js";
import { computeVisitOf } from "../build-client.js";
import { readDocument } from "../check-practice.js";
import { Unreadable } from "../files.js";
import { findPractice, openPractice, select } from "../practice.js";
import { builtInTables, openReference } from "../reference.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark norms [MEASURE]             the reference tables there are, for whom, and their sources
waymark norms --for VISIT [MEASURE]  … which of them apply to the client at that visit, and why others do not

  MEASURE   an id of results.yaml, such as vo2_peak_per_mass
  --json    the list as data

Inside a practice the laboratory's own tables are listed too. "from memory" means a table recalled with
high confidence and still to be checked against its source; reports say so wherever they use it.
`;

export const verb: Verb = {
  help: HELP,
  options: { for: { type: "string" }, json: { type: "boolean" } },
  async run(words, flags, io) {
    if (words.length > 1) throw new WrongUse("norms takes one measure at most");
    const listing =
      typeof flags.for === "string" ? await listFor(flags.for, io.cwd) : listTables(await tablesHere(io.cwd));
    const wanted = listing.filter((table) => words[0] === undefined || table.measure === words[0]);
    if (wanted.length === 0)
      throw new Unreadable(words[0] ?? "", "has no reference table", "waymark norms lists the measures that have one.");
    io.out(flags.json ? `${JSON.stringify(wanted, null, 2)}\n` : `${wanted.map(shown).join("\n\n")}\n`);
    return 0;
  },
};

async function tablesHere(cwd: string) {
  try {
    const root = findPractice(cwd);
    return (await openReference(openPractice(root), readDocument(root, "lab.yaml"))).reference.tables;
  } catch (error) {
    if (error instanceof Unreadable) return builtInTables();
    throw error;
  }
}

async function listFor(path: string, cwd: string): Promise<readonly TableListing[]> {
  const practice = openPractice(findPractice(cwd));
  const paths = [...select(practice, [path], cwd)];
  if (paths.length !== 1) throw new WrongUse(`${path} names ${paths.length} visits; --for takes one`);
  const lab = readDocument(practice.root, "lab.yaml");
  const { reference } = await openReference(practice, lab);
  const outcome = computeVisitOf({ practice, lab, reference }, paths[0] as string);
  if (outcome.visit === undefined || outcome.results === undefined)
    throw new Unreadable(paths[0] as string, "cannot be computed", "waymark check says why.");
  return listTables(reference.tables, personOf(outcome.visit, outcome.results.entries), outcome.visit.choices);
}

function shown(table: TableListing): string {
  const state =
    table.refusals === undefined
      ? []
      : [
          table.refusals.length > 0
            ? `  does not apply: ${table.refusals.join("; ")}`
            : table.chosen === false
              ? `  applies, but another reference is chosen (${table.choice})`
              : "  applies",
        ];
  return [
    `${table.id}  ${table.title}`,
    ...state,
    `  of ${table.measure} (${table.unit}), for ${table.covers}`,
    `  ${table.population}`,
    `  ${table.source}${table.verified === "memory" ? " (from memory, to be checked against the source)" : ""}`,
    ...(table.choice === "" ? [] : [`  used with ${table.choice}`]),
  ].join("\n");
}
