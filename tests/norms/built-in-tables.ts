/** The built-in tables and their texts, straight from the folder, in the order of their names. */
import { readdirSync, readFileSync } from "node:fs";
import { parse } from "yaml";
import type { ReferenceTable } from "../../src/kernel/generated/reference-table.js";

const FOLDER = "src/norms/tables";

export const builtInTableTexts = (): readonly { readonly file: string; readonly text: string }[] =>
  readdirSync(FOLDER)
    .filter((file) => file.endsWith(".yaml"))
    .sort()
    .map((file) => ({ file, text: readFileSync(`${FOLDER}/${file}`, "utf8") }));

export const builtInTables = (): readonly ReferenceTable[] =>
  builtInTableTexts().map(({ text }) => parse(text) as ReferenceTable);
