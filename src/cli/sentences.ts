/** The sentences a language has for those of the results file: templates/words/<language>/*.yaml, one file a folder of src/. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import type { Sentences } from "../kernel/told.js";
import { plainYaml } from "../read/yaml-plain.js";

/** Undefined for a language without any: English is the language of the record. */
export function sentencesOf(folder: string, language: string): Sentences | undefined {
  const path = join(folder, language);
  if (!existsSync(path)) return undefined;
  const files = readdirSync(path).filter((file) => file.endsWith(".yaml"));
  return Object.fromEntries(
    files.sort().flatMap((file) => {
      const text = readFileSync(join(path, file), "utf8");
      const { sentences } = (plainYaml(text) ?? parse(text)) as { sentences: Record<string, string>[] | null };
      return (sentences ?? []).map((pair) => [pair.en as string, pair[language] as string]);
    }),
  );
}
