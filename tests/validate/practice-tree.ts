/** Validates a small practice held in memory, file by path, the way the program does with a folder. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Diagnostic } from "../../src/kernel/diagnostic.js";
import { readSeries } from "../../src/read/series.js";
import { readTrainingLog } from "../../src/read/training-log.js";
import { readYaml } from "../../src/read/yaml.js";
import { openChecker } from "../../src/validate/checker.js";
import { practiceMember, validatePractice } from "../../src/validate/practice.js";
import { seriesFiles } from "../../src/validate/references.js";
import { type Validation, validateVisit } from "../../src/validate/visit.js";

export type Tree = ReadonlyMap<string, Uint8Array>;

export const schemas: Record<string, unknown>[] = readdirSync("schema", { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".schema.json"))
  .sort()
  .map((file) => JSON.parse(readFileSync(join("schema", file), "utf8")));

export function readTree(folder: string): Map<string, Uint8Array> {
  const tree = new Map<string, Uint8Array>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true }).sort((a, b) =>
    join(a.parentPath, a.name) < join(b.parentPath, b.name) ? -1 : 1,
  ))
    if (entry.isFile()) {
      const full = join(entry.parentPath, entry.name);
      tree.set(full.slice(folder.length + 1), readFileSync(full));
    }
  return tree;
}

export async function validateTree(
  tree: Tree,
): Promise<{ readonly validations: readonly Validation[]; readonly diagnostics: readonly Diagnostic[] }> {
  const checker = await openChecker(schemas);
  const document = (path: string) => readYaml(path, tree.get(path) ?? new Uint8Array());
  const lab = document("lab.yaml");
  const validations: Validation[] = [];
  const members = [];
  for (const path of [...tree.keys()].filter((p) => p.endsWith("/session.yaml"))) {
    const folder = path.slice(0, -"/session.yaml".length);
    const clientPath = `${folder.split("/").slice(0, -1).join("/")}/client.yaml`;
    const client = tree.has(clientPath) ? document(clientPath) : undefined;
    const session = document(path);
    const seriesTexts = Object.fromEntries(
      seriesFiles(session.value).map((name) => [name, tree.get(`${folder}/${name}`)]),
    );
    const names = [...tree.keys()].filter((p) => p.startsWith(`${folder}/`)).map((p) => p.slice(folder.length + 1));
    validations.push(
      validateVisit({ lab, client, session, seriesTexts, folder: names }, checker, readSeries, readTrainingLog),
    );
    const member = practiceMember(session);
    if (member) members.push(member);
  }
  const seen = new Set<string>();
  const diagnostics = [...validations.flatMap((v) => v.diagnostics), ...validatePractice(members)].filter((d) => {
    const key = JSON.stringify(d);
    return !seen.has(key) && seen.add(key);
  });
  return { validations, diagnostics };
}
