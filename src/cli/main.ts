/** Reads the command line, loads the one verb it names, and turns what goes wrong into an exit code. */
import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { nearest } from "../kernel/near.js";
import { Unreadable } from "./files.js";
import { type ExitCode, type Flags, type Verb, WrongUse } from "./verb.js";

const HELP = `waymark: laboratory visits in plain text become reports that can be rebuilt, checked and compared

  waymark new WHAT …               a practice, a client by pseudonym, or a visit to fill in
  waymark guide [BLOCK]            keys, units, ranges, how to measure, sources
  waymark import FILE --as KEY     learn how an instrument writes its files; tables into a session
  waymark check [PATH …]           say what is wrong in the files; --fix mends clear slips
  waymark watch [VISIT]            the report in a browser on this machine, anew at every save
  waymark build [PATH …]           write results.yaml and the reports of visits that changed
  waymark diff [PATH …]            what moved since the last commit, and why
  waymark explain VISIT MEASURE    follow one number back to its inputs and sources
  waymark norms [MEASURE]          the reference tables, for whom they hold, and why not
  waymark retests [MEASURE]        how much results vary here when nothing has changed
  waymark calendar VISIT           the signed plan as a calendar, RFC 5545
  waymark archive CLIENT …         one ZIP a client, with digests and what is needed to rebuild it
  waymark verify [PATH …]          compute again and compare with what is recorded
  waymark export --table|--fhir    recorded numbers for other programs
  waymark retention                whose records are past the time set in lab.yaml

A PATH is a practice, a client folder or a visit folder; without one, the practice you stand in.
waymark VERB --help tells the rest. waymark --version prints the version.
Exit codes: 0 fine, 1 problems in the files, 2 wrong command line, 3 a fault of this program.
`;

/** Loaded only when named, so that a check never waits for charts or a browser. */
const VERBS: Readonly<Record<string, () => Promise<{ verb: Verb }>>> = {
  archive: () => import("./verbs/archive.js"),
  build: () => import("./verbs/build.js"),
  calendar: () => import("./verbs/calendar.js"),
  check: () => import("./verbs/check.js"),
  diff: () => import("./verbs/diff.js"),
  explain: () => import("./verbs/explain.js"),
  export: () => import("./verbs/export.js"),
  guide: () => import("./verbs/guide.js"),
  import: () => import("./verbs/import.js"),
  new: () => import("./verbs/new.js"),
  norms: () => import("./verbs/norms.js"),
  retests: () => import("./verbs/retests.js"),
  retention: () => import("./verbs/retention.js"),
  verify: () => import("./verbs/verify.js"),
  watch: () => import("./verbs/watch.js"),
};

async function main(words: readonly string[]): Promise<ExitCode> {
  const [name, ...rest] = words;
  if (name === undefined || name === "--help" || name === "-h" || name === "help") {
    process.stdout.write(HELP);
    return name === undefined ? 2 : 0;
  }
  if (name === "--version") {
    const manifest = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
      version: string;
    };
    process.stdout.write(`${manifest.version}\n`);
    return 0;
  }
  const load = Object.hasOwn(VERBS, name) ? VERBS[name] : undefined;
  if (load === undefined) throw new WrongUse(`there is no verb "${name}"; there are ${Object.keys(VERBS).join(", ")}`);
  const { verb } = await load();
  if (rest.includes("--help") || rest.includes("-h")) {
    process.stdout.write(verb.help);
    return 0;
  }
  const { positionals, values } = parse(rest, verb);
  return verb.run(positionals, values as Flags, {
    cwd: process.cwd(),
    out: (text) => void process.stdout.write(text),
    say: (text) => void process.stderr.write(text),
    terminal: process.stderr.isTTY === true,
  });
}

function parse(args: readonly string[], verb: Verb) {
  try {
    return parseArgs({
      args: [...args],
      options: { ...verb.options, debug: { type: "boolean" } },
      allowPositionals: true,
    });
  } catch (error) {
    throw new WrongUse(unknownOption(error as Error, Object.keys(verb.options)) ?? (error as Error).message);
  }
}

/** The library's own sentence for an option that is not known speaks of positional arguments. */
function unknownOption(error: Error, known: readonly string[]): string | undefined {
  const option = /^Unknown option '-+([^']*)'/.exec(error.message)?.[1];
  if (option === undefined) return undefined;
  const near = nearest(option, known);
  return `there is no option --${option}${near ? `; did you mean --${near}?` : ""}`;
}

// Who reads no further (waymark guide lungs | head) has seen enough: that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});

main(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    if (error instanceof WrongUse) {
      process.stderr.write(
        `waymark: ${error.message}\nTry: waymark ${Object.hasOwn(VERBS, process.argv[2] ?? "") ? `${process.argv[2]} ` : ""}--help\n`,
      );
      process.exitCode = 2;
    } else if (error instanceof Unreadable) {
      process.stderr.write(`waymark: ${error.message}\n`);
      process.exitCode = 1;
    } else {
      const debug = process.argv.includes("--debug");
      process.stderr.write(
        `waymark: a fault of this program, not of your files: ${debug ? ((error as Error).stack ?? String(error)) : String(error)}\n`,
      );
      if (!debug)
        process.stderr.write("Nothing was half-written. Run it again with --debug and report what it prints.\n");
      process.exitCode = 3;
    }
  },
);
