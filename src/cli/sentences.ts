/** The sentences a language has for those of the results file: templates/words/<language>/*.yaml, one file a folder of src/. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import type { Sentences } from "../kernel/told.js";

/** Undefined for a language without any: English is the language of the record. */
export function sentencesOf(folder: string, language: string): Sentences | undefined {
  const path = join(folder, language);
  if (!existsSync(path)) return undefined;
  const files = readdirSync(path).filter((file) => file.endsWith(".yaml"));
  return Object.fromEntries(
    files.sort().flatMap((file) => {
      const text = readFileSync(join(path, file), "utf8");
      return quotedPairs(text, language) ?? parsedPairs(text, language);
    }),
  );
}

type Pair = readonly [english: string, told: string];

function parsedPairs(text: string, language: string): Pair[] {
  const { sentences } = parse(text) as { sentences: Record<string, string>[] | null };
  return (sentences ?? []).map((pair) => [pair.en as string, pair[language] as string]);
}

/** Pairs as they are written, two lines of quoted text each: the first German report of a run does not wait for a parser. */
export function quotedPairs(text: string, language: string): Pair[] | undefined {
  const head = "sentences:\n";
  if (!text.startsWith(head)) return undefined;
  const quoted = '"((?:[^"\\\\\\n]|\\\\["\\\\])*)"';
  const pair = new RegExp(`- en: ${quoted}\\n {2}${language}: ${quoted}\\n`, "y");
  const pairs: Pair[] = [];
  pair.lastIndex = head.length;
  while (pair.lastIndex < text.length) {
    const found = pair.exec(text);
    if (found === null) return undefined;
    pairs.push([unquoted(found[1] as string), unquoted(found[2] as string)]);
  }
  return pairs;
}
const unquoted = (text: string): string => (text.includes("\\") ? text.replace(/\\(.)/g, "$1") : text);
