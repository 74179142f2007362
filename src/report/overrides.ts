/**
 * What a practice changes of its reports: partials of its own, words of its own, rules of style after ours. They place and
 * colour text and can do nothing else: a fault is answered with file and line, and nothing of them runs or reads.
 */
import { isMap, isScalar, LineCounter, parseDocument } from "yaml";
import type { WordTree } from "../kernel/speech.js";
import { OverrideFault, type OverrideFile } from "./override-fault.js";
import { checkedPartials } from "./override-partials.js";
import { cssFault } from "./override-text.js";
import type { ReportAssets } from "./render.js";

export interface Overrides {
  readonly partials: readonly OverrideFile[];
  /** The words of the language that is rendered. */
  readonly words?: OverrideFile;
  readonly theme?: OverrideFile;
}

/** Our assets with the practice's partials and style in their place. Throws OverrideFault. */
export function withOverrides(assets: ReportAssets, { partials, theme }: Overrides): ReportAssets {
  const own = checkedPartials(partials, assets.templates.partials);
  const fault = theme && cssFault(theme.text);
  if (theme && fault) throw new OverrideFault(theme.path, fault.line, fault.found, fault.fix);
  return {
    ...assets,
    templates: { ...assets.templates, partials: { ...assets.templates.partials, ...own } },
    ...(theme === undefined ? {} : { ownCss: `\n/* ${theme.path} */\n${theme.text}` }),
  };
}

/** Our words with the practice's texts in their places. Throws OverrideFault for a text we do not have. */
export function withWords(ours: WordTree, file: OverrideFile | undefined): WordTree {
  if (file === undefined) return ours;
  const lines = new LineCounter();
  const document = parseDocument(file.text, { lineCounter: lines, uniqueKeys: true });
  const at = (offset: number | undefined) => (offset === undefined ? undefined : lines.linePos(offset).line);
  const [error] = document.errors;
  if (error)
    throw new OverrideFault(
      file.path,
      at(error.pos[0]),
      /call stack/.test(error.message)
        ? "groups stand in each other without end"
        : (error.message.split("\n")[0] ?? ""),
      "Mend that line.",
    );
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
const OPEN: ReadonlySet<string> = new Set([
  "measures",
  "plain",
  "columns",
  "conditions",
  "choices",
  "rules",
  "units",
  "sentences",
]);
