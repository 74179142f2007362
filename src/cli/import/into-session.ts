/** Puts keys into a block of a session file as text, at the end of the block or of the file; nothing else is touched. */
import { isMap, isScalar, type Pair, parseDocument } from "yaml";
import { Unreadable } from "../files.js";
import { flow } from "./lab-entry.js";

export const blockText = (block: string, keys: Readonly<Record<string, unknown>>): string =>
  `${block}:\n${keyLines(keys)}`;

function keyLines(keys: Readonly<Record<string, unknown>>): string {
  return Object.entries(keys)
    .map(([key, value]) =>
      Array.isArray(value) && typeof value[0] === "object"
        ? `  ${key}:\n${value.map((item) => `    - ${flow(item)}\n`).join("")}`
        : `  ${key}: ${flow(value)}\n`,
    )
    .join("");
}

/** Throws Unreadable when a key is there already: a measured value is never overwritten by an import. */
export function withBlock(path: string, text: string, block: string, keys: Readonly<Record<string, unknown>>): string {
  const document = parseDocument(text);
  if (document.errors.length > 0 || !isMap(document.contents))
    throw new Unreadable(path, "cannot be read as YAML", "waymark check says what is wrong with it.");
  const pair = (document.contents.items as Pair[]).find((p) => isScalar(p.key) && p.key.value === block);
  if (pair === undefined) return `${text.replace(/\n*$/, "\n")}\n${blockText(block, keys)}`;
  const there = isMap(pair.value) ? pair.value : undefined;
  if (there?.flow)
    throw new Unreadable(
      path,
      `writes ${block} in braces on one line`,
      "Write it with one key a line, then import again.",
    );
  const taken = Object.keys(keys).filter((key) => there?.has(key));
  if (taken.length > 0)
    throw new Unreadable(path, `holds ${block}.${taken.join(", ")} already`, "Delete it there if the file is right.");
  const range = (there ?? (pair.key as typeof there))?.range;
  const end = text.slice(0, range?.[1]).trimEnd().length;
  const lineEnd = text.indexOf("\n", end);
  const at = lineEnd < 0 ? text.length : lineEnd + 1;
  return `${text.slice(0, at)}${text[at - 1] === "\n" ? "" : "\n"}${keyLines(keys)}${text.slice(at)}`;
}
