/**
 * Safe repairs of YAML files: a misspelt key, a decimal comma, missing quotes, a unit slip that only one unit explains.
 * Only the marked characters change, so that comments and layout stay as they are; nothing is written here.
 */
import type { Diagnostic, Repair } from "../kernel/diagnostic.js";
import { readYaml } from "../read/yaml.js";

export interface RepairedFile {
  readonly file: string;
  readonly before: string;
  readonly after: string;
  readonly repairs: number;
}

/** The files that repairs would change. A file that would no longer be YAML is left out. */
export function repairedFiles(
  diagnostics: readonly Diagnostic[],
  textOf: (file: string) => string | undefined,
): RepairedFile[] {
  const byFile = new Map<string, Repair[]>();
  for (const { at, repair } of diagnostics) if (repair) byFile.set(at.file, [...(byFile.get(at.file) ?? []), repair]);
  return [...byFile].flatMap(([file, repairs]): RepairedFile[] => {
    const before = textOf(file);
    if (before === undefined || !/\.ya?ml$/.test(file)) return [];
    const kept = withoutOverlap(repairs);
    const after = applied(before, kept);
    const broken = readYaml(file, after).diagnostics.length > 0;
    return broken || after === before ? [] : [{ file, before, after, repairs: kept.length }];
  });
}

/** In the order of the text; of two that overlap, the first. */
function withoutOverlap(repairs: readonly Repair[]): Repair[] {
  const kept: Repair[] = [];
  for (const repair of [...repairs].sort((a, b) => a.start - b.start || a.end - b.end))
    if (repair.start >= (kept.at(-1)?.end ?? 0)) kept.push(repair);
  return kept;
}

function applied(text: string, repairs: readonly Repair[]): string {
  let out = "";
  let at = 0;
  for (const { start, end, text: written } of repairs) {
    out += text.slice(at, start) + written;
    at = end;
  }
  return out + text.slice(at);
}
