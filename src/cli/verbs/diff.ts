import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import type { Results } from "../../kernel/results.js";
import { readResults } from "../../results/read.js";
import { RESULTS } from "../build-client.js";
import { slashed, Unreadable } from "../files.js";
import { moved, movesText } from "../moved.js";
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
    const found = pairs.map((pair) => ({
      ...pair,
      moves: pair.before && pair.after ? moved(pair.before, pair.after) : [],
    }));
    if (flags.json) {
      const data = found.map(({ name, before, after, moves }) => ({
        visit: name,
        state: stateOf(before, after),
        moves,
      }));
      io.out(
        `${JSON.stringify(
          data.filter((d) => d.state !== "compared" || d.moves.length > 0),
          null,
          2,
        )}\n`,
      );
      return 0;
    }
    const markdown = flags.markdown === true;
    const blocks = found.flatMap(({ name, before, after, moves }) => {
      const state = stateOf(before, after);
      if (state !== "compared") return [`${markdown ? "### " : ""}${name}: ${state}`];
      if (moves.length === 0) return [];
      return [`${markdown ? "### " : ""}${name}\n${markdown ? "\n" : ""}${movesText(moves, markdown)}`];
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

function betweenPractices(words: readonly string[], flags: Readonly<Record<string, unknown>>, cwd: string): Pair[] {
  const practice = openPractice(findPractice(words[0] ?? cwd));
  const paths = [...select(practice, words, cwd)];
  const other = typeof flags.against === "string" ? findPractice(resolve(cwd, flags.against)) : undefined;
  const revision = typeof flags.from === "string" ? flags.from : "HEAD";
  const top = other === undefined ? gitTop(practice.root) : "";
  return paths.map((path) => {
    const file = `${path}/${RESULTS}`;
    const old =
      other === undefined
        ? gitText(practice.root, revision, slashed(relative(top, join(practice.root, file))))
        : textOf(join(other, file));
    return { name: path, before: parsed(file, old), after: parsed(file, textOf(join(practice.root, file))) };
  });
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

function gitTop(root: string): string {
  const { status, stdout } = spawnSync("git", ["rev-parse", "--show-toplevel"], { cwd: root, encoding: "utf8" });
  if (status !== 0)
    throw new Unreadable(
      root,
      "is not in a Git repository",
      "Compare with another copy: waymark diff --against PRACTICE.",
    );
  return stdout.trim();
}

function gitText(root: string, revision: string, path: string): string | undefined {
  if (revision.startsWith("-")) throw new WrongUse(`${revision} is not a Git revision`);
  const known = spawnSync("git", ["rev-parse", "--verify", "--quiet", `${revision}^{commit}`], { cwd: root });
  if (known.status !== 0) throw new WrongUse(`${revision} is not a Git revision of this repository`);
  const { status, stdout } = spawnSync("git", ["show", `${revision}:${path}`], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 50_000_000,
  });
  return status === 0 ? stdout : undefined;
}
