/** Files of a laboratory's own that lie where they belong and that lab.yaml does not name: nothing would be said of them. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import { list } from "./files.js";

/** Warnings, one a file, in the order of folders and names. */
export function filesNotNamed(root: string, laboratory: Laboratory): readonly Diagnostic[] {
  const folders = [
    { key: "norms", ending: /\.ya?ml$/, named: laboratory.norms ?? [] },
    { key: "profiles", ending: /\.ya?ml$/, named: laboratory.profiles ?? [] },
    { key: "retests", ending: /\.csv$/, named: (laboratory.retests ?? []).map(({ file }) => file) },
  ];
  return folders.flatMap(({ key, ending, named }) => {
    const known = named.map((file) => file.replace(/^\.\//, ""));
    return list(root, key)
      .filter(({ name, folder }) => !folder && ending.test(name) && !known.includes(`${key}/${name}`))
      .map(({ name }) => ({
        code: "file-not-named",
        severity: "warning",
        at: { file: `${key}/${name}`, line: 1, column: 1, length: 1 },
        found: "a file that lab.yaml does not name",
        expected: `${key}/${name} under ${key}: in lab.yaml`,
        why: "what is not named there is not used",
        fix: `name it under ${key}: in lab.yaml, or move it out of ${key}/`,
      }));
  });
}
