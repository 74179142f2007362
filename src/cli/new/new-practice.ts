/** Makes a practice folder, or renews the schema copies of one that is there. Never overwrites a file of the user. */
import { spawnSync } from "node:child_process";
import { chmodSync, cpSync, existsSync, mkdirSync, rmSync, statSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { Unreadable, writeAtomically } from "../files.js";
import { PROGRAM } from "../freshness.js";
import type { Io } from "../verb.js";
import { EDITOR, GIT_ATTRIBUTES, GIT_IGNORE, hook, LAB, README, SCHEMA_FOLDER, YAML_HUNK } from "./practice-files.js";

const FILES: Readonly<Record<string, string>> = {
  "lab.yaml": LAB,
  "README.md": README,
  ".gitattributes": GIT_ATTRIBUTES,
  ".gitignore": GIT_IGNORE,
  ".vscode/settings.json": EDITOR,
};

export function newPractice(folder: string, io: Io): void {
  const root = resolve(io.cwd, folder);
  const there = statSync(root, { throwIfNoEntry: false });
  if (there && !there.isDirectory()) throw new Unreadable(folder, "is a file", "Give the name of a folder.");
  if (existsSync(join(root, "lab.yaml"))) {
    copySchemas(root);
    io.out(`${folder} is a practice already. Its ${SCHEMA_FOLDER} was renewed; nothing else was touched.\n`);
    return;
  }
  make(root, folder);
  copySchemas(root);
  const wrote = Object.entries(FILES).filter(([file, text]) => writeNew(join(root, file), text));
  const git = makeRepository(root);
  const shown = relative(io.cwd, root) || ".";
  io.out(
    [
      `A practice in ${shown}:`,
      ...wrote.map(([file]) => `  ${file}`),
      `  ${SCHEMA_FOLDER}/   so that an editor completes and checks as you type, offline`,
      "  clients/",
      ...git.map((line) => `  ${line}`),
      "",
      "Next:",
      ...(shown === "." ? [] : [`  cd ${/^[\w./~-]+$/.test(shown) ? shown : JSON.stringify(shown)}`]),
      "  edit lab.yaml           name, altitude, instruments",
      "  waymark new client      the first client, by pseudonym",
      "",
    ].join("\n"),
  );
}

function make(root: string, folder: string): void {
  try {
    for (const part of [root, join(root, "clients"), join(root, ".vscode")]) mkdirSync(part, { recursive: true });
  } catch (error) {
    throw new Unreadable(folder, `cannot be made (${(error as NodeJS.ErrnoException).code})`, "Choose another place.");
  }
}

function writeNew(path: string, text: string): boolean {
  if (existsSync(path)) return false;
  writeAtomically(path, text);
  return true;
}

/** Copies, because a practice outlives the program's folder and goes to other machines. */
function copySchemas(root: string): void {
  const target = join(root, SCHEMA_FOLDER);
  rmSync(target, { recursive: true, force: true });
  cpSync(join(PROGRAM, "schema"), target, { recursive: true });
}

/** A Git repository with the check before each commit; says what was done. Inside another repository none is made. */
function makeRepository(root: string): string[] {
  const git = (...words: string[]) => spawnSync("git", words, { cwd: root, encoding: "utf8" });
  if (git("--version").status !== 0) return ["no Git found: the folder works without; install Git to keep its history"];
  if (git("rev-parse", "--is-inside-work-tree").stdout?.trim() === "true")
    return ["inside a Git repository already: no further one was made, and no check before commits was set up"];
  if (git("init", "--quiet", "--initial-branch=main").status !== 0 && git("init", "--quiet").status !== 0)
    return ["Git could not make a repository here; run git init to see why"];
  git("config", "diff.yaml.xfuncname", YAML_HUNK);
  const path = join(root, ".git", "hooks", "pre-commit");
  mkdirSync(join(root, ".git", "hooks"), { recursive: true });
  writeAtomically(path, hook(process.execPath, join(PROGRAM, "dist", "cli", "main.js")));
  chmodSync(path, 0o755);
  return [".git/   a repository; a commit is stopped while a file holds an error"];
}
