import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Results } from "../../kernel/results.js";
import { readResults } from "../../results/read.js";
import { RESULTS } from "../build-client.js";
import { slashed, Unreadable } from "../files.js";
import { type Move, moved, movesText } from "../moved.js";
import { findPractice, openPractice, select } from "../practice.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark diff [PATH …]        what moved in results.yaml since the last commit, and why
waymark diff --from REV [PATH …]  … since a Git revision
waymark diff --against PRACTICE   … between another copy of the practice and this one
waymark diff --files OLD NEW      … between two results files

  --markdown   tables for a review
  --json       the moves as data

A cause is followed down to the session key, series, formula, choice or table where it began.
Exit code 0 whether or not something moved.
`;

interface Pair {
  readonly name: string;
  readonly before: Results | undefined;
  readonly after: Results | undefined;
}

export const verb: Verb = {
  help: HELP,
  options: {
    from: { type: "string" },
    against: { type: "string" },
    files: { type: "boolean" },
    markdown: { type: "boolean" },
    json: { type: "boolean" },
  },
  async run(words, flags, io) {
    const pairs = flags.files ? [betweenFiles(words)] : betweenPractices(words, flags, io.cwd);
    const found: { readonly visit: string; readonly state: string; readonly moves: readonly Move[] }[] = [];
    // One visit after the other: what did not move is not kept.
    for (const { name, before, after } of pairs) {
      const state = stateOf(before, after);
      const moves = before && after ? moved(before, after) : [];
      if (state !== "compared" || moves.length > 0) found.push({ visit: name, state, moves });
    }
    if (flags.json) {
      io.out(`${JSON.stringify(found, null, 2)}\n`);
      return 0;
    }
    const markdown = flags.markdown === true;
    const blocks = found.map(({ visit, state, moves }) => {
      if (state !== "compared") return `${markdown ? "### " : ""}${visit}: ${state}`;
      return `${markdown ? "### " : ""}${visit}\n${markdown ? "\n" : ""}${movesText(moves, markdown)}`;
    });
    io.out(blocks.length === 0 ? "No finding moved.\n" : `${blocks.join("\n\n")}\n`);
    return 0;
  },
};

const stateOf = (
  before: Results | undefined,
  after: Results | undefined,
): "compared" | "new" | "removed" | "not built" =>
  before && after ? "compared" : after ? "new" : before ? "removed" : "not built";

function betweenFiles(words: readonly string[]): Pair {
  const [old, now, ...rest] = words;
  if (old === undefined || now === undefined || rest.length > 0)
    throw new WrongUse("diff --files takes two results files");
  return { name: `${old} → ${now}`, before: parsed(old, textOf(old)), after: parsed(now, textOf(now)) };
}

/** Pairs whose texts differ; the others hold no finding that moved. */
function* betweenPractices(
  words: readonly string[],
  flags: Readonly<Record<string, unknown>>,
  cwd: string,
): Generator<Pair> {
  const practice = openPractice(findPractice(words[0] ?? cwd));
  const other = typeof flags.against === "string" ? findPractice(resolve(cwd, flags.against)) : undefined;
  const revision = typeof flags.from === "string" ? flags.from : "HEAD";
  const old =
    other === undefined
      ? committed(practice.root, revision)
      : { is: () => false, text: (file: string) => textOf(join(other, file)) };
  for (const path of select(practice, words, cwd)) {
    const file = `${path}/${RESULTS}`;
    const now = textOf(join(practice.root, file));
    if (now !== undefined && old.is(file, now)) continue;
    const before = old.text(file);
    if (before === now && now !== undefined) continue;
    yield { name: path, before: parsed(file, before), after: parsed(file, now) };
  }
}

const textOf = (path: string): string | undefined => (existsSync(path) ? readFileSync(path, "utf8") : undefined);

function parsed(name: string, text: string | undefined): Results | undefined {
  if (text === undefined) return undefined;
  try {
    return readResults(text);
  } catch (error) {
    throw new Unreadable(
      name,
      (error as Error).message.split("\n")[0] ?? "",
      "Build it again, or resolve the conflict in it.",
    );
  }
}

interface Committed {
  /** Is this the text at the revision? False where it cannot be told without reading. */
  is(file: string, text: string): boolean;
  text(file: string): string | undefined;
}

/** The files of a practice at a revision: listed once, read when asked for. */
function committed(root: string, revision: string): Committed {
  const git = (...given: string[]) => spawnSync("git", given, { cwd: root, encoding: "utf8", maxBuffer: 200_000_000 });
  if (git("rev-parse", "--show-toplevel").status !== 0)
    throw new Unreadable(
      root,
      "is not in a Git repository",
      "Compare with another copy: waymark diff --against PRACTICE.",
    );
  const known = git("rev-parse", "--verify", "--quiet", "--end-of-options", `${revision}^{commit}`);
  if (known.status !== 0) throw new WrongUse(`${revision} is not a Git revision of this repository`);
  const listed = git("ls-tree", "-r", "-z", known.stdout.trim(), "--", ".").stdout.split("\0");
  const blobs = new Map(
    listed.flatMap((line) => {
      const [, id, path] = /^\d+ blob ([0-9a-f]+)\t(.*)$/s.exec(line) ?? [];
      return id === undefined || path === undefined ? [] : [[path, id] as const];
    }),
  );
  return {
    is(file, text) {
      const bytes = Buffer.from(text, "utf8");
      const id = createHash("sha1").update(`blob ${bytes.length}\0`).update(bytes).digest("hex");
      return blobs.get(slashed(file)) === id;
    },
    text(file) {
      const id = blobs.get(slashed(file));
      return id === undefined ? undefined : git("cat-file", "blob", id).stdout;
    },
  };
}
