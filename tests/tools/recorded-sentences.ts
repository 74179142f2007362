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
import { CITED } from "../report/said.js";

export interface Recorded {
  /** "src/plan/plan.ts:12" */
  readonly at: string;
  /** With {…} in its places. */
  readonly text: string;
}

const LAYERS = ["kernel", "derive", "norms", "validity", "compare", "plan"];
/** Metadata that is cited, computed with or checked, and never told. */
const NOT_TOLD = new Set(["source", "checks", "equation", "id", "unit", "loinc", "pattern", "range", "from"]);
/** Measures are named by their ids; worked checks, words about words, faults of a file and lines of a calendar are no results. */
const NOT_TOLD_FILES =
  /\/kernel\/(?:measures\/|speech\.|told\.)|\/check-[\w-]+\.ts$|generated|\/norms\/own-table\.ts$|\/plan\/calendar\.ts$/;
/** Arithmetic of a worked check that is kept beside it. */
const BY_HAND = /^(?:by hand|worked example|teaching page)\b|\brecomputed\b/;
/** Keys of records and ids put together: "{name}_heart_rate", "session.yaml calibration", "{formula.id} r{formula.revision}". */
const A_KEY =
  /^[\w.]*(?:\{[^{}]*\}[\w.|]*)*(?: r\{[^{}]*\})?$|^(?:(?:session|client|lab)\.yaml|\{[\w.]*file\}) [\w.]+$|^\w+ \{[\w.]*year\}$/;
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
  const files = program.getSourceFileNames().filter((file) => inLayers.test(file) && !NOT_TOLD_FILES.test(file));
  const found = files.flatMap((name): Recorded[] => {
    const file = program.getSourceFile(name);
    if (file === undefined) return [];
    const own: (Recorded & { readonly node: Node })[] = [];
    const held = constants(file);
    const short = name.slice(name.lastIndexOf("/src/") + 1);
    const add = (text: string, node: Node, least: number) => {
      if (
        words(text) >= least &&
        !/^[\w.-]+$/.test(text) &&
        !A_KEY.test(text) &&
        !BY_HAND.test(text) &&
        !text.startsWith(",")
      )
        own.push({ at: `${short}:${file.text.slice(0, node.end).split("\n").length}`, text, node });
    };
    const visit = (node: Node, least: number): undefined => {
      const inner =
        SKIPPED.has(node.kind) || isFault(node) || isMetadata(node) || isSource(node)
          ? undefined
          : refusal(node)
            ? 1
            : least;
      if (inner === undefined) return;
      for (const text of literalTexts(node, file.text, held)) add(text, node, inner);
      node.forEachChild((child) => visit(child, inner));
    };
    visit(file, A_SENTENCE);
    return own.flatMap(({ at, text, node }) => (held.within.has(node) ? [] : [{ at, text }]));
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

/** Texts of a literal with its places, one for each way its conditions can fall; none for every other node. */
function literalTexts(node: Node, source: string, held: Constants): readonly string[] {
  const one = node as Node & { text?: string; head?: { text: string }; templateSpans?: readonly Span[] };
  if (node.kind === SyntaxKind.StringLiteral || node.kind === SyntaxKind.NoSubstitutionTemplateLiteral)
    return [one.text ?? ""];
  if (node.kind !== SyntaxKind.TemplateExpression) return [];
  let texts: readonly string[] = [one.head?.text ?? ""];
  for (const { expression, literal } of one.templateSpans ?? []) {
    const ways = branches(expression, source, held);
    texts = texts.flatMap((text) => ways.map((place) => `${text}${place}${literal.text}`)).slice(0, MOST_BRANCHES);
  }
  return texts;
}
const MOST_BRANCHES = 16;

interface Constants {
  /** That hold a text or a choice of texts, by name; a name used twice is none. */
  readonly named: ReadonlyMap<string, Node>;
  /** Literals that stand within a longer text. */
  readonly within: Set<Node>;
}
function constants(file: Node): Constants {
  const found = new Map<string, Node>();
  const twice = new Set<string>();
  const visit = (node: Node): undefined => {
    const { initializer } = node as Node & { initializer?: Node };
    if (node.kind === SyntaxKind.VariableDeclaration && initializer !== undefined) {
      const name = nameIn(node, "name");
      if (TEXTS.has(initializer.kind) && found.has(name)) twice.add(name);
      else if (TEXTS.has(initializer.kind)) found.set(name, initializer);
    }
    node.forEachChild(visit);
  };
  visit(file);
  for (const name of twice) found.delete(name);
  return { named: found, within: new Set() };
}
const TEXTS: ReadonlySet<SyntaxKind> = new Set([
  SyntaxKind.TemplateExpression,
  SyntaxKind.ConditionalExpression,
  SyntaxKind.StringLiteral,
]);

/** What a place may hold as far as the source says it: the branches of a condition, else a place. */
function branches(node: Node, source: string, held: Constants): readonly string[] {
  const { whenTrue, whenFalse } = node as Node & { whenTrue?: Node; whenFalse?: Node };
  if (node.kind === SyntaxKind.ConditionalExpression && whenTrue !== undefined && whenFalse !== undefined)
    return [...branches(whenTrue, source, held), ...branches(whenFalse, source, held)];
  const { left, right, operatorToken } = node as Node & { left?: Node; right?: Node; operatorToken?: Node };
  if (operatorToken?.kind === SyntaxKind.QuestionQuestionToken && left !== undefined && right !== undefined)
    return [...branches(left, source, held), ...branches(right, source, held)];
  const named =
    node.kind === SyntaxKind.Identifier ? held.named.get((node as Node & { text: string }).text) : undefined;
  if (named !== undefined)
    return branches(named, source, { ...held, named: new Map([...held.named].filter(([, one]) => one !== named)) });
  const texts = literalTexts(node, source, held);
  if (texts.length > 0) {
    held.within.add(node);
    return texts;
  }
  return [`{${source.slice(node.pos, node.end).trim().replace(/\s+/g, " ").replaceAll(/[{}]/g, "")}}`];
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
/** A citation: { authors, year, title … }. */
const isSource = (node: Node): boolean =>
  node.kind === SyntaxKind.ObjectLiteralExpression &&
  ((node as Node & { properties?: readonly Node[] }).properties ?? []).some((one) => nameIn(one, "name") === "authors");
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

/** A sentence with a number in each place but those that add something to it, without the signs that join it to others. */
export const sampleOf = ({ text }: Recorded): string =>
  text
    .replace(/(?<=^|[.!?] )(?:\{[^{}]*\}\.? ?)+(?=\p{Lu})/gu, "")
    .replace(/(?<=[\p{L}.)])(?:\{[^{}]*\})+(?=\W|$)/gu, "")
    .replace(/\{[^{}]*\}/g, "7")
    .replace(/^[\s,;:.)]+|[\s,;:(]+$/g, "");

/** A part of a sentence is told where a sentence that holds it is. */
const within = (sample: string, { text }: Recorded): readonly string[] => [
  sample,
  `7 ${sample}`,
  `7${text.replace(/\{[^{}]*\}/g, "7")}`,
  `${sample} 7`,
  `7 ${sample} 7`,
];

/** Those that a language cannot tell whole, each once; a citation stays as it is. */
export function untoldIn(speech: Speech, all: readonly Recorded[]): Recorded[] {
  const seen = new Set<string>();
  const isTold = (sample: string): boolean => {
    let whole = true;
    speech.told(sample, (english) => {
      whole &&= /^7(?: 7)*$/.test(english) || CITED.test(english);
      return english;
    });
    return whole;
  };
  return all.filter((one) => {
    const sample = sampleOf(one);
    if (seen.has(sample)) return false;
    seen.add(sample);
    return !within(sample, one).some(isTold);
  });
}
