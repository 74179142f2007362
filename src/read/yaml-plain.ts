/**
 * The YAML that people write in records: block mappings and lists, one-line scalars, { } and [ ] over any lines, comments.
 * A general parser builds a tree with the place of every sign, which a file without faults never asks for, and takes
 * twenty times as long. Whatever is not of this plain form (anchors, tags, block scalars, tabs, anything faulty) gives
 * undefined, and the caller asks the general parser. Tests hold both against each other on real and on random text.
 */
import { closing, fail, notPlain, plain, quoted } from "./yaml-scalars.js";

type Value = string | number | boolean | null | Value[] | { [key: string]: Value };
type Mapping = { [key: string]: Value };

const DEEPEST = 40;
const KEY = /([A-Za-z_][\w.-]*(?: [\w.-]+)*):(?= |$)/my;
const DANGEROUS = new Set(["__proto__", "constructor", "prototype"]);

interface Line {
  readonly indent: number;
  readonly start: number;
  readonly end: number;
}

/** Plain data of a text that is a mapping of the plain form; undefined for every other text, faulty ones among them. */
export function plainYaml(text: string): Readonly<Record<string, unknown>> | undefined {
  if (/[\t\r\uFEFF\u2028\u2029\u0085]/.test(text)) return undefined;
  try {
    const file = { text, lines: linesOf(text), at: 0 };
    const value = block(file, 0, 0);
    return file.at === file.lines.length && !Array.isArray(value) ? (value as Mapping) : undefined;
  } catch (error) {
    if (error === notPlain) return undefined;
    throw error;
  }
}

interface File {
  readonly text: string;
  readonly lines: Line[];
  /** Index of the line to be read next. */
  at: number;
}

/** Lines that hold something, without their comments' lines. */
function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  for (let from = 0; from < text.length; ) {
    const newline = text.indexOf("\n", from);
    const end = newline < 0 ? text.length : newline;
    let start = from;
    while (start < end && text.charCodeAt(start) === 32) start++;
    if (start < end && text[start] !== "#") lines.push({ indent: start - from, start, end });
    from = end + 1;
  }
  return lines;
}

const isItem = (text: string, start: number, end: number) =>
  text.charCodeAt(start) === 45 && (start + 1 === end || text.charCodeAt(start + 1) === 32);

/** The mapping or list whose lines stand at `indent`. */
function block(file: File, indent: number, depth: number): Mapping | Value[] {
  const line = file.lines[file.at];
  if (line === undefined || line.indent !== indent || depth > DEEPEST) return fail();
  return isItem(file.text, line.start, line.end) ? list(file, indent, depth) : mapping(file, indent, depth);
}

function list(file: File, indent: number, depth: number): Value[] {
  const out: Value[] = [];
  for (let line = file.lines[file.at]; line !== undefined; line = file.lines[file.at]) {
    if (line.indent < indent || (line.indent === indent && !isItem(file.text, line.start, line.end))) break;
    if (line.indent > indent) return fail();
    let start = line.start + 1;
    while (start < line.end && file.text.charCodeAt(start) === 32) start++;
    if (start === line.end || file.text[start] === "#") return fail();
    if (isItem(file.text, start, line.end) || keyAt(file.text, start, line.end) !== undefined) {
      // "- key: value": the rest of the line is the first line of a block of its own.
      const inner = indent + (start - line.start);
      file.lines[file.at] = { indent: inner, start, end: line.end };
      out.push(block(file, inner, depth + 1));
    } else out.push(inline(file, start, line, indent, depth + 1));
  }
  return out;
}

function mapping(file: File, indent: number, depth: number): Mapping {
  const out: Mapping = {};
  for (let line = file.lines[file.at]; line !== undefined; line = file.lines[file.at]) {
    if (line.indent < indent) break;
    const key = line.indent > indent ? undefined : keyAt(file.text, line.start, line.end);
    if (key === undefined || Object.hasOwn(out, key.name)) return fail();
    let start = key.end;
    while (start < line.end && file.text.charCodeAt(start) === 32) start++;
    if (start < line.end && !(file.text[start] === "#" && start > key.end)) {
      out[key.name] = inline(file, start, line, indent, depth + 1);
      continue;
    }
    file.at++;
    const next = file.lines[file.at];
    if (next === undefined || next.indent < indent) out[key.name] = null;
    else if (next.indent > indent)
      out[key.name] =
        "{[\"'".includes(file.text[next.start] as string) && keyAt(file.text, next.start, next.end) === undefined
          ? inline(file, next.start, next, indent, depth + 1)
          : block(file, next.indent, depth + 1);
    else if (isItem(file.text, next.start, next.end)) out[key.name] = list(file, indent, depth + 1);
    else out[key.name] = null;
  }
  return out;
}

interface Key {
  readonly name: string;
  /** Offset after the colon. */
  readonly end: number;
}

function keyAt(text: string, start: number, end: number): Key | undefined {
  const first = text[start];
  if (first === '"' || first === "'") {
    const close = closing(text, start, end);
    if (text[close] !== ":" || (close + 1 < end && text[close + 1] !== " ")) return undefined;
    return named(quoted(text.slice(start, close)), close + 1);
  }
  KEY.lastIndex = start;
  const match = KEY.exec(text);
  if (match === null || KEY.lastIndex > end) return undefined;
  return named(match[1] as string, KEY.lastIndex, true);
}

function named(name: string, end: number, isPlain = false): Key {
  if (DANGEROUS.has(name) || name.length > 200 || (isPlain && typeof plain(name) !== "string")) return fail();
  return { name, end };
}

/** A value that begins on this line; only { } and [ ] may go on below. Leaves the line behind. */
function inline(file: File, start: number, line: Line, indent: number, depth: number): Value {
  const { text } = file;
  const first = text[start];
  if (first === "{" || first === "[") {
    const cursor = { file, at: start, end: line.end, indent };
    const value = flow(cursor, depth);
    ended(text, cursor.at, cursor.end);
    file.at++;
    return value;
  }
  file.at++;
  if (first === '"' || first === "'") {
    const close = closing(text, start, line.end);
    ended(text, close, line.end);
    return quoted(text.slice(start, close));
  }
  const rest = text.slice(start, line.end);
  const comment = rest.indexOf(" #");
  const word = (comment >= 0 ? rest.slice(0, comment) : rest).trimEnd();
  return /:(?: |$)/.test(word) ? fail() : plain(word);
}

/** Only a comment may follow a quoted or bracketed value. */
function ended(text: string, at: number, end: number): void {
  let i = at;
  while (i < end && text.charCodeAt(i) === 32) i++;
  if (i < end && (text[i] !== "#" || i === at)) fail();
}

interface Cursor {
  readonly file: File;
  /** Offset in the text, and the end of the line it is on. */
  at: number;
  end: number;
  /** Lines of a bracket stand deeper than this. */
  readonly indent: number;
}

function flow(cursor: Cursor, depth: number): Value {
  if (depth > DEEPEST) return fail();
  const { text } = cursor.file;
  const isList = text[cursor.at] === "[";
  const close = isList ? "]" : "}";
  const items: Value[] = [];
  const map: Mapping = {};
  cursor.at++;
  for (skip(cursor); text[cursor.at] !== close; skip(cursor)) {
    if (isList) items.push(flowValue(cursor, depth));
    else {
      const key = keyAt(text, cursor.at, cursor.end);
      if (key === undefined || Object.hasOwn(map, key.name)) return fail();
      cursor.at = key.end;
      skip(cursor);
      map[key.name] = flowValue(cursor, depth);
    }
    skip(cursor);
    if (text[cursor.at] === ",") cursor.at++;
    else if (text[cursor.at] !== close) return fail();
  }
  cursor.at++;
  return isList ? items : map;
}

function flowValue(cursor: Cursor, depth: number): Value {
  const { text } = cursor.file;
  const first = text[cursor.at];
  if (first === "{" || first === "[") return flow(cursor, depth + 1);
  if (first === '"' || first === "'") {
    const close = closing(text, cursor.at, cursor.end);
    const value = quoted(text.slice(cursor.at, close));
    cursor.at = close;
    return value;
  }
  const start = cursor.at;
  let i = start;
  for (; i < cursor.end; i++) {
    const c = text.charCodeAt(i);
    if (c === 44 || c === 93 || c === 125) break; // , ] }
    if (c === 91 || c === 123) return fail(); // [ {
    if (c === 35 && text.charCodeAt(i - 1) === 32) break; // a comment
    if (c === 58 && (i + 1 >= cursor.end || " ,[]{}".includes(text[i + 1] as string))) return fail();
  }
  cursor.at = i;
  return plain(text.slice(start, i).trimEnd());
}

/** To the next sign inside brackets, over line ends and comments. */
function skip(cursor: Cursor): void {
  const { file } = cursor;
  for (;;) {
    const from = cursor.at;
    while (cursor.at < cursor.end && file.text.charCodeAt(cursor.at) === 32) cursor.at++;
    const isComment = file.text[cursor.at] === "#" && cursor.at < cursor.end;
    if (isComment && cursor.at === from) fail();
    if (cursor.at < cursor.end && !isComment) return;
    file.at++;
    const line = file.lines[file.at];
    if (line === undefined || line.indent <= cursor.indent) throw notPlain;
    cursor.at = line.start;
    cursor.end = line.end;
  }
}
