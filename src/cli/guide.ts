/** What a schema says of a block, as a page to learn from: keys, units, ranges, how to measure, sources. */
import type { SchemaNode } from "../validate/schema-words.js";

const WIDTH = 96;

/** A node with the annotations that explain and do not judge. */
export interface GuideNode extends SchemaNode {
  readonly howto?: string | readonly string[];
  readonly source?: string | readonly string[];
  readonly properties?: Readonly<Record<string, GuideNode>>;
  readonly items?: GuideNode;
  readonly $defs?: Readonly<Record<string, GuideNode>>;
}
/** A schema by its file name, "blocks/size.schema.json". */
export type SchemaOf = (name: string) => GuideNode | undefined;

export interface Block {
  readonly name: string;
  readonly node: GuideNode;
  /** Schema file that "#/…" inside refers to. */
  readonly root: GuideNode;
}

/** Everything that has a guide: the blocks of a session in its order, then the other files of a practice. */
export function guideBlocks(schemaOf: SchemaOf): Block[] {
  const session = schemaOf("session.schema.json") as GuideNode;
  const blocks = Object.entries(session.properties ?? {}).flatMap(([name, node]): Block[] => {
    const block = node.$ref ? schemaOf(node.$ref) : undefined;
    return block && name !== "confirmed" ? [{ name, node: block, root: block }] : [];
  });
  const files = (["session", "client", "laboratory"] as const).map((name): Block => {
    const node = schemaOf(`${name}.schema.json`) as GuideNode;
    return { name, node, root: node };
  });
  const lab = schemaOf("laboratory.schema.json");
  const instrument = lab?.$defs?.instrument;
  return [
    ...blocks,
    ...files,
    ...(lab && instrument ? [{ name: "instrument", node: instrument, root: lab }] : []),
    { name: "plan", node: schemaOf("blocks/plan.schema.json") ?? {}, root: schemaOf("blocks/plan.schema.json") ?? {} },
  ];
}

/** "size                     Stature, mass and girths of the trunk." for every block. */
export function guideList(blocks: readonly Block[]): string {
  const width = Math.max(...blocks.map((block) => block.name.length));
  return blocks
    .map(({ name, node }) => `  ${name.padEnd(width)}  ${firstSentence(node.description ?? "", WIDTH - width - 4)}`)
    .join("\n");
}

/** The page of a block, or of one key in it ("blood_pressure.readings"). Undefined when there is no such key. */
export function guidePage(block: Block, path: readonly string[], schemaOf: SchemaOf): string | undefined {
  let node = block.node;
  for (const step of path) {
    const next = keysOf(resolved(node, block.root, schemaOf))[step];
    if (next === undefined) return undefined;
    node = next;
  }
  const whole = resolved(node, block.root, schemaOf);
  const required = new Set([...(whole.required ?? []), ...(whole.items?.required ?? [])]);
  const keys = Object.entries(keysOf(whole)).filter(([key]) => key !== "confirmed");
  const facts = valueFacts(whole);
  return [
    [block.name, ...path].join("."),
    "",
    ...wrap(whole.description ?? "", 0),
    ...(facts === "" ? [] : ["", ...wrap(facts, 0)]),
    ...annotations(whole),
    ...(keys.length === 0
      ? []
      : ["", ...keys.flatMap(([key, child]) => keyLines(key, child, 0, required.has(key), block.root, schemaOf))]),
    ...(keys.length === 0 || path.length > 0
      ? []
      : [
          "",
          ...wrap(
            "Outside the possible range is an error; outside the usual range a warning until confirmed: says why.",
            0,
          ),
        ]),
  ].join("\n");
}

function annotations(node: GuideNode): string[] {
  const steps = [node.howto ?? []].flat();
  const sources = [node.source ?? []].flat();
  return [
    ...(steps.length === 0 ? [] : ["", "How to measure", ...steps.flatMap((step) => bullet(step))]),
    ...(sources.length === 0 ? [] : ["", "Source", ...sources.flatMap((source) => bullet(source))]),
  ];
}

const bullet = (text: string) => wrap(text, 4).map((line, i) => (i === 0 ? `  - ${line.trimStart()}` : line));

function keyLines(
  key: string,
  child: GuideNode,
  depth: number,
  required: boolean,
  root: GuideNode,
  schemaOf: SchemaOf,
): string[] {
  const node = resolved(child, root, schemaOf);
  const facts = [valueFacts(node), required ? "required" : ""].filter((fact) => fact !== "").join("; ");
  const indent = 2 + depth * 4;
  const below = Object.entries(keysOf(node)).filter(([name]) => name !== "confirmed");
  const asked = new Set([...(node.required ?? []), ...(node.items?.required ?? [])]);
  return [
    ...wrap(`${key}${facts === "" ? "" : `   ${facts}`}`, indent, indent + 4),
    ...wrap(child.description ?? node.description ?? "", indent + 4),
    ...(node.howto ? [node.howto].flat().flatMap((step) => wrap(step, indent + 4)) : []),
    ...(depth >= 3
      ? []
      : below.flatMap(([name, inner]) => keyLines(name, inner, depth + 1, asked.has(name), root, schemaOf))),
  ];
}

/** "cm, possible 100 to 250, usually 140 to 210; one value or a list". */
function valueFacts(node: GuideNode): string {
  const types = [node.type ?? []].flat();
  const one = types.includes("array") && node.minimum === undefined && node.items ? node.items : node;
  const low = one.minimum ?? one.exclusiveMinimum;
  const high = one.maximum ?? one.exclusiveMaximum;
  const range =
    low !== undefined && high !== undefined
      ? `possible ${low} to ${high}`
      : low !== undefined
        ? `at least ${low}`
        : high !== undefined
          ? `at most ${high}`
          : "";
  const parts = [
    node.const === undefined ? "" : String(node.const),
    one.enum ? `one of: ${one.enum.join(", ")}` : "",
    types.includes("boolean") ? "true or false" : "",
    one.unit ?? "",
    range,
    one.usual ? `usually ${one.usual[0]} to ${one.usual[1]}` : "",
    one.default === undefined || typeof one.default === "object" ? "" : `default ${String(one.default)}`,
  ].filter((part) => part !== "");
  const list = types.includes("array")
    ? types.length > 1
      ? "one value or a list"
      : Object.keys(keysOf(node)).length > 0
        ? "a list of"
        : "a list"
    : "";
  return [parts.join(", "), list].filter((part) => part !== "").join("; ");
}

const keysOf = (node: GuideNode): Readonly<Record<string, GuideNode>> =>
  node.properties ?? node.items?.properties ?? {};

/** Follows one reference, inside the file or to another; a description beside it goes before the one it leads to. */
export function resolved(node: GuideNode, root: GuideNode, schemaOf: SchemaOf): GuideNode {
  if (node.$ref === undefined) {
    if (node.items?.$ref !== undefined) return { ...node, items: resolved(node.items, root, schemaOf) };
    return node;
  }
  const inside = /^#\/\$defs\/(.+)$/.exec(node.$ref)?.[1];
  const target = inside === undefined ? (schemaOf(node.$ref) ?? schemaOf(`blocks/${node.$ref}`)) : root.$defs?.[inside];
  return { ...target, ...node };
}

/** Text in lines of at most WIDTH characters. */
function wrap(text: string, indent: number, hanging = indent): string[] {
  const lines: string[] = [];
  for (const paragraph of text.split("\n")) {
    let line = "";
    for (const word of paragraph.split(" ")) {
      const pad = lines.length === 0 ? indent : hanging;
      if (line !== "" && pad + line.length + 1 + word.length > WIDTH) {
        lines.push(" ".repeat(pad) + line);
        line = word;
      } else line = line === "" ? word : `${line} ${word}`;
    }
    if (line !== "") lines.push(" ".repeat(lines.length === 0 ? indent : hanging) + line);
  }
  return lines;
}

function firstSentence(text: string, longest: number): string {
  const sentence = /^.*?[.:](?=\s|$)/.exec(text)?.[0].replace(/:$/, ".") ?? text;
  return sentence.length <= longest ? sentence : `${sentence.slice(0, longest - 3).trimEnd()}...`;
}
