/** Where a session names a raw file or an instrument of lab.yaml, in any block. */
import type { Path } from "../kernel/document.js";
import { fileNameFault } from "./file-name.js";

/** Keys whose value is the key of an instrument in lab.yaml. */
const NAMES_INSTRUMENT = ["instrument", "device", "scanner", "caliper", "scales", "stadiometer"];

export interface SeriesReference {
  readonly file: string;
  /** Key of lab.yaml instruments; undefined when the mapping does not name one. */
  readonly instrument: string | undefined;
  /** Path of the mapping that holds both. */
  readonly path: Path;
}
export interface InstrumentReference {
  readonly instrument: string;
  readonly path: Path;
}

export function references(value: unknown): {
  readonly series: readonly SeriesReference[];
  readonly instruments: readonly InstrumentReference[];
} {
  const series: SeriesReference[] = [];
  const instruments: InstrumentReference[] = [];
  const walk = (node: object, path: Path): void => {
    if (Array.isArray(node)) {
      for (const [i, item] of node.entries()) if (isNode(item)) walk(item, [...path, i]);
      return;
    }
    const mapping = node as Readonly<Record<string, unknown>>;
    const instrument = typeof mapping.instrument === "string" ? mapping.instrument : undefined;
    for (const key of NAMES_INSTRUMENT) {
      const named = mapping[key];
      if (typeof named === "string") instruments.push({ instrument: named, path: [...path, key] });
    }
    if (typeof mapping.series === "string") series.push({ file: mapping.series, instrument, path });
    for (const [key, inner] of Object.entries(mapping)) if (isNode(inner)) walk(inner, [...path, key]);
  };
  if (isNode(value)) walk(value, []);
  return { series, instruments };
}

/** A mapping or a list: most of a document are single values, and nobody needs to know the way to them. */
const isNode = (value: unknown): value is object => typeof value === "object" && value !== null;

/** Names of the raw files a session uses, safe ones only, each once: what cli/ has to load before validation. */
export function seriesFiles(session: unknown): readonly string[] {
  const log = (session as { training_log?: { file?: unknown } } | undefined)?.training_log?.file;
  const names = [...references(session).series.map((s) => s.file), ...(typeof log === "string" ? [log] : [])];
  return [...new Set(names)].filter((name) => fileNameFault(name) === undefined);
}
