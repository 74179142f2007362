/** The sentences a language has for those of the results file: templates/words/<language>/*.yaml, one file a folder of src/. */
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { Sentences } from "../kernel/told.js";
import { programYaml } from "./program-yaml.js";

interface Pairs {
  /** The English sentence under `en`, the other under the language's own tag. */
  readonly sentences: readonly Readonly<Record<string, string>>[] | null;
}

/** Undefined for a language without any: English is the language of the record. */
export function sentencesOf(folder: string, language: string): Sentences | undefined {
  const path = join(folder, language);
  if (!existsSync(path)) return undefined;
  const files = readdirSync(path).filter((file) => file.endsWith(".yaml"));
  const pairs = files.sort().flatMap((file) => programYaml<Pairs>(join(path, file)).sentences ?? []);
  return Object.fromEntries(pairs.map((pair) => [pair.en as string, pair[language] as string]));
}
