/** From paths in a parsed YAML document to places in its text. */
import { isMap, isScalar, isSeq, type LineCounter, type Node, type Pair } from "yaml";
import type { Place } from "../kernel/diagnostic.js";
import type { Document, Part, Path, Span } from "../kernel/document.js";
import { BYTE_ORDER_MARK } from "./decode.js";

export type Placer = (span: Span) => Place;
type Look = Pick<Document, "place" | "span" | "written">;
type Found = { readonly key?: Node; readonly value: Node | null | undefined; readonly complete: boolean };

/** Offsets to line and column; the mark ends with its line. A byte-order mark takes no column. */
export function placer(file: string, text: string, lines: LineCounter): Placer {
  const mark = text.startsWith(BYTE_ORDER_MARK) ? 1 : 0;
  return ({ start, end }) => {
    const { line, col } = lines.linePos(Math.min(start, text.length));
    const newline = text.indexOf("\n", start);
    const last = Math.min(end, newline < 0 ? text.length : newline);
    return { file, line, column: line === 1 ? Math.max(1, col - mark) : col, length: Math.max(1, last - start) };
  };
}

export function spanOf(node: Node | null | undefined): Span {
  const range = node?.range;
  return range ? { start: range[0], end: Math.max(range[1], range[0]) } : { start: 0, end: 0 };
}

/** Looks up by path in the tree below `root`; `resolved` follows an alias to what it stands for. */
export function finder(
  root: Node,
  resolved: (node: Node | null | undefined) => Node | null | undefined,
  at: Placer,
  text: string,
): Look {
  const find = (path: Path): Found => {
    let value: Node | null | undefined = root;
    let key: Node | undefined;
    const partly = () => ({ ...(key ? { key } : {}), value, complete: false });
    for (const step of path) {
      const from: Node | null | undefined = resolved(value);
      if (isMap(from)) {
        const pair = (from.items as Pair<Node, Node | null>[]).find(
          (p) => isScalar(p.key) && String(p.key.value) === String(step),
        );
        if (pair === undefined) return partly();
        key = pair.key;
        value = pair.value;
      } else if (isSeq(from) && from.items[Number(step)] !== undefined) {
        key = undefined;
        value = from.items[Number(step)] as Node;
      } else return partly();
    }
    return { ...(key ? { key } : {}), value, complete: true };
  };
  const span = (path: Path, part: Part = "value"): Span | undefined => {
    const { key, value, complete } = find(path);
    if (!complete) return undefined;
    const range = spanOf((part === "key" ? key : undefined) ?? value);
    // A key without a value has an empty range: point at the key instead.
    return range.end > range.start || !key ? range : spanOf(key);
  };
  return {
    span,
    place(path, part = "value") {
      const { key, value } = find(path);
      const exact = span(path, part);
      // A list or mapping over several lines, or what is not there, is shown by the nearest key above it.
      if (exact && !text.slice(exact.start, exact.end).trimEnd().includes("\n")) return at(exact);
      const { start } = spanOf(value);
      return at(key ? spanOf(key) : { start, end: start + 1 });
    },
    written(path) {
      const { value, complete } = find(path);
      const node = resolved(value);
      return complete && isScalar(node) ? (node.source ?? String(node.value)) : undefined;
    },
  };
}

/** The places of a document that could not be read: the file itself. */
export const nowhere = (file: string): Look => ({
  place: () => ({ file }),
  span: () => undefined,
  written: () => undefined,
});
