/** Loads what the program brings to every visit: schemas, rules, tables. Each part only when asked for. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Checker, openChecker, type Schemas } from "../validate/checker.js";
import { PROGRAM } from "./freshness.js";

export function loadSchemas(): Schemas {
  const folder = join(PROGRAM, "schema");
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".schema.json"))
    .sort()
    .map((file) => JSON.parse(readFileSync(join(folder, file), "utf8")) as Record<string, unknown>);
}

export const loadChecker = (): Promise<Checker> => openChecker(loadSchemas());
