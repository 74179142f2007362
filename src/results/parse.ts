/**
 * Reads the YAML that write.ts writes, and nothing else: keys at two indents, values on one line. A general parser takes
 * sixty times as long, and a retest reads every earlier visit. Text that write.ts did not write gives undefined, and the
 * caller asks a general parser; a test holds both against each other.
 */
export type Node = string | number | boolean | null | readonly Node[] | { readonly [key: string]: Node };

/** The document as plain data, or undefined when a line is not of the written form. */
export function parseWritten(text: string): { readonly [key: string]: Node } | undefined {
  try {
    return documentOf(text);
  } catch (error) {
    if (error instanceof NotWritten) return undefined;
    throw error;
  }
}

function documentOf(text: string): { readonly [key: string]: Node } {
  const out: { [key: string]: Node } = {};
  let block: { [key: string]: Node } | Node[] | undefined;
  let top = "";
  let items: Node[] | undefined;
  for (const line of text.split("\n")) {
    if (line === "" || line.startsWith("# ")) continue;
    if (line.startsWith("    - ")) {
      if (items === undefined) return fail();
      items.push(readValue(line.slice(6)));
    } else if (line.startsWith("  - ")) {
      if (block === undefined) block = out[top] = [];
      if (!Array.isArray(block)) return fail();
      block.push(readValue(line.slice(4)));
    } else if (line.startsWith("  ")) {
      const pair = pairOf(line.slice(2));
      if (pair === undefined) return fail();
      if (block === undefined) block = out[top] = {};
      if (Array.isArray(block)) return fail();
      const [key, rest] = pair;
      items = rest === undefined ? [] : undefined;
      block[key] = items ?? readValue(rest as string);
    } else {
      const pair = pairOf(line);
      if (pair === undefined || pair[0] === "__proto__" || Object.hasOwn(out, pair[0])) return fail();
      [top] = pair;
      out[top] = pair[1] === undefined ? null : readValue(pair[1]);
      block = undefined;
      items = undefined;
    }
  }
  return out;
}

/** A line, scalar or flow value that write.ts does not write. */
class NotWritten extends Error {}
function fail(): never {
  throw new NotWritten();
}

const KEY = /^([A-Za-z_][\w .·()/%₂-]*):(?: (.*))?$/;

/** "key: value" or "key:"; quoted keys are JSON strings. */
function pairOf(line: string): [string, string | undefined] | undefined {
  if (line.startsWith('"')) {
    const end = closing(line, 0);
    if (end < 0 || line[end + 1] !== ":") return undefined;
    const rest = line.slice(end + 2);
    return [quoted(line.slice(0, end + 1)) as string, rest === "" ? undefined : rest.slice(1)];
  }
  const match = KEY.exec(line);
  return match ? [match[1] as string, match[2]] : undefined;
}

const NUMBER = /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/;

function readValue(text: string): Node {
  const first = text[0];
  if (first === "{" || first === "[") {
    const at = { i: 0 };
    const value = flowOf(text, at);
    return at.i === text.length ? value : fail();
  }
  return first === '"' ? quoted(text) : plain(text);
}

function quoted(text: string): Node {
  try {
    return JSON.parse(text) as string;
  } catch {
    return fail();
  }
}

function plain(text: string): Node {
  if (NUMBER.test(text)) return Number(text);
  if (text === "null") return null;
  if (text === "true" || text === "false") return text === "true";
  return text === "" || /^[&*!|>'%@`-]| #|: /.test(text) ? fail() : text;
}

/** Position of the quotation mark that closes the one at `from`, or -1. */
function closing(text: string, from: number): number {
  for (let i = from + 1; i < text.length; i++) {
    if (text[i] === "\\") i++;
    else if (text[i] === '"') return i;
  }
  return -1;
}

function flowOf(text: string, at: { i: number }): Node {
  const open = text[at.i];
  if (open === '"') {
    const end = closing(text, at.i);
    if (end < 0) return fail();
    const value = quoted(text.slice(at.i, end + 1));
    at.i = end + 1;
    return value;
  }
  if (open === "[") {
    const list: Node[] = [];
    at.i++;
    while (text[at.i] !== "]") {
      if (at.i >= text.length) return fail();
      list.push(flowOf(text, at));
      if (!next(text, at, "]")) return fail();
    }
    at.i++;
    return list;
  }
  if (open === "{") {
    const map: { [key: string]: Node } = {};
    at.i++;
    while (text[at.i] !== "}") {
      if (at.i >= text.length) return fail();
      const key = text[at.i] === '"' ? flowOf(text, at) : plainKey(text, at);
      if (typeof key !== "string" || text[at.i] !== ":" || text[at.i + 1] !== " " || key === "__proto__") return fail();
      at.i += 2;
      map[key] = flowOf(text, at);
      if (!next(text, at, "}")) return fail();
    }
    at.i++;
    return map;
  }
  const start = at.i;
  while (at.i < text.length && text[at.i] !== "," && text[at.i] !== "]" && text[at.i] !== "}") at.i++;
  return plain(text.slice(start, at.i));
}

function plainKey(text: string, at: { i: number }): string {
  const end = text.indexOf(": ", at.i);
  const key = text.slice(at.i, end < 0 ? text.length : end);
  at.i = end < 0 ? text.length : end;
  return key;
}

/** After an item: ", " and more, or the closing bracket. */
function next(text: string, at: { i: number }, close: string): boolean {
  if (text[at.i] === close) return true;
  if (text[at.i] !== "," || text[at.i + 1] !== " ") return false;
  at.i += 2;
  return text[at.i] !== close;
}
