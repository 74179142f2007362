/**
 * Which findings moved between two results of a visit, and why: an input edited, a series replaced, a formula revised,
 * another table, a changed choice. A cause is followed through the inputs down to where it began, so that one edited
 * weighing explains all that follows from it.
 */

import type { Entry, FormulaInput } from "../kernel/measure.js";
import { titleOf } from "../kernel/names.js";
import type { Results } from "../kernel/results.js";
import { toDecimals } from "../kernel/rounding.js";

export interface Move {
  readonly id: string;
  readonly title: string;
  readonly before: string;
  readonly after: string;
  /** Where it began, in words; more than one when several inputs moved. */
  readonly causes: readonly string[];
}

/** Moves in the order of the report. Header facts (choices, sources) are causes, not moves. */
export function moved(before: Results, after: Results): readonly Move[] {
  const old = new Map(before.entries.map((entry) => [entry.id, entry]));
  const now = new Map(after.entries.map((entry) => [entry.id, entry]));
  const general = generalCauses(before, after);
  const changed = (id: string) => said(old.get(id)) !== said(now.get(id));

  const causesOf = (id: string, seen: ReadonlySet<string>): string[] => {
    const was = old.get(id);
    const is = now.get(id);
    const own: string[] = [];
    const [ruleBefore, ruleNow] = [formulaOf(was), formulaOf(is)];
    if (was && is && ruleBefore !== ruleNow && ruleBefore !== undefined && ruleNow !== undefined)
      own.push(`formula ${ruleBefore} is now ${ruleNow}`);
    const key = keyOf(is) ?? keyOf(was);
    if (key !== undefined)
      own.push(`${key} ${was === undefined ? "was added" : is === undefined ? "was removed" : "was edited"}`);
    const inputs = new Map([...inputsOf(was), ...inputsOf(is)].map((input) => [input.measure ?? input.name, input]));
    for (const [name, input] of inputs) {
      if (seen.has(name)) continue;
      if (input.measure !== undefined && (old.has(name) || now.has(name))) {
        if (changed(name)) own.push(...causesOf(name, new Set([...seen, name])));
      } else {
        const a = textOf(was, name);
        const b = textOf(is, name);
        if (a !== b) own.push(`${name}: ${a ?? "absent"} is now ${b ?? "absent"}`);
      }
    }
    if (was && is && own.length === 0 && normText(was) !== normText(is)) own.push("its reference tables moved");
    return own.length > 0 ? own : general.length > 0 ? general : ["the program reads it differently"];
  };

  const ids = [...after.entries.map((e) => e.id), ...before.entries.map((e) => e.id).filter((id) => !now.has(id))];
  return ids
    .filter((id) => changed(id) || normText(old.get(id)) !== normText(now.get(id)))
    .map((id) => ({
      id,
      title: titleOf(id),
      ...contrast(old.get(id), now.get(id)),
      causes:
        old.has(id) === now.has(id) ? [...new Set(causesOf(id, new Set([id])))] : [appeared(now.has(id), general)],
    }));
}

/** An entry that is there on one side only: its inputs explain nothing that its name does not. */
const appeared = (isNew: boolean, general: readonly string[]): string =>
  general.length > 0
    ? `${general.join(", ")}: ${isNew ? "new findings" : "findings no longer there"}`
    : `the program ${isNew ? "gives these for the first time" : "no longer gives these"}`;

/** Causes that reach any number: choices, raw series, conditions. */
function generalCauses(before: Results, after: Results): string[] {
  const sha = (results: Results) => new Map(results.sources.map((s) => [s.file, s.sha256]));
  const [oldFiles, newFiles] = [sha(before), sha(after)];
  const files = [...new Set([...oldFiles.keys(), ...newFiles.keys()])].filter(
    (f) => oldFiles.get(f) !== newFiles.get(f),
  );
  const choices = movedChoices(before, after).map((text) => `choice ${text}`);
  const conditions = differing(before.conditions, after.conditions).map(([k, a, b]) => `${k}: ${a} is now ${b}`);
  const series = files.filter((file) => !file.endsWith(".yaml")).map((file) => `${file} was replaced`);
  const session = files.filter((file) => file.endsWith(".yaml")).map((file) => `${file} was edited`);
  const all = [...choices, ...series, ...conditions];
  return all.length > 0 ? all : session;
}

/** Choices that differ, "lactate_definition: fixed-4 is now fixed-2": the results are no longer those first reported. */
export const movedChoices = (before: Results, after: Results): readonly string[] =>
  differing(before.choices, after.choices).map(([key, was, is]) => `${key}: ${was} is now ${is}`);

const differing = (a: object, b: object): [string, string, string][] => {
  const [x, y] = [a as Record<string, unknown>, b as Record<string, unknown>];
  return [...new Set([...Object.keys(x), ...Object.keys(y)])]
    .filter((key) => String(x[key]) !== String(y[key]))
    .map((key) => [key, String(x[key] ?? "absent"), String(y[key] ?? "absent")]);
};

const keyOf = (entry: Entry | undefined): string | undefined =>
  (entry?.kind === "quantity" || entry?.kind === "table") && entry.origin.kind === "key" ? entry.origin.key : undefined;

function formulaOf(entry: Entry | undefined): string | undefined {
  if (entry?.kind === "quantity" || entry?.kind === "table")
    return entry.origin.kind === "formula" ? entry.origin.formula : undefined;
  return entry?.kind === "judgement" || entry?.kind === "remark" ? entry.rule : undefined;
}

function inputsOf(entry: Entry | undefined): readonly FormulaInput[] {
  switch (entry?.kind) {
    case "quantity":
    case "table":
      return entry.origin.kind === "formula" ? entry.origin.inputs : [];
    case "judgement":
      return entry.inputs ?? [];
    case "change":
      return [
        { name: entry.measure, text: String(entry.now), measure: entry.measure },
        { name: `the visit of ${entry.since}`, text: String(entry.before) },
      ];
    default:
      return [];
  }
}
const textOf = (entry: Entry | undefined, name: string) => inputsOf(entry).find((input) => input.name === name)?.text;

/** What an entry says, without norms: the text whose change is a move. */
function said(entry: Entry | undefined): string {
  if (entry === undefined) return "";
  if (entry.kind === "quantity")
    return `${toDecimals(entry.value, entry.decimals)} ${entry.unit} ${JSON.stringify(entry.error ?? "")} ${entry.note ?? ""}`;
  return JSON.stringify(entry);
}
const normText = (entry: Entry | undefined) => (entry?.kind === "quantity" ? JSON.stringify(entry.norms ?? []) : "");

/** Short form for a line. */
function shown(entry: Entry | undefined): string {
  switch (entry?.kind) {
    case undefined:
      return "absent";
    case "quantity":
      return `${toDecimals(entry.value, entry.decimals)} ${entry.unit}`;
    case "not given":
      return "not given";
    case "judgement":
      return entry.verdict;
    case "table":
      return `table of ${entry.rows.length} rows`;
    case "remark":
      return `${entry.severity}: ${entry.found}`;
    case "change":
      return `${toDecimals(entry.change, entry.decimals)} ${entry.unit}, ${entry.verdict}`;
  }
}

/** Both short forms; where they read alike, the second says what else moved. */
function contrast(was: Entry | undefined, is: Entry | undefined): { readonly before: string; readonly after: string } {
  const [before, after] = [shown(was), shown(is)];
  if (before !== after) return { before, after };
  if (was?.kind === "table" && is?.kind === "table") {
    const rows = is.rows.filter((row, i) => JSON.stringify(row) !== JSON.stringify(was.rows[i])).length;
    return {
      before,
      after: rows === 0 ? "same rows, other heads or note" : `${rows} ${rows === 1 ? "row differs" : "rows differ"}`,
    };
  }
  if (is?.kind === "quantity")
    return {
      before,
      after: normText(was) === normText(is) ? "same, its error or note moved" : "same, its place among others moved",
    };
  return { before, after: is?.kind === "judgement" ? "same, for another reason" : "same, other figures behind it" };
}

/** Moves as lines, grouped by cause, the most telling first. */
export function movesText(moves: readonly Move[], markdown: boolean): string {
  const groups = new Map<string, Move[]>();
  for (const move of moves) {
    const cause = move.causes.join("; ");
    groups.set(cause, [...(groups.get(cause) ?? []), move]);
  }
  const width = Math.max(...moves.map((m) => m.id.length), 0);
  return [...groups]
    .map(([cause, list]) =>
      markdown
        ? [
            `**${cause}**`,
            "",
            "| measure | before | now |",
            "|---|---|---|",
            ...list.map((m) => `| ${m.title} | ${cell(m.before)} | ${cell(m.after)} |`),
          ].join("\n")
        : [`  ${cause}`, ...list.map((m) => `    ${m.id.padEnd(width)}  ${m.before} → ${m.after}`)].join("\n"),
    )
    .join(markdown ? "\n\n" : "\n");
}
const cell = (text: string) => text.replaceAll("|", "\\|").replaceAll("\n", " ");
