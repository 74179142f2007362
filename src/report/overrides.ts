/**
 * What a practice changes of its reports: partials of its own, words of its own, rules of style after ours. They place and
 * colour text and can do nothing else: a fault is answered with file and line, and nothing of them runs or reads.
 */
import Handlebars from "handlebars";
import { isMap, isScalar, LineCounter, parseDocument } from "yaml";
import type { WordTree } from "../kernel/speech.js";
import { cssFault, htmlFault } from "./override-text.js";
import type { ReportAssets } from "./render.js";

export interface OverrideFile {
  /** "report/partials/note.hbs" */
  readonly path: string;
  readonly text: string;
}
export interface Overrides {
  readonly partials: readonly OverrideFile[];
  /** The words of the language that is rendered. */
  readonly words?: OverrideFile;
  readonly theme?: OverrideFile;
}

export class OverrideFault extends Error {
  constructor(
    readonly path: string,
    readonly line: number | undefined,
    readonly found: string,
    readonly fix: string,
  ) {
    super(`${path}${line === undefined ? "" : `:${line}`}: ${found}. ${fix}`);
    this.name = "OverrideFault";
  }
}

/** The page carries the policy that keeps a report closed. */
const FIXED: ReadonlySet<string> = new Set(["page"]);

/** Our assets with the practice's partials and style in their place. Throws OverrideFault. */
export function withOverrides(assets: ReportAssets, { partials, theme }: Overrides): ReportAssets {
  const own = Object.fromEntries(
    partials.map((file) => [checkedName(file, assets.templates.partials), checkedPartial(file)]),
  );
  if (theme !== undefined) {
    const fault = cssFault(theme.text);
    if (fault) throw new OverrideFault(theme.path, fault.line, fault.found, fault.fix);
  }
  return {
    ...assets,
    templates: { ...assets.templates, partials: { ...assets.templates.partials, ...own } },
    css: theme === undefined ? assets.css : `${assets.css}\n/* ${theme.path} */\n${theme.text}`,
  };
}

const nameOf = (file: OverrideFile): string => (file.path.split("/").at(-1) ?? "").replace(/\.hbs$/, "");

function checkedName(file: OverrideFile, ours: Readonly<Record<string, string>>): string {
  const name = nameOf(file);
  if (FIXED.has(name))
    throw new OverrideFault(file.path, undefined, `${name} holds what keeps a report closed and is not replaced`, "");
  if (!Object.hasOwn(ours, name))
    throw new OverrideFault(
      file.path,
      undefined,
      `there is no partial ${name}`,
      `Partials that can be replaced: ${Object.keys(ours)
        .filter((one) => !FIXED.has(one))
        .join(", ")}.`,
    );
  return name;
}

function checkedPartial(file: OverrideFile): string {
  let program: hbs.AST.Program;
  try {
    program = Handlebars.parse(file.text);
  } catch (error) {
    const text = (error as Error).message;
    const line = /line (\d+)/i.exec(text)?.[1];
    const reason = text.split("\n").at(-1) ?? text;
    throw new OverrideFault(
      file.path,
      line === undefined ? undefined : Number(line),
      `it is no template: ${reason}`,
      "Mend that line.",
    );
  }
  const html = written(file, program);
  const fault = htmlFault(html);
  if (fault) throw new OverrideFault(file.path, fault.line, fault.found, fault.fix);
  return file.text;
}

/** The template's own text with every value as "\\uFFFC", lines kept. Throws for anything that is not placing text. */
function written(file: OverrideFile, program: hbs.AST.Program): string {
  const refuse = (node: hbs.AST.Node, found: string, fix: string): never => {
    throw new OverrideFault(file.path, node.loc?.start.line, found, fix);
  };
  const lines = (upTo: hbs.AST.Node, so: string): string => {
    const missing = (upTo.loc?.start.line ?? 1) - so.split("\n").length;
    return "\n".repeat(Math.max(0, missing));
  };
  const walk = (body: readonly hbs.AST.Statement[], before: string): string => {
    let out = before;
    for (const node of body) {
      out += lines(node, out);
      if (node.type === "ContentStatement") out += (node as hbs.AST.ContentStatement).value;
      else if (node.type === "MustacheStatement") {
        const { escaped, params, path } = node as hbs.AST.MustacheStatement;
        const name = (path as hbs.AST.PathExpression).original;
        if (params.length > 0) refuse(node, `{{${String(name)} …}} calls a helper`, "Only each and if are known.");
        if (!escaped && !/(?:^|\.)(?:svg|bar)$/.test(String(name)))
          refuse(node, `{{{${String(name)}}}} places text unescaped`, "Write two braces; only svg and bar take three.");
        out += "\uFFFC";
      } else if (node.type === "BlockStatement") {
        const { path, program: inner, inverse } = node as hbs.AST.BlockStatement;
        const name = String((path as hbs.AST.PathExpression).original);
        if (name !== "each" && name !== "if") refuse(node, `{{#${name}}} is no helper`, "Only each and if are known.");
        out = walk(inner.body, out);
        if (inverse) out = walk(inverse.body, out);
      } else if (node.type !== "CommentStatement" && node.type !== "PartialStatement")
        refuse(node, "a template places text, asks if, repeats each and calls partials", "Leave out anything else.");
    }
    return out;
  };
  return walk(program.body, "");
}

/** Our words with the practice's texts in their places. Throws OverrideFault for a text we do not have. */
export function withWords(ours: WordTree, file: OverrideFile | undefined): WordTree {
  if (file === undefined) return ours;
  const lines = new LineCounter();
  const document = parseDocument(file.text, { lineCounter: lines, uniqueKeys: true });
  const at = (offset: number | undefined) => (offset === undefined ? undefined : lines.linePos(offset).line);
  const [error] = document.errors;
  if (error)
    throw new OverrideFault(file.path, at(error.pos[0]), error.message.split("\n")[0] ?? "", "Mend that line.");
  const merge = (tree: WordTree, node: unknown, path: string): WordTree => {
    if (node === null) return tree;
    if (!isMap(node)) throw new OverrideFault(file.path, undefined, `${path || "the file"} is no group of texts`, "");
    const out: Record<string, string | WordTree> = { ...tree };
    for (const { key, value } of node.items) {
      const line = at((key as { range?: [number] }).range?.[0]);
      const name = String((key as { value?: unknown }).value);
      const old = Object.hasOwn(tree, name) ? tree[name] : undefined;
      const where = path === "" ? name : `${path}.${name}`;
      if (old === undefined && !OPEN.has(path) && !OPEN.has(where))
        throw new OverrideFault(
          file.path,
          line,
          `there is no text ${where}`,
          "See templates/words for those there are.",
        );
      if (typeof old === "object" || (old === undefined && OPEN.has(where))) out[name] = merge(old ?? {}, value, where);
      else if (isScalar(value) && typeof value.value === "string") out[name] = filled(value.value, old, where, line);
      else throw new OverrideFault(file.path, line, `${where} is no text`, "Write it in quotation marks.");
    }
    return out;
  };
  const filled = (text: string, old: string | undefined, where: string, line: number | undefined): string => {
    const known = new Set([...(old ?? "").matchAll(/\{(\w+)\}/g)].map((match) => match[1]));
    for (const [, place] of text.matchAll(/\{(\w+)\}/g))
      if (old !== undefined && !known.has(place))
        throw new OverrideFault(
          file.path,
          line,
          `${where} has a place {${place}} that nothing fills`,
          known.size === 0 ? "It has no places." : `It has: ${[...known].map((one) => `{${one}}`).join(", ")}.`,
        );
    return text;
  };
  return merge(ours, document.contents, "");
}

/** Groups of names that may grow: a practice may name what our words leave to the catalogue. */
const OPEN: ReadonlySet<string> = new Set(["measures", "plain", "columns", "conditions", "choices", "rules", "units"]);
