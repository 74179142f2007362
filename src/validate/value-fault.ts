/** What is wrong with one value: one message, whatever number of keywords it breaks. */
import type { ErrorObject } from "ajv";
import type { Document, Part } from "../kernel/document.js";
import { nearest } from "../kernel/near.js";
import { roundTo } from "../kernel/rounding.js";
import { suggestDates } from "./calendar.js";
import { pathOf } from "./checker.js";
import type { Code } from "./codes.js";
import { expectation, type SchemaNode } from "./schema-words.js";
import { correctedText, fittingSlips, readings } from "./slips.js";
import { show, type Words, words } from "./words.js";

export interface ValueFault {
  readonly code: Code;
  readonly words: Words;
  readonly part?: Part;
  /** Text that may safely take the value's place. */
  readonly repair?: string;
  /** The item of a list that is meant. */
  readonly item?: string;
}

/** The last step that is a key: of readings/0/systolic_mmhg that is systolic_mmhg, of duplicates/1 it is duplicates. */
export const keyName = (path: readonly string[]) => path.findLast((step) => !/^\d+$/.test(step)) ?? "";

const fault = (code: Code, why: Words, repair?: string): ValueFault => ({
  code,
  words: why,
  ...(repair === undefined ? {} : { repair }),
});

export function valueFault(document: Document, group: readonly ErrorObject[], first: ErrorObject): ValueFault {
  const error = group.find((e) => e.keyword === "type") ?? first;
  const path = pathOf(error.instancePath);
  const schema = (error.parentSchema ?? {}) as SchemaNode;
  const value = error.data;
  const key = keyName(path);
  if (value === null && ![schema.type].flat().includes("null"))
    return { ...fault("empty-value", words.empty(key, expectation(schema))), part: "key" };
  switch (error.keyword) {
    case "type":
      return typeFault(document.written(path) ?? "", value, schema);
    case "const":
      return key === "waymark"
        ? fault("format-line", words.formatLine(value, String(schema.const)))
        : fault("not-in-list", words.notInList(value, [schema.const], undefined, schema.description));
    case "enum":
      return wordFault(document.written(path), value, schema);
    case "minimum":
    case "maximum":
    case "exclusiveMinimum":
    case "exclusiveMaximum":
    case "multipleOf":
      return rangeFault(document.written(path), value as number, key, schema);
    case "format":
    case "pattern":
      return shapeFault(value, schema);
    case "uniqueItems": {
      const later = Math.max(Number(error.params.i), Number(error.params.j));
      return { ...fault("repeated-item", words.repeated((value as unknown[])[later])), item: String(later) };
    }
    case "oneOf":
    case "anyOf":
      return variantFault(document.written(path) ?? "", value, schema);
    default:
      return /^(min|max)(Length|Items|Properties)$/.test(error.keyword)
        ? lengthFault(error.keyword, value, Number(error.params.limit))
        : fault("no-variant", words.noVariant(show(value), expectation(schema)));
  }
}

function variantFault(written: string, value: unknown, schema: SchemaNode): ValueFault {
  const expected = expectation(schema);
  const textIsFine = (schema.oneOf ?? schema.anyOf ?? []).some((variant) => variant.type === "string");
  return textIsFine && (typeof value === "number" || typeof value === "boolean")
    ? fault("quote-needed", words.quoteNeeded(written, expected), `"${written}"`)
    : fault("no-variant", words.noVariant(show(value), expected));
}

function wordFault(written: string | undefined, value: unknown, schema: SchemaNode): ValueFault {
  const allowed = schema.enum ?? [];
  if (written !== undefined && typeof value !== "string" && allowed.includes(written))
    return fault("quote-needed", words.quoteNeeded(written, expectation(schema)), `"${written}"`);
  const near =
    typeof value === "string"
      ? nearest(
          value,
          allowed.filter((a) => typeof a === "string"),
        )
      : undefined;
  return fault("not-in-list", words.notInList(value, allowed, near, schema.description), near);
}

function rangeFault(written: string | undefined, value: number, key: string, schema: SchemaNode): ValueFault {
  const expected = expectation(schema);
  const slips = fittingSlips(value, schema);
  const [slip] = slips;
  if (slip === undefined)
    return fault("impossible-value", words.impossible(String(value), expected, schema.description));
  const why = words.slip(String(value), expected, readings(slips, value, written), true, key);
  // Two units that would both fit: a person has to choose.
  return fault("unit-slip", why, slips.length === 1 ? correctedText(value, slip.factor, written) : undefined);
}

function shapeFault(value: unknown, schema: SchemaNode): ValueFault {
  if (schema.format !== "date") return clockFault(String(value), schema);
  const text = String(value);
  const shape = /^\d{4}-\d{2}-\d{2}$/.test(text) ? "calendar" : "order";
  return fault("no-such-date", words.noSuchDate(text, shape, suggestDates(text)));
}

/** "8:30" lacks a nought where a clock time is wanted; of other texts nothing can be said. */
function clockFault(text: string, schema: SchemaNode): ValueFault {
  const padded = `0${text}`;
  const isClock =
    schema.pattern !== undefined && /^\d:\d\d$/.test(text) && new RegExp(schema.pattern, "u").test(padded);
  const why = words.wrongShape(text, schema.description ?? expectation(schema), isClock ? padded : undefined);
  return fault("wrong-shape", why, isClock ? `"${padded}"` : undefined);
}

function lengthFault(keyword: string, value: unknown, limit: number): ValueFault {
  const noun = keyword.endsWith("Length") ? "character" : keyword.endsWith("Items") ? "item" : "key";
  const size = typeof value === "string" ? [...value].length : Object.keys(value as object).length;
  const count = (n: number) => `${n} ${noun}${n === 1 ? "" : "s"}`;
  const expected = `at ${keyword.startsWith("min") ? "least" : "most"} ${count(limit)}`;
  return fault("wrong-length", words.wrongLength(count(size), expected));
}

const YES_NO: Readonly<Record<string, string>> = { yes: "true", on: "true", no: "false", off: "false" };

function typeFault(written: string, value: unknown, schema: SchemaNode): ValueFault {
  const expected = expectation(schema);
  const wanted = [schema.type].flat();
  const wrong = (fix?: string, repair?: string) => fault("wrong-type", words.wrongType(value, expected, fix), repair);
  if (typeof value === "string" && (wanted.includes("number") || wanted.includes("integer")))
    return notANumber(value.trim(), expected, schema, wrong);
  if (wanted.includes("string") && (typeof value === "number" || typeof value === "boolean"))
    return fault("quote-needed", words.quoteNeeded(written, expected), `"${written}"`);
  if (wanted.includes("boolean") && typeof value === "string") {
    const word = YES_NO[value.toLowerCase()];
    return wrong(word && `write ${word}`, word);
  }
  if (wanted.includes("array") && !Array.isArray(value))
    return wrong(typeof value === "object" ? "put a hyphen before the first key" : `write [${written}]`);
  if (wanted.includes("object") && !Array.isArray(value) && typeof value !== "object")
    return wrong(mappingFor(written, schema.required ?? []));
  return wrong();
}

/** How a mapping is written whose keys were left out: the value itself where only one key is asked for. */
function mappingFor(written: string, required: readonly string[]): string | undefined {
  if (required.length === 0 || required.includes("waymark")) return undefined; // a whole file is not written so
  const isNumber = /^-?\d+(\.\d+)?$/.test(written);
  return `write {${required.map((key) => `${key}: ${required.length === 1 && isNumber ? written : "…"}`).join(", ")}}`;
}

function notANumber(
  text: string,
  expected: string,
  schema: SchemaNode,
  wrong: (fix?: string, repair?: string) => ValueFault,
): ValueFault {
  if (/^[+-]?\d+,\d+$/.test(text)) {
    const corrected = text.replace(",", ".");
    return fault("decimal-comma", words.decimalComma(text, corrected, expected), corrected);
  }
  if (/^[+-]?\d+(\.\d+)?$/.test(text)) return wrong(`take the quotes away: write ${text}`, text);
  const clock = clockAs(text, schema.unit);
  if (clock) return wrong(clock);
  const bare = /^([+-]?\d+(?:[.,]\d+)?)\s*[^\d\s.,:/][^\d]*[23]?$/.exec(text)?.[1]?.replace(",", ".");
  const unit = schema.unit ? `in ${schema.unit}` : "in the unit of the key";
  return wrong(bare && `write the bare number ${bare}, if it is ${unit}: units stand in key names`);
}

/** A time with colons as a number in the unit of the key: 14:30 is 14.5 min, 1:02:30 is 3750 s, 7:30 is 7.5 h. */
function clockAs(text: string, unit: string | undefined): string | undefined {
  const parts = /^(\d{1,3}):([0-5]\d)(?::([0-5]\d))?$/.exec(text);
  if (parts === null || (unit !== "s" && unit !== "min" && unit !== "h")) return undefined;
  const [first, second, third] = [Number(parts[1]), Number(parts[2]), Number(parts[3] ?? 0)];
  // Two parts are hours and minutes where hours are asked for, else minutes and seconds.
  const long = parts[3] !== undefined || unit === "h";
  const seconds = long ? first * 3600 + second * 60 + third : first * 60 + second;
  const read = parts[3] !== undefined ? "h:mm:ss" : long ? "h:mm" : "min:ss";
  return `write ${roundTo(seconds / { s: 1, min: 60, h: 3600 }[unit], 3)}, if ${text} is ${read}`;
}
