/** The files with which a practice changes its reports, read within limits. Loads nothing that renders. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { type FileBytes, list, readFile, Unreadable } from "./files.js";
import type { Practice } from "./practice.js";

/** Folder of a practice, with partials/*.hbs, words/*.yaml and theme.css. */
export const OVERRIDES = "report";
export const OVERRIDE_FOLDERS = [OVERRIDES, `${OVERRIDES}/partials`, `${OVERRIDES}/words`] as const;

/** Bytes. Ours are 1 kB, 30 kB and 12 kB; a style may carry a font or a picture. */
const LARGEST = { partial: 100_000, words: 300_000, theme: 2_000_000 } as const;
/** Ours are 23 partials and two languages. */
const MOST_FILES = 60;

export const ownPartials = (practice: Practice): readonly FileBytes[] =>
  own(practice, "partials", /\.hbs$/, LARGEST.partial);

export const ownWords = (practice: Practice): readonly FileBytes[] => own(practice, "words", /\.yaml$/, LARGEST.words);

export function ownTheme({ root }: Practice): FileBytes | undefined {
  const path = `${OVERRIDES}/theme.css`;
  return existsSync(join(root, path)) ? readFile(root, path, LARGEST.theme) : undefined;
}

/** Every one of them: a change of one makes all reports stale. */
export function overrideFiles(practice: Practice): readonly FileBytes[] {
  const theme = ownTheme(practice);
  return [...ownPartials(practice), ...ownWords(practice), ...(theme === undefined ? [] : [theme])];
}

function own({ root }: Practice, kind: string, ending: RegExp, largest: number): readonly FileBytes[] {
  const folder = `${OVERRIDES}/${kind}`;
  const names = list(root, folder).filter((entry) => !entry.folder && ending.test(entry.name));
  if (names.length > MOST_FILES)
    throw new Unreadable(folder, `holds ${names.length} files`, `There are fewer than ${MOST_FILES} to replace.`);
  return names.map(({ name }) => readFile(root, `${folder}/${name}`, largest));
}
