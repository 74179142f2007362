/**
 * YAML text to a document that remembers where everything stands. YAML 1.2 core schema: `no` is a word, dates are
 * text, 08:30 is text. The text may come from anybody, so size, nesting, aliases, hidden characters and dangerous
 * keys are bounded here and answered with a message, never with a crash.
 */
import { type Alias, isAlias, isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument } from "yaml";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import { BYTE_ORDER_MARK, decodeStrictly } from "./decode.js";
import { hiddenCharacters } from "./hidden-characters.js";
import { quote, type Words, words } from "./words.js";
import { type Fault, syntaxFaults } from "./yaml-faults.js";
import { finder, nowhere, type Placer, placer, spanOf } from "./yaml-places.js";
import { plainYaml } from "./yaml-plain.js";

export const YAML_LIMITS = { characters: 1_048_576, nesting: 60, aliases: 100, faults: 20 } as const;

const DANGEROUS = new Set(["__proto__", "constructor", "prototype"]);

/** Reads one YAML file. `file` is its path in the practice folder; bytes must be UTF-8. Never throws for bad text. */
export function readYaml(file: string, content: string | Uint8Array): Document {
  if (content.length > YAML_LIMITS.characters)
    return unreadable(file, "", "file-too-large", words.tooLarge(content.length, YAML_LIMITS.characters));
  let text: string;
  if (typeof content === "string") text = content;
  else {
    const decoded = decodeStrictly(content);
    if ("fault" in decoded)
      return unreadable(file, "", "file-encoding", decoded.fault === "utf-16" ? words.utf16() : words.notUtf8());
    text = decoded.text;
  }
  if (text.replace(BYTE_ORDER_MARK, "").trim() === "") return unreadable(file, text, "file-empty", words.emptyFile());
  const hidden = hiddenCharacters(text, YAML_LIMITS.faults).map(
    ({ at: start, code, kind }): Fault => ({
      span: { start, end: start + 1 },
      code: "hidden-character",
      words: words.hidden(code, kind),
    }),
  );
  if (hidden.length > 0) return withFaults(file, text, hidden, placer(file, text, linesOf(text)));
  const value = plainYaml(text);
  return value === undefined ? parseOrSay(file, text) : located(file, text, value);
}

/** A document whose places are looked for when the first is asked: a file without faults never asks. */
function located(file: string, text: string, value: unknown): Document {
  let parsed: Document | undefined;
  const whole = () => {
    parsed ??= parse(file, text, false);
    return parsed;
  };
  return {
    file,
    text,
    value,
    diagnostics: [],
    place: (path, part) => whole().place(path, part),
    span: (path, part) => whole().span(path, part),
    written: (path) => whole().written(path),
  };
}

function parseOrSay(file: string, text: string): Document {
  try {
    return parse(file, text);
  } catch (error) {
    // The parser recurses, so deep nesting can end in a RangeError; an alias bomb ends in a ReferenceError.
    if (error instanceof ReferenceError) return unreadable(file, text, "yaml-alias", words.alias("too many aliases"));
    if (error instanceof RangeError) return unreadable(file, text, "yaml-nesting", words.nesting(YAML_LIMITS.nesting));
    throw error;
  }
}

/** A hundred times the aliases that are allowed, counted by their sign: reading them all would take seconds. */
function holdsMasses(text: string): boolean {
  let left = 100 * YAML_LIMITS.aliases;
  for (const sign of [" *", ",*"])
    for (let at = text.indexOf(sign); at >= 0 && left > 0; at = text.indexOf(sign, at + sign.length)) left--;
  return left === 0;
}

/** By the general parser, with every place. Exported for the test that holds plainYaml against it. */
export function parse(file: string, text: string, uniqueKeys = true): Document {
  if (holdsMasses(text)) return unreadable(file, text, "yaml-alias", words.alias("too many aliases"));
  const lineCounter = new LineCounter();
  const at = placer(file, text, lineCounter);
  const document = parseDocument(text, {
    version: "1.2",
    schema: "core",
    lineCounter,
    uniqueKeys, // looking for a key that stands twice is not needed in a text that plainYaml has read
    prettyErrors: false,
    logLevel: "error",
  });
  const faults = syntaxFaults(document, text, lineCounter, YAML_LIMITS);
  if (faults.length > 0) return withFaults(file, text, faults, at);
  const root = document.contents;
  if (root === null) return unreadable(file, text, "file-empty", words.emptyFile());
  const inside = inspect(root, (alias) => alias.resolve(document));
  if (inside.length > 0) return withFaults(file, text, inside, at);
  const value: unknown = document.toJS({ maxAliasCount: YAML_LIMITS.aliases });
  const resolved = (node: Node | null | undefined) => (isAlias(node) ? node.resolve(document) : node);
  return { file, text, value, diagnostics: [], ...finder(root, resolved, at, text) };
}

/** Walks the tree for what the grammar allows and a record must not hold. */
function inspect(root: Node, resolved: (alias: Alias) => Node | undefined): Fault[] {
  const faults: Fault[] = [];
  let aliases = 0;
  const open = new Set<Node>();
  const walk = (node: Node | null, depth: number): void => {
    if (node !== null && !isScalar(node)) open.add(node);
    look(node, depth);
    if (node !== null) open.delete(node);
  };
  const look = (node: Node | null, depth: number): void => {
    if (node === null || faults.length >= YAML_LIMITS.faults) return;
    const span = spanOf(node);
    if (depth > YAML_LIMITS.nesting) {
      const start = { start: span.start, end: span.start + 1 };
      faults.push({ span: start, code: "yaml-nesting", words: words.nesting(YAML_LIMITS.nesting) });
    } else if (isAlias(node)) {
      aliases++;
      if (aliases > YAML_LIMITS.aliases) {
        if (aliases === YAML_LIMITS.aliases + 1)
          faults.push({ span, code: "yaml-alias", words: words.alias("too many aliases") });
      } else {
        const target = resolved(node);
        // Neither an alias of nothing nor one of the very thing it stands in can be written out.
        if (target === undefined || open.has(target))
          faults.push({ span, code: "yaml-alias", words: words.alias(`the alias ${quote(`*${node.source}`)}`) });
      }
    } else if (isMap(node))
      for (const pair of node.items as Pair<Node, Node | null>[]) {
        const key = isScalar(pair.key) ? String(pair.key.value) : undefined;
        if (key === undefined || DANGEROUS.has(key))
          faults.push({
            span: spanOf(pair.key),
            code: "yaml-key",
            words: key === undefined ? words.keyNotText() : words.badKey(key),
          });
        walk(pair.value, depth + 1);
      }
    else if (isSeq(node)) for (const item of node.items as Node[]) walk(item, depth + 1);
    else if (isScalar(node) && typeof node.value === "number" && !Number.isFinite(node.value))
      faults.push({ span, code: "number-not-finite", words: words.notFinite(node.source ?? String(node.value)) });
  };
  walk(root, 0);
  return faults;
}

function linesOf(text: string): LineCounter {
  const lines = new LineCounter();
  lines.addNewLine(0);
  for (let i = text.indexOf("\n"); i >= 0; i = text.indexOf("\n", i + 1)) lines.addNewLine(i + 1);
  return lines;
}

function withFaults(file: string, text: string, faults: readonly Fault[], at: Placer): Document {
  const diagnostics = faults.map((f): Diagnostic => ({ code: f.code, severity: "error", at: at(f.span), ...f.words }));
  return { file, text, value: undefined, diagnostics, ...nowhere(file) };
}

function unreadable(file: string, text: string, code: string, why: Words): Document {
  return {
    file,
    text,
    value: undefined,
    diagnostics: [{ code, severity: "error", at: { file }, ...why }],
    ...nowhere(file),
  };
}
