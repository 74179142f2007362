import { formulas } from "../../formulas.generated.js";
import { nearest } from "../../kernel/near.js";
import { readYaml } from "../../read/yaml.js";
import { recorded } from "../build-client.js";
import { chainOf, chainText } from "../chain.js";
import { chainPage } from "../chain-page.js";
import { type Documents, withPlaces } from "../chain-places.js";
import { Unreadable } from "../files.js";
import {
  findPractice,
  openPractice,
  type Practice,
  readIfThere,
  SESSION,
  select,
  type VisitFolder,
} from "../practice.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark explain VISIT MEASURE  follow one number back to its inputs and sources

  VISIT     a visit folder, or c-017/2026-03-02-baseline
  MEASURE   an id of results.yaml, such as vo2_peak_per_mass
  --json    the chain as data
  --html    the chain as a page of its own

Prints value, formula with equation and source, inputs down to the keys of the session file with file and
line, error, reference tables and remarks. Reads results.yaml: build first.
`;

export const verb: Verb = {
  help: HELP,
  options: { json: { type: "boolean" }, html: { type: "boolean" } },
  async run(words, flags, io) {
    const [path, measure, ...rest] = words;
    if (path === undefined || measure === undefined || rest.length > 0)
      throw new WrongUse("explain takes a visit and a measure");
    const practice = openPractice(findPractice(io.cwd));
    const paths = [...select(practice, [path], io.cwd)];
    if (paths.length > 1) throw new WrongUse(`${path} names ${paths.length} visits; explain takes one`);
    const visit = practice.clients.flatMap((c) => c.visits).find((v) => v.path === paths[0]);
    const results = visit && recorded(practice, visit);
    if (visit === undefined || results === undefined)
      throw new Unreadable(`${paths[0]}/results.yaml`, "is not there or cannot be read", "Run waymark build first.");
    const chain = chainOf(results, measure, formulas);
    if (chain === undefined) {
      const near = nearest(
        measure,
        results.entries.map((entry) => entry.id),
      );
      throw new Unreadable(
        `${visit.path}/results.yaml`,
        `has no entry ${measure}`,
        near ? `Did you mean ${near}?` : "The file lists them.",
      );
    }
    const link = withPlaces(chain, documentsOf(practice, visit));
    if (flags.html) {
      io.out(chainPage(link, visit.path));
      return 0;
    }
    io.out(flags.json ? `${JSON.stringify(link, null, 2)}\n` : `${chainText(link)}\n`);
    return 0;
  },
};

/** The files a chain ends in, as they are now. */
function documentsOf(practice: Practice, visit: VisitFolder): Documents {
  const read = (path: string) => {
    const file = readIfThere(practice, path);
    return file && readYaml(file.path, file.bytes);
  };
  return {
    "session.yaml": read(`${visit.path}/${SESSION}`),
    "client.yaml": read(`clients/${visit.client}/client.yaml`),
    "lab.yaml": read("lab.yaml"),
  };
}
