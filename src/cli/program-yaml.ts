/** YAML that the program brings along: tables, words, sentences. The tests prove each file against its schema or form. */
import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { plainYaml } from "../read/yaml-plain.js";
import { sha256 } from "./files.js";
import { parsedYaml } from "./parsed-yaml.js";

/** As read when the program was built; else by the quick reader where the file is plain, as all but a few are. */
export function programYaml<T>(path: string): T {
  const text = readFileSync(path, "utf8");
  const parsed = parsedYaml[sha256(text)];
  return (parsed === undefined ? (plainYaml(text) ?? parse(text)) : JSON.parse(parsed)) as T;
}
