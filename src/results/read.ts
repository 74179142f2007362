/**
 * results.yaml back into Results: the inverse of write.ts, kept next to it. Throws Error with a sentence when a file
 * was not written by this program (edited by hand, cut short, a merge conflict left in it).
 */
import { parse } from "yaml";
import type {
  Inputs,
  ResultsChange,
  ResultsEntry,
  ResultsFile,
  ResultsNorm,
  ResultsQuantity,
  ResultsTable,
} from "../kernel/generated/results.js";
import type { Change, Column, Entry, FormulaInput, NormPosition, Origin, Quantity } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { parseWritten } from "./parse.js";

const HEADER = ["waymark", "client", "visit", "person", "sources", "choices", "conditions"];

export function readResults(text: string): Results {
  const document = (parseWritten(text) ?? parse(text, { maxAliasCount: 0 })) as ResultsFile | null;
  if (document?.waymark !== "results 1")
    throw new Error("this is not a results file of a known format (no `waymark: results 1`)");
  const { visit, person } = document;
  return {
    client: document.client,
    sex: person.sex,
    date: visit.date,
    ...(visit.label === undefined ? {} : { label: visit.label }),
    purpose: visit.purpose,
    ageYears: person.age_years,
    sources: document.sources,
    choices: document.choices as unknown as Results["choices"],
    conditions: document.conditions ?? {},
    entries: Object.entries(document)
      .filter(([key]) => !HEADER.includes(key))
      .map(([id, block]) => entry(id, block as ResultsEntry)),
  };
}

function entry(id: string, block: ResultsEntry): Entry {
  if ("value" in block) return quantity(id, block);
  if ("not_given" in block) return { kind: "not given", id, because: block.not_given };
  if ("change" in block) return change(id, block);
  if ("severity" in block) return { kind: "remark", id, ...block };
  if ("rows" in block)
    return {
      kind: "table",
      id,
      columns: block.columns as Column[],
      rows: block.rows,
      origin: origin(block),
      ...given("note", block.note),
    };
  if ("verdict" in block)
    return {
      kind: "judgement",
      id,
      verdict: block.verdict,
      because: block.because,
      ...given("rule", block.rule),
      ...(block.inputs === undefined ? {} : { inputs: inputs(block.inputs) }),
    };
  throw new Error(`${id} is not an entry of a results file: it has no value, verdict, rows or reason`);
}

/** A key that is there only when its value is. */
const given = <K extends string, V>(key: K, value: V | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { readonly [P in K]?: V };

const quantity = (id: string, block: ResultsQuantity): Quantity => ({
  kind: "quantity",
  id,
  value: block.value,
  unit: block.unit,
  decimals: measureInfo(id)?.decimals ?? 0,
  origin: origin(block),
  ...given("error", block.error),
  ...(block.norms === undefined ? {} : { norms: block.norms.map(position) }),
  ...given("note", block.note),
});

const position = ({ not_given, percent_predicted, lower_limit, ...rest }: ResultsNorm): NormPosition => ({
  ...rest,
  ...given("notGiven", not_given),
  ...given("percentPredicted", percent_predicted),
  ...given("lowerLimit", lower_limit),
});

const origin = (block: ResultsQuantity | ResultsTable): Origin =>
  block.from === undefined
    ? { kind: "formula", formula: block.formula ?? "", inputs: inputs(block.inputs ?? {}) }
    : { kind: "key", key: block.from };

const inputs = (block: Inputs): FormulaInput[] =>
  Object.entries(block).map(([name, text]) =>
    measureInfo(name) ? { name, text: text as string, measure: name } : { name, text: text as string },
  );

function change(id: string, block: ResultsChange): Change {
  const { of, error, worthwhile } = block;
  return {
    kind: "change",
    id,
    measure: of.measure,
    unit: block.unit,
    decimals: of.decimals,
    since: of.since,
    before: block.inputs.before,
    now: block.inputs.now,
    change: block.change,
    ...given("tests", block.tests),
    ...given("low", error?.low),
    ...given("high", error?.high),
    ...given("typicalError", error?.typical),
    ...given("errorFrom", error?.from),
    ...given("detectable", error?.detectable),
    ...given("worthwhile", worthwhile?.value),
    ...given("worthwhileFrom", worthwhile?.from),
    ...given("chances", block.chances_percent),
    differs: block.differs ?? [],
    ...given("unchecked", block.unchecked),
    ...given("notes", block.notes),
    verdict: block.verdict,
    because: block.because,
    primary: of.primary,
  };
}
