/** What a schema found wrong with one document, as diagnostics: one fault, one message, at its place in the text. */
import type { ErrorObject } from "ajv";
import type { Diagnostic, Severity } from "../kernel/diagnostic.js";
import type { Document, Part } from "../kernel/document.js";
import { type Checked, type Checker, pathOf } from "./checker.js";
import type { Code } from "./codes.js";
import { isConfirmed } from "./confirmed.js";
import { keyFaults } from "./keys.js";
import { usualPhrase } from "./schema-words.js";
import { fittingSlips, readings } from "./slips.js";
import { keyName, valueFault } from "./value-fault.js";
import { type Words, words } from "./words.js";

type Report = (
  severity: Severity,
  code: Code,
  path: readonly string[],
  why: Words,
  part?: Part,
  repair?: string,
) => void;

/** Problems of one file that are listed; a hand-written record never has more. */
const MOST = 200;

export function documentFaults(document: Document, checked: Checked, checker: Checker): Diagnostic[] {
  const found: Diagnostic[] = [];
  let more = 0;
  const report: Report = (severity, code, path, why, part = "value", repair) => {
    if (found.length >= MOST) {
      more++;
      return;
    }
    const span = repair === undefined ? undefined : document.span(path, part);
    found.push({
      code,
      severity,
      at: document.place(path, part),
      ...why,
      ...(span && repair !== undefined ? { repair: { ...span, text: repair } } : {}),
    });
  };
  const errors = settleVariants(checked.errors);
  const faulty = new Set<string>();
  for (const group of groupByPath(errors)) {
    const keys = group.filter((e) => isKeyError(e.keyword));
    if (keys.length > 0) keyFaults(document, keys, checker, report);
    const rest = group.filter((e) => !isKeyError(e.keyword));
    const [first] = rest;
    if (first === undefined) continue;
    faulty.add(first.instancePath);
    const path = pathOf(first.instancePath);
    if (typeof first.data === "number" && isCut(document, path)) continue; // told with the key that its comma made
    const fault = valueFault(document, rest, first);
    const at = fault.item === undefined ? path : [...path, fault.item];
    const cut = cutItem(document, at, first.data);
    if (cut !== undefined) {
      report("error", "decimal-comma", at, words.cutItem(cut, fault.words.expected));
      continue;
    }
    report("error", fault.code, at, fault.words, fault.part, fault.repair);
  }
  for (const { path, value, schema } of uniqueBy(checked.unusual, (u) => u.path.join("/"))) {
    const pointer = `/${path.map((p) => p.replaceAll("~", "~0").replaceAll("/", "~1")).join("/")}`;
    if (faulty.has(pointer) || isConfirmed(document.value, path) || isCut(document, path)) continue;
    const key = keyName(path);
    const expected = usualPhrase(schema);
    const slips = fittingSlips(value, schema);
    const cut = cutItem(document, path, value);
    if (cut !== undefined) report("warning", "decimal-comma", path, words.cutItem(cut, expected));
    else if (slips.length > 0) {
      const fits = readings(slips, value, document.written(path));
      report("warning", "unit-slip", path, words.slip(String(value), expected, fits, false, key));
    } else report("warning", "unusual-value", path, words.unusual(String(value), expected, key, schema.description));
  }
  if (more > 0)
    found.push({
      code: "too-many-problems" satisfies Code,
      severity: "error",
      at: { file: document.file },
      ...words.tooMany(more),
    });
  return found;
}

/** Whether a number lost its decimals to a comma between braces: {systolic_mmhg: 12,8}. */
function isCut(document: Document, path: readonly string[]): boolean {
  const span = document.span(path);
  return (
    span !== undefined &&
    !/^\d+$/.test(path.at(-1) ?? "") &&
    /^,\d+\s*[,}]/.test(document.text.slice(span.end, span.end + 24))
  );
}

/** "187,2" where an item of a list stands tight behind a comma, as the decimals that were cut off a number do: [187,2, 187.1]. */
function cutItem(document: Document, path: readonly string[], value: unknown): string | undefined {
  const span = document.span(path);
  if (typeof value !== "number" || span === undefined || !/^[1-9]\d*$/.test(path.at(-1) ?? "")) return undefined;
  const whole = /(?<![\d.,])\d+,$/.exec(document.text.slice(Math.max(0, span.start - 24), span.start))?.[0];
  const decimals = document.text.slice(span.start, span.end);
  return whole !== undefined && /^\d+$/.test(decimals) ? whole + decimals : undefined;
}

const isKeyError = (keyword: string) =>
  ["required", "additionalProperties", "unevaluatedProperties", "propertyNames", "dependentRequired"].includes(keyword);

function groupByPath(errors: readonly ErrorObject[]): ErrorObject[][] {
  const groups = new Map<string, ErrorObject[]>();
  for (const error of errors) {
    // propertyNames reports the key once more from inside; the outer error is enough.
    if (error.propertyName !== undefined && error.keyword !== "propertyNames") continue;
    const group = groups.get(error.instancePath);
    if (group) group.push(error);
    else groups.set(error.instancePath, [error]);
  }
  return [...groups.values()];
}

/** Of a choice between forms (oneOf, anyOf), keeps only the faults of the form that the value comes nearest to. */
function settleVariants(errors: readonly ErrorObject[]): ErrorObject[] {
  let kept: ErrorObject[] = [];
  for (const error of errors) {
    if (error.keyword === "if" || error.keyword === "not" || error.keyword === "contains") {
      if (error.keyword !== "if") kept.push(error);
      continue;
    }
    if (error.keyword !== "oneOf" && error.keyword !== "anyOf") {
      kept.push(error);
      continue;
    }
    const inside = error.instancePath;
    let first = kept.length;
    while (first > 0 && isWithin(kept[first - 1]?.instancePath ?? "", inside)) first--;
    const branches = new Map<string, ErrorObject[]>();
    for (const e of kept.slice(first)) {
      const branch = /\/(?:oneOf|anyOf)\/(\d+)/.exec(e.schemaPath)?.[1] ?? e.schemaPath.split("#")[0] ?? "";
      const known = branches.get(branch);
      if (known) known.push(e);
      else branches.set(branch, [e]);
    }
    kept = kept.slice(0, first);
    const wrongKind = (e: ErrorObject) => e.keyword === "type" && e.instancePath === inside;
    const near = [...branches.values()].filter((b) => !b.some(wrongKind)).sort((a, b) => a.length - b.length)[0];
    if (near) kept.push(...near);
    else kept.push(error);
  }
  return kept;
}

const isWithin = (path: string, outer: string) => path === outer || path.startsWith(`${outer}/`);

function uniqueBy<T>(items: readonly T[], key: (item: T) => string): T[] {
  const seen = new Map(items.map((item) => [key(item), item]));
  return [...seen.values()];
}
