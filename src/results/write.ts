/**
 * results.yaml, the laboratory notebook: measures are top-level keys, value first, blocks of a few lines, in the order
 * of the report, so that `git log -p` reads like one. The same results give the same bytes.
 */
import type { Change, Entry, FormulaInput, NormPosition, Origin, Quantity, Remark, Table } from "../kernel/measure.js";
import type { Results } from "../kernel/results.js";
import { toDecimals } from "../kernel/rounding.js";
import { normDecimals, sectionOf } from "./record.js";
import { type Flow, flow, line, printed, scalar } from "./yaml-text.js";

export function writeResults(results: Results): string {
  let text = headOf(results);
  let section = "";
  for (const entry of results.entries) {
    const its = sectionOf(entry);
    if (its !== section) text += `\n# ${its.replaceAll("_", " ")}\n`;
    section = its;
    text += `\n${scalar(entry.id, false)}:\n${body(entry)}`;
  }
  return text;
}

const headOf = (results: Results): string =>
  line(0, "waymark", "results 1") +
  line(0, "client", results.client) +
  line(0, "visit", { date: results.date, label: results.label, purpose: results.purpose }) +
  line(0, "person", { sex: results.sex, age_years: printed(results.ageYears, 1) }) +
  `sources:\n${each(results.sources, (s) => `  - ${flow({ file: s.file, sha256: s.sha256 })}\n`)}` +
  `choices:\n${each(Object.entries(results.choices), ([key, value]) => line(2, key, value as Flow))}` +
  (Object.keys(results.conditions).length > 0 ? "conditions:\n" : "") +
  each(Object.entries(results.conditions), ([key, value]) => line(2, key, value));

/** The lines of every item, one after the other. */
function each<T>(items: readonly T[], linesOf: (item: T) => string): string {
  let text = "";
  for (const item of items) text += linesOf(item);
  return text;
}

function body(entry: Entry): string {
  switch (entry.kind) {
    case "quantity":
      return quantity(entry);
    case "not given":
      return line(2, "not_given", entry.because);
    case "judgement":
      return (
        line(2, "verdict", entry.verdict) +
        line(2, "because", entry.because) +
        optional("rule", entry.rule) +
        (entry.inputs ? line(2, "inputs", inputs(entry.inputs)) : "")
      );
    case "table":
      return table(entry);
    case "remark":
      return remark(entry);
    case "change":
      return change(entry);
  }
}

const optional = (key: string, value: Flow | undefined): string => (value === undefined ? "" : line(2, key, value));

function quantity({ value, unit, decimals, origin: from, error, norms, note }: Quantity): string {
  return (
    line(2, "value", printed(value, decimals)) +
    line(2, "unit", unit) +
    origin(from) +
    (error
      ? line(2, "error", {
          typical: number(error.typical, decimals + 1),
          low: number(error.low, decimals),
          high: number(error.high, decimals),
          from: error.from,
        })
      : "") +
    (norms?.length ? `  norms:\n${each(norms, (norm) => `    - ${flow(position(norm, decimals))}\n`)}` : "") +
    optional("note", note)
  );
}

const number = (value: number | undefined, decimals: number) =>
  value === undefined ? undefined : printed(value, decimals);

function position(norm: NormPosition, decimals: number): { readonly [key: string]: Flow | undefined } {
  const digits = normDecimals(decimals);
  return {
    table: norm.table,
    not_given: norm.notGiven,
    group: norm.group,
    percentile: number(norm.percentile, digits.percentile),
    z: number(norm.z, digits.z),
    predicted: number(norm.predicted, digits.predicted),
    percent_predicted: number(norm.percentPredicted, digits.percentPredicted),
    lower_limit: number(norm.lowerLimit, digits.lowerLimit),
    median: number(norm.median, digits.median),
    category: norm.category,
    note: norm.note,
  };
}

const origin = (from: Origin): string =>
  from.kind === "key"
    ? line(2, "from", from.key)
    : line(2, "formula", from.formula) + (from.inputs.length > 0 ? line(2, "inputs", inputs(from.inputs)) : "");

/** {body_mass: 74.0 kg, window: 30 s}: an input that is another entry goes by that entry's id. */
const inputs = (list: readonly FormulaInput[]): Flow =>
  Object.fromEntries(list.map((input) => [input.measure ?? input.name, input.text]));

const table = ({ columns, rows, origin: from, note }: Table): string =>
  origin(from) +
  optional("note", note) +
  `  columns:\n${each(columns, (c) => `    - ${flow({ key: c.key, title: c.title, unit: c.unit, decimals: c.decimals })}\n`)}` +
  (rows.length === 0 ? "  rows: []\n" : "  rows:\n") +
  each(rows, (row) => {
    let cells = "";
    row.forEach((cell, i) => {
      const places = columns[i]?.decimals;
      cells += i === 0 ? "" : ", ";
      cells += typeof cell === "number" && places !== undefined ? toDecimals(cell, places) : flow(cell);
    });
    return `    - [${cells}]\n`;
  });

const remark = (entry: Remark): string =>
  line(2, "severity", entry.severity) +
  line(2, "found", entry.found) +
  line(2, "limit", entry.limit) +
  line(2, "because", entry.because) +
  line(2, "rule", entry.rule) +
  line(2, "affects", entry.affects);

function change(entry: Change): string {
  const d = entry.decimals;
  return (
    line(2, "change", printed(entry.change, d)) +
    line(2, "unit", entry.unit) +
    line(2, "of", { measure: entry.measure, since: entry.since, decimals: d, primary: entry.primary }) +
    line(2, "inputs", { before: printed(entry.before, d), now: printed(entry.now, d) }) +
    (entry.tests ? line(2, "tests", { ...entry.tests }) : "") +
    (entry.typicalError === undefined && entry.low === undefined
      ? ""
      : line(2, "error", {
          typical: number(entry.typicalError, d + 1),
          low: number(entry.low, d),
          high: number(entry.high, d),
          detectable: number(entry.detectable, d),
          from: entry.errorFrom,
        })) +
    (entry.worthwhile === undefined
      ? ""
      : line(2, "worthwhile", { value: printed(entry.worthwhile, d + 1), from: entry.worthwhileFrom })) +
    (entry.chances ? line(2, "chances_percent", { ...entry.chances }) : "") +
    (entry.differs.length > 0 ? line(2, "differs", entry.differs) : "") +
    (entry.unchecked?.length ? line(2, "unchecked", entry.unchecked) : "") +
    (entry.notes?.length ? line(2, "notes", entry.notes) : "") +
    line(2, "verdict", entry.verdict) +
    line(2, "because", entry.because)
  );
}
