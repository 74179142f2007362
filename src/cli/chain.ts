/**
 * The chain behind one number: value, formula with source and check, inputs, and so on down to session keys. Works on
 * a results file alone, with the formulas' own descriptions beside it.
 */

import type { AnyFormula, Source } from "../kernel/formula.js";
import type { Entry, Origin } from "../kernel/measure.js";
import { titleOf } from "../kernel/names.js";
import type { Results } from "../kernel/results.js";
import { toDecimals } from "../kernel/rounding.js";

export interface Link {
  readonly id: string;
  readonly title: string;
  /** "41.8 mL/kg/min", "not given", "VO2peak". */
  readonly found: string;
  readonly because?: string;
  /** Session key, when the value was typed or measured. */
  readonly key?: string;
  /** Where the key stands, file:line. */
  readonly at?: string;
  /** Blocks of the practice's files it was read from, where no single key says it. */
  readonly read?: readonly { readonly key: string; readonly at: string }[];
  readonly formula?: {
    readonly name: string;
    readonly title?: string;
    readonly equation?: string;
    readonly source?: string;
    readonly check?: string;
  };
  /** Inputs that are not entries of their own: a window, a choice, a file. */
  readonly given: readonly { readonly name: string; readonly text: string; readonly at?: string }[];
  readonly error?: string;
  readonly norms: readonly string[];
  readonly remarks: readonly string[];
  readonly inputs: readonly Link[];
}

/** Builds the chain of `id`. Returns undefined when the results have no such entry. */
export function chainOf(results: Results, id: string, formulas: readonly AnyFormula[]): Link | undefined {
  const byId = new Map(results.entries.map((entry) => [entry.id, entry]));
  const known = new Map(formulas.map((formula) => [formula.id, formula]));
  const link = (entry: Entry, above: readonly string[]): Link => {
    const origin = originOf(entry);
    const inputs = origin.kind === "formula" ? origin.inputs : [];
    const name = origin.kind === "formula" ? origin.formula : "";
    const formula = known.get(name.replace(/ r\d+$/, ""));
    const below = inputs.flatMap((input) => {
      const target = input.measure === undefined ? undefined : byId.get(input.measure);
      return target && !above.includes(target.id) ? [link(target, [...above, target.id])] : [];
    });
    const shown = new Set(below.map((b) => b.id));
    return {
      id: entry.id,
      title: titleOf(entry.id),
      ...foundIn(entry),
      ...(origin.kind === "key" && origin.key !== "" ? { key: origin.key } : {}),
      ...(name === ""
        ? {}
        : {
            formula: {
              name,
              ...(formula
                ? { title: formula.title, equation: formula.equation, source: sourceText(formula.source) }
                : {}),
              ...(formula?.checks[0] ? { check: formula.checks[0].from } : {}),
            },
          }),
      given: inputs.filter((input) => !shown.has(input.name)).map(({ name, text }) => ({ name, text })),
      ...errorOf(entry),
      norms: normsOf(entry),
      remarks: results.entries.flatMap((r) =>
        r.kind === "remark" && r.affects.includes(entry.id)
          ? [`${r.severity}: ${r.found} (limit ${r.limit}; ${r.rule})`]
          : [],
      ),
      inputs: below,
    };
  };
  const entry = byId.get(id);
  return entry && link(entry, [id]);
}

export const sourceText = (source: Source): string =>
  [
    `${source.authors}${source.year === null ? "" : ` (${source.year})`}. ${source.title}`,
    source.journal,
    source.doi && `doi:${source.doi}`,
    source.where,
    provenance(source),
  ]
    .filter((part) => part)
    .join(". ");

const provenance = (source: Source): string =>
  ({
    seen: "",
    memory: "From memory, to be checked against the source",
    "common practice": "Common practice, no source",
    own: "A rule of this program",
  })[source.verified];

function originOf(entry: Entry): Origin {
  switch (entry.kind) {
    case "quantity":
    case "table":
      return entry.origin;
    case "judgement":
      return entry.rule || entry.inputs
        ? { kind: "formula", formula: entry.rule ?? "", inputs: entry.inputs ?? [] }
        : { kind: "key", key: "" };
    case "change":
      return {
        kind: "formula",
        formula: "change r1",
        inputs: [
          { name: entry.measure, text: String(entry.now), measure: entry.measure },
          { name: `${entry.measure} on ${entry.since}`, text: toDecimals(entry.before, entry.decimals) },
        ],
      };
    default:
      return { kind: "key", key: "" };
  }
}

function foundIn(entry: Entry): { readonly found: string; readonly because?: string } {
  switch (entry.kind) {
    case "quantity":
      return {
        found: `${toDecimals(entry.value, entry.decimals)} ${entry.unit}`,
        ...(entry.note ? { because: entry.note } : {}),
      };
    case "not given":
      return { found: "not given", because: entry.because };
    case "judgement":
      return { found: entry.verdict, because: entry.because };
    case "table":
      return { found: `table of ${entry.rows.length} rows`, ...(entry.note ? { because: entry.note } : {}) };
    case "remark":
      return { found: `${entry.severity}: ${entry.found}`, because: entry.because };
    case "change":
      return {
        found: `${toDecimals(entry.change, entry.decimals)} ${entry.unit}: ${entry.verdict}`,
        because: entry.because,
      };
  }
}

function errorOf(entry: Entry): { readonly error?: string } {
  if (entry.kind !== "quantity" || entry.error === undefined) return {};
  const { typical, low, high, from } = entry.error;
  const parts = [
    typical === undefined ? "" : `typical error ${toDecimals(typical, entry.decimals + 1)} ${entry.unit}`,
    low === undefined || high === undefined
      ? ""
      : `95 % interval ${toDecimals(low, entry.decimals)} to ${toDecimals(high, entry.decimals)} ${entry.unit}`,
  ];
  return { error: `${parts.filter((part) => part).join(", ")} (${from})` };
}

function normsOf(entry: Entry): string[] {
  if (entry.kind !== "quantity") return [];
  return (entry.norms ?? []).map((norm) =>
    norm.notGiven !== undefined
      ? `${norm.table}: not given, because ${norm.notGiven}`
      : `${norm.table}${norm.group ? `, ${norm.group}` : ""}: ${[
          norm.percentile === undefined ? "" : `percentile ${norm.percentile}`,
          norm.z === undefined ? "" : `z ${norm.z}`,
          norm.percentPredicted === undefined ? "" : `${norm.percentPredicted} % of predicted`,
          norm.category ?? "",
          norm.note ?? "",
        ]
          .filter((part) => part)
          .join(", ")}`,
  );
}

const inside = (at: string | undefined): string => (at === undefined ? "" : `  (${at})`);

/** The chain as indented text. */
export function chainText(link: Link, indent = 0): string {
  const pad = " ".repeat(indent);
  const lines = [
    `${pad}${link.id}  ${link.found}${link.title.toLowerCase() === link.id.replaceAll("_", " ") ? "" : `  (${link.title})`}`,
    ...(link.because ? [`${pad}  because  ${link.because}`] : []),
    ...(link.key ? [`${pad}  from     ${link.key}${inside(link.at)}`] : []),
    ...(link.formula
      ? [`${pad}  formula  ${link.formula.name}${link.formula.equation ? `: ${link.formula.equation}` : ""}`]
      : []),
    ...(link.formula?.source ? [`${pad}  source   ${link.formula.source}`] : []),
    ...(link.formula?.check ? [`${pad}  checked  ${link.formula.check}`] : []),
    ...link.given.map((g) => `${pad}  with     ${g.name}: ${g.text}${inside(g.at)}`),
    ...(link.read ?? []).map(({ key, at }) => `${pad}  read in  ${key}${inside(at)}`),
    ...(link.error ? [`${pad}  error    ${link.error}`] : []),
    ...link.norms.map((norm) => `${pad}  norm     ${norm}`),
    ...link.remarks.map((remark) => `${pad}  remark   ${remark}`),
  ];
  return [...lines, ...link.inputs.map((input) => chainText(input, indent + 4))].join("\n");
}
