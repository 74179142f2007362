/** Keys that are unknown, misspelt, misplaced or missing in one mapping: told together, so that one slip is one message. */
import type { ErrorObject } from "ajv";
import type { Severity } from "../kernel/diagnostic.js";
import type { Document, Part } from "../kernel/document.js";
import { nearest } from "../kernel/near.js";
import { CM_PER_INCH, KG_PER_POUND, KPA_PER_MMHG } from "../kernel/unit.js";
import { type Checker, pathOf } from "./checker.js";
import type { Code } from "./codes.js";
import type { SchemaNode } from "./schema-words.js";
import { correctedText } from "./slips.js";
import { type Words, words } from "./words.js";

type Report = (
  severity: Severity,
  code: Code,
  path: readonly string[],
  why: Words,
  part?: Part,
  repair?: string,
) => void;

const MOST_EXPLAINED = 200;

export function keyFaults(document: Document, errors: readonly ErrorObject[], checker: Checker, report: Report): void {
  const [first] = errors;
  if (first === undefined) return;
  const path = pathOf(first.instancePath);
  const mapping = (first.data ?? {}) as Readonly<Record<string, unknown>>;
  const schema = (errors.find((e) => e.parentSchema?.properties)?.parentSchema ??
    first.parentSchema ??
    {}) as SchemaNode;
  const properties = schema.properties ?? {};
  let absent = Object.keys(properties).filter((key) => !Object.hasOwn(mapping, key));
  const where = path.length > 0 ? path.join(".") : (schema.title?.toLowerCase() ?? "the file");
  const describe = (key: string) => properties[key]?.description;
  const missing = new Set(errors.filter((e) => e.keyword === "required").map((e) => String(e.params.missingProperty)));
  const unknown = errors.flatMap((e) =>
    e.keyword === "additionalProperties" || e.keyword === "unevaluatedProperties"
      ? [String(e.params.additionalProperty ?? e.params.unevaluatedProperty)]
      : e.keyword === "propertyNames"
        ? [String(e.params.propertyName)]
        : [],
  );
  const all = [...new Set(unknown)];
  for (const key of all.slice(0, MOST_EXPLAINED)) {
    const at = [...path, key];
    const rival = rivalUnit(key, absent);
    const near = rival?.key ?? nearest(key, [...missing]) ?? nearest(key, absent) ?? onlyWithUnit(key, absent);
    // A key can be meant by one misspelling only.
    absent = absent.filter((candidate) => candidate !== near);
    if (rival) {
      const value = mapping[key];
      const corrected =
        typeof value === "number" && rival.factor !== undefined
          ? correctedText(value, rival.factor, document.written(at))
          : undefined;
      missing.delete(rival.key);
      report(
        "error",
        "unit-slip",
        at,
        words.keyInOtherUnit(key, rival.key, corrected, typeof value === "number"),
        "key",
      );
    } else if (near !== undefined && near === onlyWithUnit(key, [near])) {
      missing.delete(near);
      report("error", "misspelt-key", at, words.keyWithoutUnit(key, near, describe(near)), "key");
    } else if (near !== undefined) {
      missing.delete(near);
      report("error", "misspelt-key", at, words.misspelt(key, near, describe(near)), "key", near);
    } else {
      const whole = path.length === 0 ? checker.schema(`${schema.title?.toLowerCase()}.schema.json`) : undefined;
      const block = whole && blockWith(key, checker, whole.properties ?? {});
      if (block) report("error", "misplaced-key", at, words.misplaced(key, block), "key");
      else {
        const meant = cutNumber(document, at);
        report("error", "unknown-key", at, words.unknownKey(key, Object.keys(properties), where, meant), "key");
      }
    }
  }
  // What is meant by hundreds of unknown keys nobody reads: beyond a limit they are only counted.
  for (const key of all.slice(MOST_EXPLAINED))
    report("error", "unknown-key", [...path, key], words.unknownKey(key, [], where), "key");
  for (const key of missing)
    report(
      "error",
      "missing-key",
      path,
      words.missingKey(key, where, describe(key), properties[key]?.enum, /^\d+$/.test(path.at(-1) ?? "")),
      path.length > 0 ? "key" : "value",
    );
  for (const e of errors)
    if (e.keyword === "dependentRequired") {
      const { property, missingProperty } = e.params as { property: string; missingProperty: string };
      report(
        "error",
        "missing-companion",
        [...path, property],
        words.missingCompanion(property, missingProperty, describe(missingProperty)),
        "key",
      );
    }
}

/** "systolic_mmhg: 12.8" where `{systolic_mmhg: 12,8}` was written and the 8 became a key. */
function cutNumber(document: Document, at: readonly string[]): string | undefined {
  const key = at.at(-1) ?? "";
  const span = document.span(at, "key");
  if (span === undefined || !/^\d+$/.test(key)) return undefined;
  const before = /(\w+):\s*([+-]?\d+),$/.exec(document.text.slice(Math.max(0, span.start - 80), span.start));
  return before ? `${before[1]}: ${before[2]}.${key}` : undefined;
}

/** The one known key that begins with this one and goes on with a unit: hip_cm for hip, pulse_per_min for pulse. */
function onlyWithUnit(key: string, known: readonly string[]): string | undefined {
  const [first, ...more] = known.filter((candidate) => candidate.startsWith(`${key}_`));
  return first !== undefined && more.length === 0 && UNIT_END.test(first.slice(key.length)) ? first : undefined;
}
const UNIT_END =
  /^_(?:cm|m|mm|kg|g|mmhg|kpa|s|min|h|pct|percent|fraction|l|ml|l_min|ml_min|l_s|km_h|w|c|bpm|per_min|mmol_l)$/;

/** The block of a session that knows a key which stands at the top by mistake. */
function blockWith(key: string, checker: Checker, top: Readonly<Record<string, SchemaNode>>): string | undefined {
  return Object.entries(top).find(([, node]) => {
    const block = node.$ref ? checker.schema(node.$ref) : node;
    const properties = block?.properties ?? block?.items?.properties ?? {};
    return Object.hasOwn(properties, key) && key !== "confirmed";
  })?.[0];
}

/** Factors from the unit at the end of a key to the unit at the end of the key that is known. */
const FACTORS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  cm: { m: 100, mm: 0.1, in: CM_PER_INCH, inch: CM_PER_INCH },
  m: { cm: 0.01, km: 1000, ft: 0.3048 },
  mm: { cm: 10 },
  kg: { lb: KG_PER_POUND, lbs: KG_PER_POUND, g: 0.001 },
  g: { kg: 1000 },
  mmhg: { kpa: 1 / KPA_PER_MMHG, hpa: 0.1 / KPA_PER_MMHG, mbar: 0.1 / KPA_PER_MMHG },
  kpa: { mmhg: KPA_PER_MMHG },
  s: { min: 60, ms: 0.001 },
  min: { s: 1 / 60, h: 60 },
  h: { min: 1 / 60 },
  pct: { fraction: 100 },
  fraction: { pct: 0.01 },
  l: { ml: 0.001 },
  ml: { l: 1000 },
  l_min: { ml_min: 0.001 },
  ml_min: { l_min: 1000 },
  km_h: { m_s: 3.6, mph: 1.609344 },
  w: { kw: 1000 },
  c: { f: Number.NaN, k: Number.NaN },
};

/** A known key that says the same in another unit: stature_m for stature_cm. */
function rivalUnit(key: string, known: readonly string[]): { key: string; factor?: number } | undefined {
  for (const candidate of known)
    for (const [unit, others] of Object.entries(FACTORS)) {
      if (!candidate.endsWith(`_${unit}`)) continue;
      const stem = candidate.slice(0, -unit.length);
      const other = Object.entries(others).find(([name]) => key === `${stem}${name}`);
      if (other) return { key: candidate, ...(Number.isNaN(other[1]) ? {} : { factor: other[1] }) };
    }
  return undefined;
}
