/** What the YAML parser complains about, in words for somebody who writes records, not parsers. */
import { type Document, type ErrorCode, isScalar, type LineCounter, visit } from "yaml";
import type { Span } from "../kernel/document.js";
import { quote, type Words, words } from "./words.js";

export interface Fault {
  readonly span: Span;
  readonly code: string;
  readonly words: Words;
}

/**
 * The parser stumbles on after a fault. Kept are the first fault of each line up to the first that breaks the
 * grammar, and every key that stands twice.
 */
export function syntaxFaults(
  document: Document,
  text: string,
  lines: LineCounter,
  limits: { readonly faults: number; readonly nesting: number },
): Fault[] {
  const faults = [...document.errors, ...document.warnings]
    .sort((a, b) => a.pos[0] - b.pos[0])
    .map((e) => explain(e.code, e.message, text, { start: e.pos[0], end: e.pos[1] }, document, limits.nesting));
  const seen = new Set<number>();
  const kept: Fault[] = [];
  let broken = false;
  for (const fault of faults) {
    const { line } = lines.linePos(fault.span.start);
    const twice = fault.code === "yaml-duplicate-key";
    if (seen.has(line) || (broken && !twice)) continue;
    seen.add(line);
    kept.push(fault);
    broken ||= !twice;
  }
  return kept.slice(0, limits.faults);
}

function explain(
  code: ErrorCode,
  message: string,
  text: string,
  span: Span,
  document: Document,
  nesting: number,
): Fault {
  const here = text.slice(span.start, Math.max(span.end, span.start + 1)).split("\n")[0] ?? "";
  const tab = /^[^\S\n]*\t/.exec(lineAt(text, span.start).text);
  if (code === "TAB_AS_INDENT" || (tab && code !== "DUPLICATE_KEY")) {
    const start = tab ? lineAt(text, span.start).start + tab[0].length - 1 : span.start;
    return { span: { start, end: start + 1 }, code: "yaml-tab", words: words.tab() };
  }
  const syntax = (detail: string, advice: string, at = span): Fault => ({
    span: at,
    code: "yaml-syntax",
    words: words.syntax(detail, advice),
  });
  const open = /(?:end with a|missing closing|expected .*) "?([\]}])/i.exec(message)?.[1];
  if (open !== undefined && code !== "DUPLICATE_KEY")
    return syntax(
      `${open === "]" ? "a bracket [" : "a brace {"} that is never closed`,
      `add ${open} where the list ends`,
    );
  switch (code) {
    case "DUPLICATE_KEY": {
      const key = /^[^:\n]*/.exec(text.slice(span.start, span.start + 200))?.[0] ?? here;
      const end = span.start + key.length;
      return { span: { start: span.start, end }, code: "yaml-duplicate-key", words: words.duplicateKey(key.trim()) };
    }
    case "BAD_ALIAS":
    case "MULTIPLE_ANCHORS":
    case "ALIAS_PROPS":
      return { span, code: "yaml-alias", words: words.alias(`the alias ${quote(here)}`) };
    case "RESOURCE_EXHAUSTION":
      return { span, code: "yaml-nesting", words: words.nesting(nesting) };
    case "MULTIPLE_DOCS":
      return syntax("a second document after ---", "keep one document a file");
    case "TAG_RESOLVE_FAILED":
      return syntax(`the tag ${quote(here)}`, "delete the tag; write a plain value");
    case "BAD_INDENT":
    case "BLOCK_IN_FLOW":
    case "BLOCK_AS_IMPLICIT_KEY":
      return syntax(
        "a line that fits no level of indentation",
        "align it with the lines it belongs to, with spaces; and close brackets and braces above it",
        nextDeeperLine(text, span) ?? span,
      );
    case "MULTILINE_IMPLICIT_KEY":
      return syntax("a key without a colon", "write key: value, with a space after the colon");
    case "BAD_SCALAR_START":
      return syntax(`a value that starts with ${quote(here.slice(0, 1))}`, "put the value in quotes");
    case "MISSING_CHAR": {
      const opened = openQuote(document, text);
      return opened
        ? syntax("a quotation mark that is never closed", "close it on the same line", opened)
        : syntax(plain(message), "add the missing sign");
    }
    default:
      return syntax(plain(message), "compare the line with its neighbours: colon, quotes, indentation");
  }
}

const plain = (message: string) => {
  const first = message.split("\n")[0] ?? message;
  return first.charAt(0).toLowerCase() + first.slice(1);
};

function lineAt(text: string, offset: number): { start: number; text: string } {
  const start = text.lastIndexOf("\n", Math.max(0, offset - 1)) + 1;
  const end = text.indexOf("\n", start);
  return { start, text: text.slice(start, end < 0 ? text.length : end) };
}

/** A value that swallowed the deeper line below it: that line is the one to look at. */
function nextDeeperLine(text: string, { start }: Span): Span | undefined {
  const line = lineAt(text, start + 1);
  const next = lineAt(text, line.start + line.text.length + 2);
  const indent = (s: string) => s.length - s.trimStart().length;
  if (next.start <= line.start || next.text.trim() === "" || indent(next.text) <= indent(line.text)) return undefined;
  const from = next.start + indent(next.text);
  return { start: from, end: from + next.text.trim().length };
}

/** The opening mark of the last quoted value that does not end with one. */
function openQuote(document: Document, text: string): Span | undefined {
  let found: Span | undefined;
  visit(document, {
    Scalar(_key, node) {
      const mark = node.type === "QUOTE_DOUBLE" ? '"' : node.type === "QUOTE_SINGLE" ? "'" : undefined;
      if (mark === undefined || !node.range || !isScalar(node)) return;
      const [start, end] = node.range;
      if (end - start < 2 || text[end - 1] !== mark) found = { start, end: start + 1 };
    },
  });
  return found;
}
