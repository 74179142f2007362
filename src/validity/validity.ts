/**
 * The validity stage: every rule looks at the visit and its values, and every finding becomes a remark.
 *
 *     entries → rules → remarks → withhold what a fatal finding touches, and what was computed from it
 *
 * A fatal finding takes a value out of use: the value becomes "withheld, because …", and so does everything whose
 * origin names it as an input, however many steps away. Nothing is lost by that: the remark writes down each number it
 * took away. Tables stay as the record of what was found and carry the reason as their note.
 *
 * All rules judge the same values, those before anything is withheld, so their order changes no finding.
 */
import type { Entry, FormulaInput, Remark } from "../kernel/measure.js";
import { catalogue, type MeasureId } from "../kernel/measures.js";
import { toDecimals } from "../kernel/rounding.js";
import type { Finding, Findings, Rule } from "../kernel/rule.js";
import type { Visit } from "../kernel/visit.js";

/** Entries with the remarks of all rules added after them. The rules are an argument: the registry is the pipeline's. */
export function validity(entries: readonly Entry[], visit: Visit, rules: readonly Rule[]): readonly Entry[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const findings: Findings = {
    visit,
    value(id) {
      const entry = byId.get(id);
      return entry?.kind === "quantity" ? entry.value : undefined;
    },
    entry: (id) => byId.get(id),
  };
  const remarks = rules.flatMap((rule) => rule.judge(findings).map((finding, i) => toRemark(rule, finding, i)));
  const reasons = new Map<string, Remark>();
  for (const remark of remarks)
    if (remark.severity === "fatal")
      for (const id of withDependents(remark.affects, entries)) if (!reasons.has(id)) reasons.set(id, remark);
  return [
    ...entries.map((entry) => {
      const remark = reasons.get(entry.id);
      return remark === undefined ? entry : withhold(entry, remark, reasons);
    }),
    ...remarks.map((remark) => rememberNumbers(remark, entries, reasons)),
  ];
}

function toRemark(rule: Rule, finding: Finding, index: number): Remark {
  const { severity, found, limit, because, affects } = finding;
  const id = `remark_${rule.id.replaceAll("-", "_")}${index === 0 ? "" : `_${index + 1}`}`;
  return { kind: "remark", id, severity, found, limit, because, affects, rule: `${rule.id} r${rule.revision}` };
}

const inputsOf = (entry: Entry): readonly FormulaInput[] => {
  if (entry.kind === "judgement") return entry.inputs ?? [];
  if ((entry.kind === "quantity" || entry.kind === "table") && entry.origin.kind === "formula")
    return entry.origin.inputs;
  return [];
};

/** The ids and every entry that was computed from one of them, directly or through others. */
function withDependents(ids: readonly string[], entries: readonly Entry[]): ReadonlySet<string> {
  const reached = new Set(ids);
  for (let size = -1; size !== reached.size; ) {
    size = reached.size;
    for (const entry of entries)
      if (inputsOf(entry).some(({ measure }) => measure !== undefined && reached.has(measure))) reached.add(entry.id);
  }
  return reached;
}

const titleOf = (id: string): string => catalogue[id as MeasureId]?.title ?? id;
/** A title inside a sentence; one that begins with a symbol (VO2, FEV1) keeps its capitals. */
const lowered = (id: string): string => titleOf(id).replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase());
const saidUnit = (unit: string): string => (unit === "ratio" ? "" : unit === "1/min" ? "per minute" : unit);

function withhold(entry: Entry, remark: Remark, reasons: ReadonlyMap<string, Remark>): Entry {
  const below = inputsOf(entry).flatMap(({ measure }) =>
    measure !== undefined && reasons.has(measure) ? [measure] : [],
  );
  const direct = remark.affects.includes(entry.id);
  const cause = direct ? "" : ` (it rests on ${below.map(lowered).join(", ")})`;
  const because = `withheld, because ${remark.found}${cause}; asked for: ${remark.limit}`;
  if (entry.kind === "quantity" || entry.kind === "judgement") return { kind: "not given", id: entry.id, because };
  if (entry.kind === "table")
    return { ...entry, note: [entry.note, `Not to be used: ${because}.`].filter(Boolean).join(" ") };
  return entry;
}

/** A fatal remark names each number and verdict that it, and no remark before it, took out of use. */
function rememberNumbers(remark: Remark, entries: readonly Entry[], reasons: ReadonlyMap<string, Remark>): Remark {
  const taken = entries.flatMap((entry) => {
    if (reasons.get(entry.id) !== remark) return [];
    if (entry.kind === "quantity")
      return [`${titleOf(entry.id)} ${toDecimals(entry.value, entry.decimals)} ${saidUnit(entry.unit)}`.trim()];
    return entry.kind === "judgement" ? [`${titleOf(entry.id)}: ${entry.verdict}`] : [];
  });
  return taken.length === 0 ? remark : { ...remark, found: `${remark.found}. Withheld: ${taken.join("; ")}` };
}
