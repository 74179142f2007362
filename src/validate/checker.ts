/**
 * The schemas, compiled once. Besides what JSON Schema itself asks for, the compiled functions collect every number
 * outside its `usual` range; that is an annotation, so it never makes a document invalid.
 */
import { createRequire } from "node:module";
import type { AnySchemaObject, ErrorObject, ValidateFunction } from "ajv";
import { type Find, openAcceptor, TIME } from "./accepts.js";
import { readDate } from "./calendar.js";
import type { SchemaNode } from "./schema-words.js";
import { type Unusual, unusualIn } from "./usual.js";

/** Parsed JSON of every file below schema/, each with its $id. */
export type Schemas = readonly Readonly<Record<string, unknown>>[];

/** Kinds of YAML file that have a schema of their own, by the name of the schema. */
export type DocumentKind = "laboratory" | "client" | "session" | "reference-table" | "typical-error" | "event-profile";

export interface Checked {
  readonly errors: readonly ErrorObject[];
  readonly unusual: readonly Unusual[];
}
export interface Checker {
  check(kind: DocumentKind, value: unknown): Checked;
  /** A schema by its file name ("session.schema.json", "blocks/size.schema.json"). */
  schema(name: string): SchemaNode | undefined;
}

const BASE = "https://waymark.invalid/schema/";
/** Keywords that explain and do not judge. */
export const ANNOTATIONS = ["unit", "slips", "howto", "source"] as const;

const cache = new WeakMap<Schemas, Promise<Checker>>();

/** The checker of these schemas, made once. The schema compiler is loaded when the first value is not surely in order. */
export function openChecker(schemas: Schemas): Promise<Checker> {
  let checker = cache.get(schemas);
  if (checker === undefined) {
    checker = Promise.resolve(quickChecker(schemas));
    cache.set(schemas, checker);
  }
  return checker;
}

function quickChecker(schemas: Schemas): Checker {
  const byName = new Map(schemas.map((schema) => [String(schema.$id).replace(BASE, ""), schema as SchemaNode]));
  const find: Find = (reference, base) => {
    const { href, hash } = new URL(reference, BASE + base);
    const name = href.slice(BASE.length, href.length - hash.length);
    let schema = byName.get(name);
    for (const step of pathOf(hash.slice(1))) schema = (schema as Record<string, SchemaNode> | undefined)?.[step];
    if (schema === undefined) throw new Error(`no schema ${reference}`);
    return { schema, base: name };
  };
  const accepts = openAcceptor(find);
  const unusual = (schema: SchemaNode, name: string, value: unknown): Unusual[] => {
    const found = unusualIn(outline(schema), name, value, find);
    for (const [key, block] of blocksOf(schema)) {
      const part = (value as Readonly<Record<string, unknown>>)[key];
      if (part !== undefined) found.push(...unusualIn({ $ref: block }, name, part, find, [key]));
    }
    return found;
  };
  let thorough: Checker | undefined;
  return {
    check(kind, value) {
      const name = `${kind}.schema.json`;
      const schema = byName.get(name);
      const answer = schema === undefined ? "not surely" : accepts(schema, name, value);
      if (schema !== undefined && answer !== "not surely")
        return { errors: [], unusual: answer === "kept" ? unusual(schema, name, value) : [] };
      thorough ??= thoroughChecker(schemas);
      return thorough.check(kind, value);
    },
    schema: (name) => byName.get(name),
  };
}

/** By the schema compiler. Throws for a faulty schema. Exported for the test that holds the quick answer against it. */
export function thoroughChecker(schemas: Schemas): Checker {
  const { Ajv2020 } = createRequire(import.meta.url)("ajv/dist/2020.js") as typeof import("ajv/dist/2020.js");
  let unusual: Unusual[] = [];
  const ajv = new Ajv2020({
    allErrors: true,
    verbose: true,
    strict: true,
    strictTypes: false,
    strictRequired: false,
    allowUnionTypes: true,
    validateSchema: false,
    // A program run checks a few files: compiling costs more than the checks, so the code is not polished.
    inlineRefs: false,
    code: { optimize: false },
    formats: {
      date: (text: string) => readDate(text) !== undefined,
      time: TIME,
      "date-time": true,
    },
  });
  for (const keyword of ANNOTATIONS) ajv.addKeyword({ keyword, valid: true });
  ajv.addKeyword({
    keyword: "usual",
    schemaType: "array",
    errors: false,
    validate: (
      [low, high]: [number, number],
      value: unknown,
      parent?: AnySchemaObject,
      at?: { readonly instancePath: string },
    ) => {
      if (typeof value === "number" && (value < low || value > high))
        unusual.push({ path: pathOf(at?.instancePath ?? ""), value, schema: (parent ?? {}) as SchemaNode });
      return true;
    },
  });
  const byName = new Map<string, SchemaNode>();
  for (const schema of schemas) {
    const id = String(schema.$id);
    ajv.addSchema(schema as AnySchemaObject, id);
    byName.set(id.replace(BASE, ""), schema as SchemaNode);
  }
  const functionOf = (name: string): ValidateFunction => {
    const found = ajv.getSchema(BASE + name);
    if (found === undefined) throw new Error(`no schema ${name}`);
    return found;
  };
  for (const [name, whole] of [...byName])
    if (!name.includes("/")) ajv.addSchema(outline(whole) as AnySchemaObject, `${BASE}${outlineName(name)}`);
  return {
    check(kind, value) {
      unusual = [];
      const run = functionOf(outlineName(`${kind}.schema.json`));
      run(value);
      const errors = [...(run.errors ?? [])];
      if (typeof value === "object" && value !== null)
        for (const [key, name] of blocksOf(byName.get(`${kind}.schema.json`))) {
          if (!Object.hasOwn(value, key)) continue;
          const block = functionOf(name);
          const parentData = value as Record<string, unknown>;
          block(parentData[key], {
            instancePath: `/${key}`,
            parentData,
            parentDataProperty: key,
            rootData: parentData,
            dynamicAnchors: {},
          });
          errors.push(...(block.errors ?? []));
        }
      return { errors, unusual };
    },
    schema: (name) => byName.get(name),
  };
}

const outlineName = (name: string) => name.replace(".schema.json", ".outline");

/** Top-level keys whose value a file of its own describes. */
const blocksOf = (schema: SchemaNode | undefined): [string, string][] =>
  Object.entries(schema?.properties ?? {}).flatMap(([key, node]): [string, string][] =>
    node.$ref?.startsWith("blocks/") ? [[key, node.$ref]] : [],
  );

/** The schema without its blocks. Compiling takes longer than checking, so a block is compiled when one is met. */
function outline(schema: SchemaNode): SchemaNode {
  const properties: Record<string, SchemaNode> = { ...schema.properties };
  for (const [key] of blocksOf(schema)) properties[key] = {};
  const { $id: _, ...rest } = schema as SchemaNode & { $id?: string };
  return { ...rest, properties };
}

/** Steps of a JSON Pointer. */
export function pathOf(pointer: string): string[] {
  return pointer
    .split("/")
    .slice(1)
    .map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~"));
}
