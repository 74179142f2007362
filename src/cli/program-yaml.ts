/** YAML that the program brings along: tables, words, sentences. The tests prove each file against its schema or form. */
import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { plainYaml } from "../read/yaml-plain.js";

/** By the quick reader where the file is plain, as all but a few are. */
export function programYaml<T>(path: string): T {
  const text = readFileSync(path, "utf8");
  return (plainYaml(text) ?? parse(text)) as T;
}
