/** Which visits a change since a Git revision can touch: their own files, their client's, or what the laboratory shares. */
import { spawnSync } from "node:child_process";
import { Unreadable } from "./files.js";
import type { Practice } from "./practice.js";
import { WrongUse } from "./verb.js";

export function changedSince(practice: Practice, revision: string): ReadonlySet<string> {
  const git = (...words: string[]): string => {
    const { status, stdout } = spawnSync("git", ["-c", "core.quotePath=false", ...words], {
      cwd: practice.root,
      encoding: "utf8",
      maxBuffer: 50_000_000,
    });
    if (status !== 0 || stdout === null)
      throw new Unreadable(".", "is not in a Git repository", "Without --since, a build finds what changed by itself.");
    return stdout;
  };
  git("rev-parse", "--show-toplevel");
  const known = spawnSync("git", ["rev-parse", "--verify", "--quiet", "--end-of-options", `${revision}^{commit}`], {
    cwd: practice.root,
    encoding: "utf8",
  });
  if (known.status !== 0) throw new WrongUse(`${revision} is not a Git revision of this repository`);
  const commit = known.stdout.trim();
  const changed = git("diff", "--name-only", "--relative", "-z", commit, "--", ".");
  const added = git("ls-files", "--others", "--exclude-standard", "-z", "--", ".");
  return touched(
    practice,
    `${changed}${added}`.split("\0").filter((path) => path !== ""),
  );
}

/** A visit's own change reaches the client's later visits, which are compared with it. */
export function touched(practice: Practice, paths: readonly string[]): ReadonlySet<string> {
  const inputs = paths.filter((path) => !/(^|\/)(report[^/]*\.(html|pdf)|index\.html)$/.test(path));
  const shared = inputs.some((path) => path === "lab.yaml" || /^(norms|profiles|report|retests)\//.test(path));
  const found = new Set<string>();
  for (const client of practice.clients) {
    let reached = shared || inputs.some((path) => path === `${client.path}/client.yaml`);
    for (const visit of client.visits) {
      reached ||= inputs.some((path) => path.startsWith(`${visit.path}/`));
      if (reached) found.add(visit.path);
    }
  }
  return found;
}
