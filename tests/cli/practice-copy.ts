/** A throw-away copy of the example practice, and the program run as a user runs it. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const PROGRAM = resolve("dist/cli/main.js");
export const EXAMPLE = resolve("examples/skarn-point");

export interface Copy {
  readonly root: string;
  run(...words: string[]): { code: number | null; out: string; err: string };
  remove(): void;
}

/** Copies the example without what a build has written, unless `built` is asked for. */
export function copyPractice(only: readonly string[] = [], built = false): Copy {
  const root = join(mkdtempSync(join(tmpdir(), "practice-")), "practice");
  cpSync(EXAMPLE, root, {
    recursive: true,
    filter: (from) => {
      const path = from.slice(EXAMPLE.length + 1);
      if (path.startsWith(".waymark")) return false;
      if (!built && /(results\.yaml|index\.html|report.*\.(html|pdf))$/.test(path)) return false;
      const client = /^clients\/([^/]+)/.exec(path)?.[1];
      return only.length === 0 || client === undefined || only.includes(client);
    },
  });
  return {
    root,
    run(...words) {
      const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...words], {
        cwd: root,
        encoding: "utf8",
      });
      return { code: status, out: stdout, err: stderr };
    },
    remove: () => rmSync(join(root, ".."), { recursive: true, force: true }),
  };
}
