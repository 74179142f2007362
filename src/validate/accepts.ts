/**
 * Whether a value keeps a schema: yes (and whether it is usual throughout), or "not surely". A record without faults,
 * which is nearly every record, is answered in a fraction of a millisecond; anything else goes to the schema compiler,
 * whose loading and compiling takes far longer but which says what is wrong and where. Keywords this file does not know
 * give "not surely".
 */
import { readDate } from "./calendar.js";
import type { SchemaNode } from "./schema-words.js";

type Test = (value: unknown) => boolean;
type Keywords = Readonly<Record<string, unknown>>;
/** Finds the schema behind a $ref, and the address it stands at. */
export type Find = (reference: string, base: string) => { readonly schema: SchemaNode; readonly base: string };

const UNSURE: Test = () => false;
export const TIME = /^([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/;
const FORMATS: Readonly<Record<string, (text: string) => boolean>> = {
  date: (text) => readDate(text) !== undefined,
  time: (text) => TIME.test(text),
};
/** Keywords that judge nothing. */
const SILENT = new Set(
  "$id $schema $comment $defs title description default examples unit slips howto source".split(" "),
);

export type Answer = "usual throughout" | "kept" | "not surely";

/** Makes the test of a schema; its parts are made when first met. */
export function openAcceptor(find: Find): (schema: SchemaNode, base: string, value: unknown) => Answer {
  const made = new Map<SchemaNode, Test>();
  let strayed = false;
  const stray = (): true => {
    strayed = true;
    return true;
  };
  const testOf = (schema: SchemaNode, base: string): Test => {
    const known = made.get(schema);
    if (known) return known;
    made.set(schema, (value) => test(value)); // a schema may contain itself
    const test = build(schema as Keywords, base, testOf, find, stray);
    made.set(schema, test);
    return test;
  };
  return (schema, base, value) => {
    strayed = false;
    if (!testOf(schema, base)(value)) return "not surely";
    return strayed ? "kept" : "usual throughout";
  };
}

function build(
  schema: Keywords,
  base: string,
  testOf: (schema: SchemaNode, base: string) => Test,
  find: Find,
  stray: () => true,
): Test {
  const tests = Object.entries(schema).flatMap(([keyword, given]): Test[] => {
    if (SILENT.has(keyword)) return [];
    if (keyword === "$ref") {
      const there = find(String(given), base);
      return [testOf(there.schema, there.base)];
    }
    if (keyword === "usual") {
      const [low, high] = given as readonly [number, number];
      return [ifNumber((value) => (value >= low && value <= high) || stray())];
    }
    const inner = (node: unknown) => testOf(node as SchemaNode, base);
    const test = KEYWORDS[keyword]?.(given as never, inner, schema);
    return [test ?? UNSURE];
  });
  return (value) => {
    for (const test of tests) if (!test(value)) return false;
    return true;
  };
}

const TYPES: Readonly<Record<string, Test>> = {
  string: (v) => typeof v === "string",
  number: (v) => typeof v === "number" && Number.isFinite(v),
  integer: (v) => Number.isInteger(v),
  boolean: (v) => typeof v === "boolean",
  null: (v) => v === null,
  array: Array.isArray,
  object: (v) => isMapping(v),
};
const isMapping = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const ifNumber =
  (holds: (value: number) => boolean): Test =>
  (value) =>
    typeof value !== "number" || holds(value);
const ifText =
  (holds: (value: string) => boolean): Test =>
  (value) =>
    typeof value !== "string" || holds(value);
const ifList =
  (holds: (value: readonly unknown[]) => boolean): Test =>
  (value) =>
    !Array.isArray(value) || holds(value);
const ifMapping =
  (holds: (value: Readonly<Record<string, unknown>>) => boolean): Test =>
  (value) =>
    !isMapping(value) || holds(value);
/** Code points; a text well inside a limit need not be counted. */
const lengthOf = (text: string) => [...text].length;

/** From what a keyword is given to its test; "not surely" may be answered by false wherever a test is too costly. */
const KEYWORDS: Readonly<
  Record<string, (given: never, inner: (node: unknown) => Test, schema: Keywords) => Test | undefined>
> = {
  type: (given: string | readonly string[]) => {
    const tests = [given].flat().map((type) => TYPES[type as string] ?? UNSURE);
    return tests.length === 1 ? tests[0] : (value) => tests.some((test) => test(value));
  },
  enum: (given: readonly unknown[]) => {
    const words = new Set(given);
    return (value) => words.has(value);
  },
  const: (given: unknown) => (value) => value === given,
  minimum: (given: number) => ifNumber((value) => value >= given),
  maximum: (given: number) => ifNumber((value) => value <= given),
  exclusiveMinimum: (given: number) => ifNumber((value) => value > given),
  exclusiveMaximum: (given: number) => ifNumber((value) => value < given),
  multipleOf: (given: number) => ifNumber((value) => Number.isInteger(value / given)),
  minLength: (given: number) => ifText((value) => value.length >= 2 * given || lengthOf(value) >= given),
  maxLength: (given: number) => ifText((value) => value.length <= given || lengthOf(value) <= given),
  pattern: (given: string) => {
    const pattern = new RegExp(given, "u");
    return ifText((value) => pattern.test(value));
  },
  format: (given: string) => {
    const format = FORMATS[given];
    return format && ifText(format);
  },
  minItems: (given: number) => ifList((value) => value.length >= given),
  maxItems: (given: number) => ifList((value) => value.length <= given),
  uniqueItems: (given: boolean) =>
    ifList(
      (value) => !given || (value.every((item) => typeof item !== "object") && new Set(value).size === value.length),
    ),
  items: (given: unknown, inner) => {
    const test = inner(given);
    return ifList((value) => value.every(test));
  },
  required: (given: readonly string[]) =>
    ifMapping((value) => given.every((key) => value[key] !== undefined && Object.hasOwn(value, key))),
  minProperties: (given: number) => ifMapping((value) => Object.keys(value).length >= given),
  properties: (given: Readonly<Record<string, unknown>>, inner) => {
    const tests = new Map(Object.entries(given).map(([key, node]) => [key, later(() => inner(node))]));
    return ifMapping((value) => {
      for (const key of Object.keys(value)) if (tests.get(key)?.(value[key]) === false) return false;
      return true;
    });
  },
  additionalProperties: (given: unknown, inner, schema) => {
    const named = new Set(Object.keys((schema.properties ?? {}) as object));
    const test = given === false ? UNSURE : given === true ? () => true : inner(given);
    return ifMapping((value) => Object.keys(value).every((key) => named.has(key) || test(value[key])));
  },
  propertyNames: (given: unknown, inner) => {
    const test = inner(given);
    return ifMapping((value) => Object.keys(value).every(test));
  },
  dependentRequired: (given: Readonly<Record<string, readonly string[]>>) =>
    ifMapping((value) =>
      Object.entries(given).every(
        ([key, others]) => !Object.hasOwn(value, key) || others.every((o) => Object.hasOwn(value, o)),
      ),
    ),
  // In a choice between forms a "not surely" of one form would make the other look like the only one, and a number outside
  // the usual range of a form not taken would count: plain forms only.
  oneOf: (given: readonly unknown[], inner) => {
    const tests = given.map(inner);
    return given.some(holdsUsual) ? undefined : (value) => tests.filter((test) => test(value)).length === 1;
  },
  anyOf: (given: readonly unknown[], inner) => {
    const tests = given.map(inner);
    return given.some(holdsUsual) ? undefined : (value) => tests.some((test) => test(value));
  },
};

/** A form of a choice that asks for more than this file surely answers: a usual range, distinct items, another file. */
const holdsUsual = (node: unknown) => /"(?:usual|uniqueItems|\$ref)":/.test(JSON.stringify(node));

function later(make: () => Test): Test {
  let test: Test | undefined;
  return (value) => {
    test ??= make();
    return test(value);
  };
}
