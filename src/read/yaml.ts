/**
 * YAML text to a document that remembers where everything stands. YAML 1.2 core schema: `no` is a word, dates are
 * text, 08:30 is text. The text may come from anybody, so size, nesting, aliases, hidden characters and dangerous
 * keys are bounded here and answered with a message, never with a crash.
 */
import {
  type ErrorCode,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
} from "yaml";
import type { Diagnostic, Place } from "../kernel/diagnostic.js";
import type { Document, Part, Path, Span } from "../kernel/document.js";
import { BYTE_ORDER_MARK, decodeStrictly } from "./decode.js";
import { hiddenCharacters } from "./hidden-characters.js";
import { quote, type Words, words } from "./words.js";

export const YAML_LIMITS = { characters: 1_048_576, nesting: 60, aliases: 100, faults: 20 } as const;

type Fault = { readonly span: Span; readonly code: string; readonly words: Words };
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
  return parse(file, text);
}

function parse(file: string, text: string): Document {
  const lines = new LineCounter();
  const at = placer(file, text, lines);
  const hidden: Fault[] = hiddenCharacters(text).map(({ at: start, code, kind }) => ({
    span: { start, end: start + 1 },
    code: "hidden-character",
    words: words.hidden(code, kind),
  }));
  if (hidden.length > 0) {
    for (let i = text.indexOf("\n"); i >= 0; i = text.indexOf("\n", i + 1)) lines.addNewLine(i + 1);
    lines.lineStarts.unshift(0);
    return withFaults(file, text, hidden, at);
  }
  try {
    const document = parseDocument(text, {
      version: "1.2",
      schema: "core",
      lineCounter: lines,
      prettyErrors: false,
      logLevel: "error",
    });
    const faults = [...document.errors, ...document.warnings]
      .sort((a, b) => a.pos[0] - b.pos[0])
      .map((e): Fault => ({ span: { start: e.pos[0], end: e.pos[1] }, ...explain(e.code, e.message, text, e.pos) }));
    if (faults.length > 0) return withFaults(file, text, onePerLine(faults, lines), at);
    if (document.contents === null) return unreadable(file, text, "file-empty", words.emptyFile());
    const inside: Fault[] = [];
    inspect(document.contents as Node, 0, inside, text);
    if (inside.length > 0) return withFaults(file, text, inside, at);
    const value: unknown = document.toJS({ maxAliasCount: YAML_LIMITS.aliases });
    return {
      file,
      text,
      value,
      diagnostics: [],
      ...finder(document.contents as Node, (node) => (isAlias(node) ? node.resolve(document) : node), at, text),
    };
  } catch (error) {
    // The parser recurses; deep nesting ends in a RangeError, an alias bomb in a ReferenceError.
    if (error instanceof ReferenceError) return unreadable(file, text, "yaml-alias", words.alias("too many aliases"));
    if (error instanceof RangeError) return unreadable(file, text, "yaml-nesting", words.nesting(YAML_LIMITS.nesting));
    throw error;
  }
}

/** Walks the tree for what the grammar allows and a record must not hold. */
function inspect(node: Node | null, depth: number, faults: Fault[], text: string): void {
  if (node === null || faults.length >= YAML_LIMITS.faults) return;
  const span = spanOf(node);
  if (depth > YAML_LIMITS.nesting) {
    faults.push({ span, code: "yaml-nesting", words: words.nesting(YAML_LIMITS.nesting) });
    return;
  }
  if (isMap(node))
    for (const pair of node.items as Pair<Node, Node | null>[]) {
      const key = isScalar(pair.key) ? String(pair.key.value) : undefined;
      if (key === undefined || DANGEROUS.has(key))
        faults.push({
          span: spanOf(pair.key),
          code: "yaml-key",
          words: words.badKey(key ?? text.slice(span.start, span.start + 20)),
        });
      inspect(pair.value, depth + 1, faults, text);
    }
  else if (isSeq(node)) for (const item of node.items as Node[]) inspect(item, depth + 1, faults, text);
  else if (isScalar(node) && typeof node.value === "number" && !Number.isFinite(node.value))
    faults.push({ span, code: "number-not-finite", words: words.notFinite(node.source ?? String(node.value)) });
}

function explain(code: ErrorCode, message: string, text: string, [start, end]: [number, number]) {
  const here = text.slice(start, Math.max(end, start + 1)).split("\n")[0] ?? "";
  if (code === "TAB_AS_INDENT" || (/^[^\S\n]*\t/.test(lineFrom(text, start)) && code !== "DUPLICATE_KEY"))
    return { code: "yaml-tab", words: words.tab() };
  switch (code) {
    case "DUPLICATE_KEY":
      return { code: "yaml-duplicate-key", words: words.duplicateKey(/^[^:\n]*/.exec(text.slice(start))?.[0] ?? here) };
    case "BAD_ALIAS":
    case "MULTIPLE_ANCHORS":
    case "ALIAS_PROPS":
      return { code: "yaml-alias", words: words.alias(`the alias ${quote(here)}`) };
    case "RESOURCE_EXHAUSTION":
      return { code: "yaml-nesting", words: words.nesting(YAML_LIMITS.nesting) };
    case "MULTIPLE_DOCS":
      return { code: "yaml-syntax", words: words.syntax("a second document after ---", "keep one document a file") };
    case "TAG_RESOLVE_FAILED":
      return {
        code: "yaml-syntax",
        words: words.syntax(`the tag ${quote(here)}`, "delete the tag; write a plain value"),
      };
    case "BAD_INDENT":
    case "BLOCK_IN_FLOW":
    case "BLOCK_AS_IMPLICIT_KEY":
      return {
        code: "yaml-syntax",
        words: words.syntax(
          "a line that fits no level of indentation",
          "align it with the lines it belongs to, with spaces",
        ),
      };
    case "MULTILINE_IMPLICIT_KEY":
    case "IMPOSSIBLE":
      return {
        code: "yaml-syntax",
        words: words.syntax("a key without a colon", "write key: value, with a space after the colon"),
      };
    case "BAD_SCALAR_START":
      return {
        code: "yaml-syntax",
        words: words.syntax(`a value that starts with ${quote(here.slice(0, 1))}`, "put the value in quotes"),
      };
    case "MISSING_CHAR":
      return {
        code: "yaml-syntax",
        words: words.syntax(sentence(message), "close the quote, bracket or brace, or add the missing sign"),
      };
    default:
      return {
        code: "yaml-syntax",
        words: words.syntax(sentence(message), "compare the line with its neighbours: colon, quotes, indentation"),
      };
  }
}

const sentence = (message: string) => {
  const first = message.split("\n")[0] ?? message;
  return first.charAt(0).toLowerCase() + first.slice(1);
};
const lineFrom = (text: string, offset: number) => {
  const start = text.lastIndexOf("\n", Math.max(0, offset - 1)) + 1;
  const end = text.indexOf("\n", start);
  return text.slice(start, end < 0 ? text.length : end);
};

/** The parser stumbles on after a fault; only the first fault of a line, and not too many, are worth reading. */
function onePerLine(faults: readonly Fault[], lines: LineCounter): Fault[] {
  const seen = new Set<number>();
  const kept = faults.filter(({ span }) => {
    const { line } = lines.linePos(span.start);
    return !seen.has(line) && seen.add(line);
  });
  const first = kept.findIndex((f) => f.code === "yaml-syntax" || f.code === "yaml-tab");
  return (first < 0 ? kept : [...kept.filter((f, i) => i <= first || f.code === "yaml-duplicate-key")]).slice(
    0,
    YAML_LIMITS.faults,
  );
}

type Placer = (span: Span) => Place;
function placer(file: string, text: string, lines: LineCounter): Placer {
  const mark = text.startsWith(BYTE_ORDER_MARK) ? 1 : 0;
  return ({ start, end }) => {
    const { line, col } = lines.linePos(Math.min(start, text.length));
    const newline = text.indexOf("\n", start);
    const last = Math.min(end, newline < 0 ? text.length : newline);
    return { file, line, column: line === 1 ? Math.max(1, col - mark) : col, length: Math.max(1, last - start) };
  };
}

function spanOf(node: Node | null | undefined): Span {
  const range = node?.range;
  return range ? { start: range[0], end: Math.max(range[1], range[0]) } : { start: 0, end: 0 };
}

/** Looks places up in the tree by path. */
function finder(
  root: Node,
  resolved: (node: Node | null | undefined) => Node | null | undefined,
  at: Placer,
  text: string,
): Pick<Document, "place" | "span" | "written"> {
  const find = (path: Path): { key?: Node; value: Node | null | undefined; complete: boolean } => {
    let value: Node | null | undefined = root;
    let key: Node | undefined;
    for (const step of path) {
      const from: Node | null | undefined = resolved(value);
      if (isMap(from)) {
        const pair = (from.items as Pair<Node, Node | null>[]).find(
          (p) => isScalar(p.key) && String(p.key.value) === String(step),
        );
        if (pair === undefined) return { ...(key ? { key } : {}), value, complete: false };
        key = pair.key;
        value = pair.value;
      } else if (isSeq(from) && from.items[Number(step)] !== undefined) {
        key = undefined;
        value = from.items[Number(step)] as Node;
      } else return { ...(key ? { key } : {}), value, complete: false };
    }
    return { ...(key ? { key } : {}), value, complete: true };
  };
  const span = (path: Path, part: Part = "value"): Span | undefined => {
    const { key, value, complete } = find(path);
    if (!complete) return undefined;
    const node = part === "key" ? key : value;
    // A key without a value has an empty range: point at the key instead.
    const range = spanOf(node ?? value);
    return node && range.end > range.start ? range : key ? spanOf(key) : range;
  };
  return {
    span,
    place(path, part = "value") {
      const exact = span(path, part);
      if (exact) return at(isLong(exact, text) && part === "value" ? opening(path, exact) : exact);
      const { key, value } = find(path);
      const near = key ? spanOf(key) : spanOf(value);
      return at(path.length === 0 || !key ? { start: near.start, end: near.start + 1 } : near);
    },
    written(path) {
      const { value, complete } = find(path);
      const node = resolved(value);
      return complete && isScalar(node) ? (node.source ?? String(node.value)) : undefined;
    },
  };
  /** A list or mapping over several lines is shown by its key. */
  function opening(path: Path, whole: Span): Span {
    const { key } = find(path);
    return key ? spanOf(key) : { start: whole.start, end: whole.start + 1 };
  }
}

const isLong = ({ start, end }: Span, text: string) => text.slice(start, end).trimEnd().includes("\n");

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

const nowhere = (file: string): Pick<Document, "place" | "span" | "written"> => ({
  place: () => ({ file }),
  span: () => undefined,
  written: () => undefined,
});
