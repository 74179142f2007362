/**
 * The built-in reference tables, read from src/norms/tables/ beside the program. They are the program's own data and
 * hold to the schema by test; a laboratory's tables come through the practice's reading and checking instead.
 */
import { readdirSync, readFileSync } from "node:fs";
import { parse } from "yaml";
import type { ReferenceTable } from "../kernel/generated/reference-table.js";

/** One level up from src/read/ and dist/read/ alike, the data stand in src/norms/tables/. */
export const TABLES = new URL("../../src/norms/tables/", import.meta.url);

/** The texts of the built-in tables by file name, in the order of their names. */
export const builtInTableTexts = (): readonly { readonly file: string; readonly text: string }[] =>
  readdirSync(TABLES)
    .filter((file) => file.endsWith(".yaml"))
    .sort()
    .map((file) => ({ file, text: readFileSync(new URL(file, TABLES), "utf8") }));

let tables: readonly ReferenceTable[] | undefined;

/** The built-in tables, read once. */
export function builtInTables(): readonly ReferenceTable[] {
  tables ??= builtInTableTexts().map(({ text }) => parse(text, { schema: "core" }) as ReferenceTable);
  return tables;
}
