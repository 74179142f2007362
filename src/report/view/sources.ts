/**
 * Methods and sources, from the metadata of the formulas, rules and tables that this visit used and of no others. A work
 * that serves several methods is printed once, and each method names its number and the place in it.
 */
import type { Source } from "../../kernel/formula.js";
import { type Context, english, nameOf, opening, told } from "./context.js";
import type { MethodView, SourcesView } from "./types.js";

type Cited = Omit<Source, "verified"> & { readonly verified: string };

export function sources(context: Context): SourcesView {
  const { formulas, rules, tables, results } = context;
  const used = new Set<string>();
  for (const entry of results.entries) {
    if ("origin" in entry && entry.origin.kind === "formula") used.add(idOf(entry.origin.formula));
    if ("rule" in entry && entry.rule !== undefined) used.add(idOf(entry.rule));
    if (entry.kind === "quantity") for (const norm of entry.norms ?? []) used.add(norm.table);
  }
  const works = new Map<string, number>();
  const method = (title: string, id: string, equation: string, caveat: string, source: Cited): MethodView => ({
    title: told(context, title),
    language: context.speech.language,
    id,
    equation: english(context, equation),
    hasEquation: equation !== "",
    caveat: told(context, caveat),
    hasCaveat: caveat !== "",
    reference: referenceTo(context, source, works),
  });
  const methods = [
    ...formulas
      .filter((one) => used.has(one.id))
      .map((one) => method(one.title, `${one.id} r${one.revision}`, one.equation, one.caveat ?? "", one.source)),
    ...rules
      .filter((one) => used.has(one.id))
      .map((one) => method(one.title, `${one.id} r${one.revision}`, "", "", one.source)),
    ...tables
      .filter((one) => used.has(one.id))
      .map((one) => {
        const { journal, doi, where } = one.source;
        const source = { ...one.source, where: where ?? "", journal: journal ?? "", doi: doi ?? "" };
        return method(opening(measured(context, one.measure)), one.id, "", "", { ...source, verified: one.verified });
      }),
  ];
  return { methods, works: [...works.keys()].map((text) => ({ text: english(context, text) })) };
}

const measured = (context: Context, ids: string): string =>
  context.speech.list([...new Set(ids.split(" "))].map((id) => nameOf(context, id)));

const idOf = (named: string): string => named.split(" ")[0] ?? named;

/** "[3] Table 2", or in words where nothing is published; a source from memory says so. */
function referenceTo(context: Context, source: Cited, works: Map<string, number>): string {
  const { speech } = context;
  if (source.verified === "common practice" || source.verified === "own") {
    const kind = speech.say(source.verified === "own" ? "sources.own" : "sources.common_practice");
    // A formula that is common practice often says no more of its place.
    return joined(source.where === source.verified ? [kind] : [kind, english(context, opening(source.where))]);
  }
  const work = joined([
    [source.authors, source.year === null ? "" : `(${source.year})`].filter(Boolean).join(" "),
    source.title,
    source.journal ?? "",
    source.doi ? `doi:${source.doi}` : "",
  ]);
  const number = works.get(work) ?? works.size + 1;
  works.set(work, number);
  const memory = source.verified === "memory" ? ` ${speech.say("report.memory")}` : "";
  return `[${number}]${source.where === "" ? "" : ` ${english(context, joined([source.where]))}`}${memory}`;
}

const joined = (parts: readonly string[]): string =>
  `${parts
    .filter((part) => part !== "")
    .map((part) => part.replace(/\.$/, ""))
    .join(". ")}.`;

/** A table of reference values as a reader knows it: "Kaminsky and others 2015", or its id where it has no authors. */
export function shortCitation({ tables, speech }: Pick<Context, "tables" | "speech">, id: string): string {
  const source = tables.find((table) => table.id === id)?.source;
  if (source === undefined || source.authors === "") return id;
  const authors = source.authors.split(/[,;]\s*/).filter((author) => author !== "");
  const first = (authors[0] ?? "").replace(/\s+[A-Z]{1,3}$/, "");
  const year = source.year === null ? "" : ` ${source.year}`;
  return `${authors.length > 1 ? speech.say("sources.and_others", { first }) : first}${year}`;
}
