/**
 * results.yaml back into Results: the inverse of write.ts, kept next to it. Throws Error with a sentence when a file
 * was not written by this program (edited by hand, cut short, a merge conflict left in it).
 */
import { parse } from "yaml";
import type { Change, Column, Entry, FormulaInput, NormPosition, Origin, Quantity } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { parseWritten } from "./parse.js";

type Block = Readonly<Record<string, unknown>>;
const HEADER = ["waymark", "client", "visit", "person", "sources", "choices", "conditions"];

export function readResults(text: string): Results {
  const document = (parseWritten(text) ?? parse(text, { maxAliasCount: 0 })) as Block | null;
  if (document?.waymark !== "results 1")
    throw new Error("this is not a results file of a known format (no `waymark: results 1`)");
  const visit = document.visit as { date: string; label?: string; purpose: Results["purpose"] };
  const person = document.person as { sex: Results["sex"]; age_years: number };
  return {
    client: document.client as string,
    sex: person.sex,
    date: visit.date,
    ...(visit.label === undefined ? {} : { label: visit.label }),
    purpose: visit.purpose,
    ageYears: person.age_years,
    sources: document.sources as Results["sources"],
    choices: document.choices as Results["choices"],
    conditions: (document.conditions ?? {}) as Results["conditions"],
    entries: Object.entries(document)
      .filter(([key]) => !HEADER.includes(key))
      .map(([id, block]) => entry(id, block as Block)),
  };
}

function entry(id: string, block: Block): Entry {
  if ("value" in block) return quantity(id, block);
  if ("not_given" in block) return { kind: "not given", id, because: block.not_given as string };
  if ("change" in block) return change(id, block);
  if ("severity" in block) return { kind: "remark", id, ...(block as object) } as Entry;
  if ("rows" in block)
    return {
      kind: "table",
      id,
      columns: block.columns as Column[],
      rows: block.rows as (number | string | null)[][],
      origin: origin(block),
      ...(block.note === undefined ? {} : { note: block.note as string }),
    };
  if ("verdict" in block)
    return {
      kind: "judgement",
      id,
      verdict: block.verdict as string,
      because: block.because as string,
      ...(block.rule === undefined ? {} : { rule: block.rule as string }),
      ...(block.inputs === undefined ? {} : { inputs: inputs(block.inputs) }),
    };
  throw new Error(`${id} is not an entry of a results file: it has no value, verdict, rows or reason`);
}

function quantity(id: string, block: Block): Quantity {
  return {
    kind: "quantity",
    id,
    value: block.value as number,
    unit: block.unit as string,
    decimals: measureInfo(id)?.decimals ?? 0,
    origin: origin(block),
    ...(block.error === undefined ? {} : { error: block.error as NonNullable<Quantity["error"]> }),
    ...(block.norms === undefined ? {} : { norms: (block.norms as Block[]).map(position) }),
    ...(block.note === undefined ? {} : { note: block.note as string }),
  };
}

function position({ not_given, percent_predicted, lower_limit, ...rest }: Block): NormPosition {
  return {
    ...rest,
    ...(not_given === undefined ? {} : { notGiven: not_given }),
    ...(percent_predicted === undefined ? {} : { percentPredicted: percent_predicted }),
    ...(lower_limit === undefined ? {} : { lowerLimit: lower_limit }),
  } as unknown as NormPosition;
}

const origin = (block: Block): Origin =>
  "from" in block
    ? { kind: "key", key: block.from as string }
    : { kind: "formula", formula: block.formula as string, inputs: inputs(block.inputs ?? {}) };

const inputs = (block: unknown): FormulaInput[] =>
  Object.entries(block as Record<string, string>).map(([name, text]) =>
    measureInfo(name) ? { name, text, measure: name } : { name, text },
  );

function change(id: string, block: Block): Change {
  const of = block.of as { measure: string; since: string; decimals: number; primary: boolean };
  const { before, now } = block.inputs as { before: number; now: number };
  const error = (block.error ?? {}) as {
    typical?: number;
    low?: number;
    high?: number;
    detectable?: number;
    from?: string;
  };
  const worthwhile = block.worthwhile as { value: number; from?: string } | undefined;
  return {
    kind: "change",
    id,
    measure: of.measure,
    unit: block.unit as string,
    decimals: of.decimals,
    since: of.since,
    before,
    now,
    change: block.change as number,
    ...(block.tests === undefined ? {} : { tests: block.tests as NonNullable<Change["tests"]> }),
    ...(error.low === undefined ? {} : { low: error.low }),
    ...(error.high === undefined ? {} : { high: error.high }),
    ...(error.typical === undefined ? {} : { typicalError: error.typical }),
    ...(error.from === undefined ? {} : { errorFrom: error.from }),
    ...(error.detectable === undefined ? {} : { detectable: error.detectable }),
    ...(worthwhile === undefined ? {} : { worthwhile: worthwhile.value }),
    ...(worthwhile?.from === undefined ? {} : { worthwhileFrom: worthwhile.from }),
    ...(block.chances_percent === undefined
      ? {}
      : { chances: block.chances_percent as NonNullable<Change["chances"]> }),
    differs: (block.differs ?? []) as string[],
    ...(block.unchecked === undefined ? {} : { unchecked: block.unchecked as string[] }),
    ...(block.notes === undefined ? {} : { notes: block.notes as string[] }),
    verdict: block.verdict as string,
    because: block.because as string,
    primary: of.primary,
  };
}
