/**
 * Partials of a practice, read before they are used: they place text, ask if, repeat each and call other partials. Nothing
 * else is let through, so that no template computes, reaches into the program, or calls itself for ever.
 */
import Handlebars from "handlebars";
import { OverrideFault, type OverrideFile } from "./override-fault.js";
import { htmlFault } from "./override-text.js";

/** The page carries the policy that keeps a report closed. */
const FIXED: ReadonlySet<string> = new Set(["page"]);
/** Names that lead from a value to the language it is written in. */
const INNER = /^(?:constructor|prototype|__\w+__)$/;
/** Blocks in blocks: ours go four deep. */
const DEEPEST = 30;
/** Values, blocks and calls of one partial: ours have 30. The reader of templates is slow where very many are nested. */
const MOST_TAGS = 1000;

interface Call {
  readonly name: string;
  readonly line: number;
}

/** The partials by name. Throws OverrideFault. */
export function checkedPartials(
  files: readonly OverrideFile[],
  ours: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const own = new Map<string, { readonly file: OverrideFile; readonly calls: readonly Call[] }>();
  for (const file of files) own.set(checkedName(file, ours), { file, calls: checkedPartial(file, ours) });
  const callsOf = (name: string): readonly string[] =>
    own.get(name)?.calls.map((call) => call.name) ??
    [...(ours[name] ?? "").matchAll(/\{\{>\s*([\w-]+)/g)].map(([, called]) => called as string);
  for (const [name, { file, calls }] of own)
    for (const call of calls) {
      const way = wayTo(name, call.name, callsOf, new Set());
      if (way !== undefined)
        throw new OverrideFault(
          file.path,
          call.line,
          `{{> ${call.name}}} leads back to where it stands: ${[name, ...way].join(" → ")}`,
          "A partial that calls itself has no end; take one of the calls out.",
        );
    }
  return Object.fromEntries([...own].map(([name, { file }]) => [name, file.text]));
}

/** The calls from one partial to another, both named; undefined when there is no way. */
function wayTo(
  goal: string,
  from: string,
  callsOf: (name: string) => readonly string[],
  seen: Set<string>,
): readonly string[] | undefined {
  if (from === goal) return [goal];
  if (seen.has(from)) return undefined;
  seen.add(from);
  for (const next of callsOf(from)) {
    const way = wayTo(goal, next, callsOf, seen);
    if (way !== undefined) return [from, ...way];
  }
  return undefined;
}

const replaceable = (ours: Readonly<Record<string, string>>): string =>
  Object.keys(ours)
    .filter((one) => !FIXED.has(one))
    .join(", ");

function checkedName(file: OverrideFile, ours: Readonly<Record<string, string>>): string {
  const name = (file.path.split("/").at(-1) ?? "").replace(/\.hbs$/, "");
  if (FIXED.has(name))
    throw new OverrideFault(file.path, undefined, `${name} holds what keeps a report closed and is not replaced`, "");
  if (!Object.hasOwn(ours, name))
    throw new OverrideFault(
      file.path,
      undefined,
      `there is no partial ${name}`,
      `Partials that can be replaced: ${replaceable(ours)}.`,
    );
  return name;
}

/** The partials it calls. */
function checkedPartial(file: OverrideFile, ours: Readonly<Record<string, string>>): readonly Call[] {
  const tags = file.text.split("{{", MOST_TAGS + 2);
  if (tags.length > MOST_TAGS + 1)
    throw new OverrideFault(
      file.path,
      tags.slice(0, -1).join("").split("\n").length,
      `more than ${MOST_TAGS} values, blocks and calls stand in it`,
      "Repeat with each, or call partials.",
    );
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
  const { html, calls } = written(file, program, ours);
  const fault = htmlFault(html);
  if (fault) throw new OverrideFault(file.path, fault.line, fault.found, fault.fix);
  return calls;
}

/** The template's own text with every value as "\uFFFC", lines kept, and its calls. Throws for anything but placing text. */
function written(
  file: OverrideFile,
  program: hbs.AST.Program,
  ours: Readonly<Record<string, string>>,
): { readonly html: string; readonly calls: readonly Call[] } {
  const pieces: string[] = [];
  const calls: Call[] = [];
  let line = 1;
  const put = (text: string) => {
    pieces.push(text);
    for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) line++;
  };
  const refuse = (node: hbs.AST.Node, found: string, fix: string): never => {
    throw new OverrideFault(file.path, node.loc?.start.line, found, fix);
  };
  /** A value is the name of something the partial was given. */
  const value = (node: hbs.AST.Expression, at: hbs.AST.Node): string => {
    if (node.type !== "PathExpression")
      return refuse(at, "a value is computed here", "Values are named as they are given: {{name}}, {{part.name}}.");
    const { original, parts } = node as hbs.AST.PathExpression;
    if (parts.some((part) => INNER.test(part)))
      refuse(at, `{{${original}}} leads into the program`, "Only values that the partial is given are known.");
    return original;
  };
  const named = (hash: hbs.AST.Hash | undefined, at: hbs.AST.Node) => {
    for (const { value: given } of hash?.pairs ?? [])
      if (!/^(?:String|Number|Boolean)Literal$/.test(given.type)) value(given, at);
  };
  const walk = (body: readonly hbs.AST.Statement[], depth: number): void => {
    for (const node of body) {
      put("\n".repeat(Math.max(0, (node.loc?.start.line ?? 1) - line)));
      if (node.type === "ContentStatement") put((node as hbs.AST.ContentStatement).value);
      else if (node.type === "MustacheStatement") {
        const { escaped, params, hash, path } = node as hbs.AST.MustacheStatement;
        const name = value(path, node);
        if (params.length > 0 || hash !== undefined)
          refuse(node, `{{${name} …}} calls a helper`, "Only each and if are known.");
        if (!escaped && !/(?:^|\.)(?:svg|bar)$/.test(name))
          refuse(node, `{{{${name}}}} places text unescaped`, "Write two braces; only svg and bar take three.");
        put("\uFFFC");
      } else if (node.type === "BlockStatement") {
        const { path, params, hash, program: inner, inverse } = node as hbs.AST.BlockStatement;
        const name = value(path, node);
        if (name !== "each" && name !== "if") refuse(node, `{{#${name}}} is no helper`, "Only each and if are known.");
        if (params.length !== 1 || hash !== undefined)
          refuse(node, `{{#${name}}} takes one value`, `Write {{#${name} value}}.`);
        value(params[0] as hbs.AST.Expression, node);
        if (depth >= DEEPEST)
          refuse(node, `blocks stand in each other more than ${DEEPEST} deep`, "Call a partial instead.");
        walk(inner.body, depth + 1);
        if (inverse) walk(inverse.body, depth + 1);
      } else if (node.type === "PartialStatement") {
        const { name, params, hash } = node as hbs.AST.PartialStatement;
        const called = value(name as hbs.AST.Expression, node);
        if (!Object.hasOwn(ours, called) || FIXED.has(called))
          refuse(node, `there is no partial ${called} to call`, `There are: ${replaceable(ours)}.`);
        for (const given of params) value(given, node);
        named(hash, node);
        calls.push({ name: called, line: node.loc.start.line });
      } else if (node.type !== "CommentStatement")
        refuse(node, "a template places text, asks if, repeats each and calls partials", "Leave out anything else.");
    }
  };
  walk(program.body, 0);
  return { html: pieces.join(""), calls };
}
