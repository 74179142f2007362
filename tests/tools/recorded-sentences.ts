/**
 * Every sentence the program can write into a results file, read from its own sources: literals of the pure layers through
 * the compiler, words of YAML tables, rules and profiles, and the answers that schemas allow. A place stands as {…}.
 */
import { readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { type Node, SyntaxKind } from "typescript/unstable/ast";
import { API } from "typescript/unstable/sync";
import { parse } from "yaml";
import type { Speech } from "../../src/kernel/speech.js";

export interface Recorded {
  /** "src/plan/plan.ts:12" */
  readonly at: string;
  /** With {…} in its places. */
  readonly text: string;
}

const LAYERS = ["kernel", "derive", "norms", "validity", "compare", "plan"];
/** Metadata that is cited, computed with or checked, and never told. */
const NOT_TOLD = new Set(["source", "checks", "equation", "id", "unit", "loinc", "pattern"]);
/** Fewer words are names; they are found where they are used. */
const A_SENTENCE = 3;

const words = (text: string): number => text.match(/\p{L}{2,}/gu)?.length ?? 0;

/** Literals of the pure layers; calls that throw a fault of ours are none. */
export function literals(): Recorded[] {
  const api = new API();
  const config = resolve("tsconfig.json");
  const project = api.updateSnapshot({ openProjects: [config] }).getProjects()[0];
  if (project === undefined) throw new Error("tsconfig.json did not open");
  const { program } = project;
  const inLayers = new RegExp(`/src/(?:${LAYERS.join("|")})/`);
  const files = program.getSourceFileNames().filter((file) => inLayers.test(file) && !file.includes("generated"));
  const found = files.flatMap((name): Recorded[] => {
    const file = program.getSourceFile(name);
    if (file === undefined) return [];
    const own: Recorded[] = [];
    const short = name.slice(name.lastIndexOf("/src/") + 1);
    const add = (text: string, node: Node, least: number) => {
      if (words(text) >= least && !/^[\w.-]+$/.test(text))
        own.push({ at: `${short}:${file.text.slice(0, node.end).split("\n").length}`, text });
    };
    const visit = (node: Node, least: number): undefined => {
      const inner = SKIPPED.has(node.kind) || isFault(node) || isMetadata(node) ? undefined : refusal(node) ? 1 : least;
      if (inner === undefined) return;
      const text = literalText(node, file.text);
      if (text !== undefined) add(text, node, inner);
      node.forEachChild((child) => visit(child, inner));
    };
    visit(file, A_SENTENCE);
    return own;
  });
  api.close();
  return found;
}

const SKIPPED: ReadonlySet<SyntaxKind> = new Set([
  SyntaxKind.ImportDeclaration,
  SyntaxKind.ExportDeclaration,
  SyntaxKind.TypeAliasDeclaration,
  SyntaxKind.InterfaceDeclaration,
]);

/** Text of a literal with its places; undefined for every other node. */
function literalText(node: Node, source: string): string | undefined {
  const one = node as Node & { text?: string; head?: { text: string }; templateSpans?: readonly Span[] };
  if (node.kind === SyntaxKind.StringLiteral || node.kind === SyntaxKind.NoSubstitutionTemplateLiteral) return one.text;
  if (node.kind !== SyntaxKind.TemplateExpression) return undefined;
  const spans = one.templateSpans ?? [];
  return spans.reduce(
    (text, { expression, literal }) =>
      `${text}{${source.slice(expression.pos, expression.end).trim().replace(/\s+/g, " ")}}${literal.text}`,
    one.head?.text ?? "",
  );
}
interface Span {
  readonly expression: Node;
  readonly literal: { readonly text: string };
}

/** `throw new Error(…)`: our own fault, printed by the command line and in no report. */
const isFault = (node: Node): boolean =>
  node.kind === SyntaxKind.NewExpression && /^(?:Range|Type)?Error$/.test(nameIn(node, "expression"));
/** `new OutOfRange(…)`: short words too, since all of them stand in the sentence of a refusal. */
const refusal = (node: Node): boolean =>
  node.kind === SyntaxKind.NewExpression && nameIn(node, "expression") === "OutOfRange";
const isMetadata = (node: Node): boolean =>
  node.kind === SyntaxKind.PropertyAssignment && NOT_TOLD.has(nameIn(node, "name"));
const nameIn = (node: Node, key: "expression" | "name"): string =>
  (node as Node & { expression?: { text?: string }; name?: { text?: string } })[key]?.text ?? "";

/** Words of tables, errors and profiles that results repeat. */
const TOLD_KEYS = new Set([
  "title",
  "notes",
  "note",
  "caveat",
  "caveats",
  "caution",
  "label",
  "labels",
  "group",
  "because",
  "name",
]);
export function fromYaml(): Recorded[] {
  return ["src/norms/tables", "src/compare/tables", "src/plan/profiles"].flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => file.endsWith(".yaml"))
      .flatMap((file) => {
        const found: Recorded[] = [];
        const walk = (value: unknown, key: string): void => {
          if (key === "source" || key === "checks") return;
          if (typeof value === "string") {
            if (TOLD_KEYS.has(key) && words(value) >= 1) found.push({ at: `${folder}/${file}:${key}`, text: value });
          } else if (Array.isArray(value)) for (const one of value) walk(one, key);
          else if (typeof value === "object" && value !== null)
            for (const [name, one] of Object.entries(value)) walk(one, name);
        };
        walk(parse(readFileSync(`${folder}/${file}`, "utf8")), "");
        return found;
      }),
  );
}

/** Answers that a session, a client or a laboratory may give, as conditions and cells repeat them. */
export function answers(): Recorded[] {
  const found = new Map<string, Recorded>();
  for (const file of readdirSync("schema", { recursive: true, encoding: "utf8" })) {
    if (!/^(?:blocks\/.*|client)\.schema\.json$/.test(file)) continue;
    const walk = (value: unknown): void => {
      if (Array.isArray(value)) for (const one of value) walk(one);
      else if (typeof value === "object" && value !== null)
        for (const [key, one] of Object.entries(value)) {
          if (key === "enum" && Array.isArray(one))
            for (const text of one)
              if (typeof text === "string" && words(text) > 0) found.set(text, { at: `schema/${file}`, text });
          walk(one);
        }
    };
    walk(JSON.parse(readFileSync(`schema/${file}`, "utf8")));
  }
  return [...found.values()];
}

/** A sentence with a number in each place, without the signs that join it to its neighbours: what a teller must know. */
export const sampleOf = ({ text }: Recorded): string => {
  let out = "";
  let depth = 0;
  for (const sign of text) {
    if (sign === "{" && depth++ === 0) out += "7";
    else if (sign === "}" && depth > 0) depth--;
    else if (depth === 0) out += sign;
  }
  return out.replace(/^[\s,;:.)]+|[\s,;:(]+$/g, "");
};

/** Those that a language cannot tell whole, each once. */
export function untoldIn(speech: Speech, all: readonly Recorded[]): Recorded[] {
  const seen = new Set<string>();
  return all.filter((one) => {
    const sample = sampleOf(one);
    if (seen.has(sample)) return false;
    seen.add(sample);
    let whole = true;
    speech.told(sample, (english) => {
      whole = false;
      return english;
    });
    return !whole;
  });
}
