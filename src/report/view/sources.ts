/** Methods and sources, from the metadata of the formulas, rules and tables that this visit used and of no others. */
import type { Source } from "../../kernel/formula.js";
import type { Context } from "./context.js";
import type { SourceView } from "./types.js";

export function sources(context: Context): SourceView[] {
  const { formulas, rules, tables, results } = context;
  const used = new Set<string>();
  for (const entry of results.entries) {
    if ("origin" in entry && entry.origin.kind === "formula") used.add(idOf(entry.origin.formula));
    if ("rule" in entry && entry.rule !== undefined) used.add(idOf(entry.rule));
    if (entry.kind === "quantity") for (const norm of entry.norms ?? []) used.add(norm.table);
  }
  return [
    ...formulas
      .filter((formula) => used.has(formula.id))
      .map((formula) =>
        view(
          context,
          `${formula.title} (${formula.id} r${formula.revision})`,
          formula.equation,
          formula.caveat ?? "",
          formula.source,
        ),
      ),
    ...rules
      .filter((rule) => used.has(rule.id))
      .map((rule) => view(context, `${rule.title} (${rule.id} r${rule.revision})`, "", "", rule.source)),
    ...tables
      .filter((table) => used.has(table.id))
      .map((table) =>
        view(context, `${table.measure} (${table.id})`, "", "", {
          ...table.source,
          where: table.source.where ?? "",
          journal: table.source.journal ?? "",
          doi: table.source.doi ?? "",
          verified: table.verified,
        }),
      ),
  ];
}

const idOf = (named: string): string => named.split(" ")[0] ?? named;

type Cited = Omit<Source, "verified"> & { readonly verified: string };
function view({ speech }: Context, title: string, equation: string, caveat: string, source: Cited): SourceView {
  const parts = [
    source.verified === "common practice" ? speech.say("sources.common_practice") : "",
    source.verified === "own" ? speech.say("sources.own") : "",
    [source.authors, source.year === null ? "" : `(${source.year})`].filter(Boolean).join(" "),
    source.title,
    source.journal ?? "",
    source.where,
    source.doi ? `doi:${source.doi}` : "",
  ];
  return {
    title,
    equation,
    hasEquation: equation !== "",
    caveat,
    hasCaveat: caveat !== "",
    reference: `${parts
      .filter((part) => part !== "")
      .map((part) => part.replace(/\.$/, ""))
      .join(". ")}.`,
    memory: source.verified === "memory",
  };
}
