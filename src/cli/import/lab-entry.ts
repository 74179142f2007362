/**
 * Puts an instrument into the text of lab.yaml. Only its own lines change: comments and layout of everything else stay
 * as they are. Where the file is written in a way that has no place for lines (all in one pair of braces), the YAML
 * document is written anew, with its comments.
 */
import { isDeepStrictEqual } from "node:util";
import { isMap, isScalar, type Pair, parse, parseDocument, stringify, type YAMLMap } from "yaml";

export type Entry = Readonly<Record<string, unknown>>;

/** The text with the instrument in it: what stands there under `key` keeps the keys that `entry` does not name. */
export function withInstrument(text: string, key: string, entry: Entry): string {
  const before = parse(text) as { instruments?: Record<string, Entry> };
  const merged = { ...before.instruments?.[key], ...entry };
  const wanted = { ...before, instruments: { ...before.instruments, [key]: merged } };
  const spliced = splice(text, key, merged);
  if (spliced !== undefined && isDeepStrictEqual(parse(spliced), wanted)) return spliced;
  const document = parseDocument(text);
  document.setIn(["instruments", key], document.createNode(merged));
  return document.toString({ lineWidth: 0, flowCollectionPadding: false });
}

function splice(text: string, key: string, entry: Entry): string | undefined {
  const document = parseDocument(text);
  if (!isMap(document.contents)) return undefined;
  const section = pairOf(document.contents, "instruments");
  if (section === undefined) return `${text.replace(/\n*$/, "\n")}\ninstruments:\n${entryText(key, entry, 2)}`;
  if (!isMap(section.value)) return afterLine(text, endOf(section.key), entryText(key, entry, 2));
  const instruments = section.value;
  const last = instruments.items.at(-1) as Pair | undefined;
  if (instruments.flow || last === undefined) return undefined;
  const indent = columnOf(text, startOf(last.key));
  const own = pairOf(instruments, key);
  if (own === undefined) return afterLine(text, endOf(last.value) ?? endOf(last.key), entryText(key, entry, indent));
  const start = startOf(own.key) - indent;
  const end = lineEnd(text, contentEnd(text, endOf(own.value) ?? endOf(own.key)));
  return text.slice(0, start) + entryText(key, entry, indent) + text.slice(end);
}

const pairOf = (map: YAMLMap, key: string): Pair | undefined =>
  (map.items as Pair[]).find((pair) => isScalar(pair.key) && pair.key.value === key);
type Ranged = { readonly range?: readonly [number, number, number] | null } | null | undefined;
const startOf = (node: unknown): number => (node as Ranged)?.range?.[0] ?? 0;
const endOf = (node: unknown): number | undefined => (node as Ranged)?.range?.[1];
const columnOf = (text: string, at: number) => at - (text.lastIndexOf("\n", at - 1) + 1);
const contentEnd = (text: string, at: number | undefined) => text.slice(0, at ?? text.length).trimEnd().length;
/** After the line that holds `at`, with its line end. */
const lineEnd = (text: string, at: number) => {
  const end = text.indexOf("\n", at);
  return end < 0 ? text.length : end + 1;
};

function afterLine(text: string, at: number | undefined, lines: string): string {
  const end = lineEnd(text, contentEnd(text, at));
  const head = text.slice(0, end);
  return `${head}${head.endsWith("\n") ? "" : "\n"}${lines}${text.slice(end)}`;
}

/** The entry as lines: one a key, and one a column. */
export function entryText(key: string, entry: Entry, indent: number): string {
  const pad = " ".repeat(indent);
  const lines = Object.entries(entry).flatMap(([name, value]) =>
    name === "columns"
      ? [
          `${pad}  columns:`,
          ...Object.entries(value as Entry).map(([channel, c]) => `${pad}    ${channel}: ${flow(c)}`),
        ]
      : [`${pad}  ${name}: ${flow(value)}`],
  );
  return `${[`${pad}${key}:`, ...lines].join("\n")}\n`;
}

export const flow = (value: unknown): string =>
  stringify(value, { collectionStyle: "flow", lineWidth: 0, flowCollectionPadding: false }).trimEnd();
