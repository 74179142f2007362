/**
 * results.yaml, the laboratory notebook: measures are top-level keys, value first, blocks of a few lines, in the order
 * of the report, so that `git log -p` reads like one. The same results give the same bytes.
 */
import type {
  Cell,
  Change,
  Entry,
  FormulaInput,
  NormPosition,
  Origin,
  Quantity,
  Remark,
  Table,
} from "../kernel/measure.js";
import type { Results } from "../kernel/results.js";
import { normDecimals, sectionOf } from "./record.js";
import {
  bytesOf,
  decimal,
  decimalField,
  decimalLine,
  type Flow,
  field,
  flow,
  line,
  mapLine,
  namedField,
  namedLine,
  put,
  scalar,
} from "./yaml-bytes.js";

/** The file in UTF-8. */
export const writeResults = (results: Results): Buffer =>
  bytesOf(() => {
    head(results);
    let section = "";
    for (const entry of results.entries) {
      const its = sectionOf(entry);
      if (its !== section) put(`\n# ${its.replaceAll("_", " ")}\n`);
      section = its;
      put("\n");
      scalar(entry.id, false);
      put(":\n");
      body(entry);
    }
  });

function head(results: Results): void {
  line(0, "waymark", "results 1");
  line(0, "client", results.client);
  line(0, "visit", { date: results.date, label: results.label, purpose: results.purpose });
  mapLine(0, "person", () => {
    field("sex", results.sex);
    decimalField("age_years", results.ageYears, 1);
  });
  put("sources:\n");
  for (const { file, sha256 } of results.sources) {
    put("  - {");
    field("file", file);
    field("sha256", sha256);
    put("}\n");
  }
  put("choices:\n");
  for (const [key, value] of Object.entries(results.choices)) namedLine(key, value as Flow);
  const conditions = Object.entries(results.conditions);
  if (conditions.length > 0) put("conditions:\n");
  for (const [key, value] of conditions) namedLine(key, value);
}

function body(entry: Entry): void {
  switch (entry.kind) {
    case "quantity":
      quantity(entry);
      break;
    case "not given":
      line(2, "not_given", entry.because);
      break;
    case "judgement":
      line(2, "verdict", entry.verdict);
      line(2, "because", entry.because);
      optional("rule", entry.rule);
      if (entry.inputs) inputs(entry.inputs);
      break;
    case "table":
      table(entry);
      break;
    case "remark":
      remark(entry);
      break;
    case "change":
      change(entry);
  }
}

function optional(key: string, value: Flow | undefined): void {
  if (value !== undefined) line(2, key, value);
}

function quantity({ value, unit, decimals, origin: from, error, norms, note }: Quantity): void {
  decimalLine("value", value, decimals);
  line(2, "unit", unit);
  origin(from);
  if (error)
    mapLine(2, "error", () => {
      decimalField("typical", error.typical, decimals + 1);
      decimalField("low", error.low, decimals);
      decimalField("high", error.high, decimals);
      field("from", error.from);
    });
  if (norms?.length) put("  norms:\n");
  for (const norm of norms ?? []) position(norm, decimals);
  optional("note", note);
}

function position(norm: NormPosition, decimals: number): void {
  const digits = normDecimals(decimals);
  put("    - {");
  field("table", norm.table);
  field("not_given", norm.notGiven);
  field("group", norm.group);
  decimalField("percentile", norm.percentile, digits.percentile);
  decimalField("z", norm.z, digits.z);
  decimalField("predicted", norm.predicted, digits.predicted);
  decimalField("percent_predicted", norm.percentPredicted, digits.percentPredicted);
  decimalField("lower_limit", norm.lowerLimit, digits.lowerLimit);
  decimalField("median", norm.median, digits.median);
  field("category", norm.category);
  field("note", norm.note);
  put("}\n");
}

function origin(from: Origin): void {
  if (from.kind === "key") line(2, "from", from.key);
  else {
    line(2, "formula", from.formula);
    if (from.inputs.length > 0) inputs(from.inputs);
  }
}

/** {body_mass: 74.0 kg, window: 30 s}: an input that is another entry goes by that entry's id; of one named twice the last counts. */
function inputs(list: readonly FormulaInput[]): void {
  const names = list.map((input) => input.measure ?? input.name);
  mapLine(2, "inputs", () => {
    names.forEach((name, i) => {
      if (names.indexOf(name) === i) namedField(name, list[names.lastIndexOf(name)]?.text);
    });
  });
}

function table({ columns, rows, origin: from, note }: Table): void {
  origin(from);
  optional("note", note);
  put("  columns:\n");
  for (const { key, title, unit, decimals } of columns) {
    put("    - {");
    field("key", key);
    field("title", title);
    field("unit", unit);
    field("decimals", decimals);
    put("}\n");
  }
  put(rows.length === 0 ? "  rows: []\n" : "  rows:\n");
  const places = columns.map((column) => column.decimals);
  for (const row of rows) {
    put("    - [");
    for (let i = 0; i < row.length; i++) {
      if (i > 0) put(", ");
      cell(row[i] as Cell, places[i]);
    }
    put("]\n");
  }
}

function cell(value: Cell, decimals: number | undefined): void {
  if (typeof value === "number" && decimals !== undefined) decimal(value, decimals);
  else flow(value);
}

function remark(entry: Remark): void {
  line(2, "severity", entry.severity);
  line(2, "found", entry.found);
  line(2, "limit", entry.limit);
  line(2, "because", entry.because);
  line(2, "rule", entry.rule);
  line(2, "affects", entry.affects);
}

function change(entry: Change): void {
  const d = entry.decimals;
  decimalLine("change", entry.change, d);
  line(2, "unit", entry.unit);
  line(2, "of", { measure: entry.measure, since: entry.since, decimals: d, primary: entry.primary });
  mapLine(2, "inputs", () => {
    decimalField("before", entry.before, d);
    decimalField("now", entry.now, d);
  });
  if (entry.tests) line(2, "tests", { ...entry.tests });
  if (entry.typicalError !== undefined || entry.low !== undefined)
    mapLine(2, "error", () => {
      decimalField("typical", entry.typicalError, d + 1);
      decimalField("low", entry.low, d);
      decimalField("high", entry.high, d);
      decimalField("detectable", entry.detectable, d);
      field("from", entry.errorFrom);
    });
  const { worthwhile } = entry;
  if (worthwhile !== undefined)
    mapLine(2, "worthwhile", () => {
      decimalField("value", worthwhile, d + 1);
      field("from", entry.worthwhileFrom);
    });
  if (entry.chances) line(2, "chances_percent", { ...entry.chances });
  if (entry.differs.length > 0) line(2, "differs", entry.differs);
  if (entry.unchecked?.length) line(2, "unchecked", entry.unchecked);
  if (entry.notes?.length) line(2, "notes", entry.notes);
  line(2, "verdict", entry.verdict);
  line(2, "because", entry.because);
}
