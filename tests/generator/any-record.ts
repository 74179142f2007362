/**
 * Any record that a schema allows, drawn by chance from one that is given: keys fall out, others come in, answers and
 * numbers are other ones. What somebody would type is a bare number, so that every word of a result is the program's own.
 */
import { readFileSync } from "node:fs";
import type { Chance } from "./random.js";

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
type JsonMap = { readonly [key: string]: Json };

export interface Schema {
  readonly $ref?: string;
  readonly type?: string;
  readonly enum?: readonly Json[];
  readonly const?: Json;
  readonly format?: string;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly usual?: readonly [number, number];
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minLength?: number;
  readonly required?: readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly dependentRequired?: Readonly<Record<string, readonly string[]>>;
  readonly $defs?: Readonly<Record<string, Schema>>;
}

const files = new Map<string, Schema>();
/** A schema of schema/ by its path, with its references followed one step at a time. */
export function schemaFile(path: string): Schema {
  const known = files.get(path) ?? (JSON.parse(readFileSync(`schema/${path}`, "utf8")) as Schema);
  files.set(path, known);
  return known;
}

export interface Around {
  readonly c: Chance;
  /** Share of keys that are changed. */
  readonly share: number;
  /** Date near which dates fall. */
  readonly date: string;
  /** Keys that keep what they hold, and never come in: names of files and instruments, heads. */
  readonly kept: ReadonlySet<string>;
  /** What a key may hold where the schema cannot say it. */
  readonly known: Readonly<Record<string, readonly string[]>>;
}

/** What somebody would type, in place of it. */
const TYPED = "7777";
const isTyped = ({ enum: answers, pattern, format }: Schema): boolean =>
  answers === undefined && pattern === undefined && format === undefined;

/** Where a reference leads, and the file it is read in. */
function followed(schema: Schema, file: string): readonly [Schema, string] {
  const ref = schema.$ref;
  if (ref === undefined) return [schema, file];
  if (ref.startsWith("#/$defs/")) return [schemaFile(file).$defs?.[ref.slice(8)] ?? {}, file];
  const path = ref.includes("/") || !file.includes("/") ? ref : `${file.slice(0, file.lastIndexOf("/"))}/${ref}`;
  return [schemaFile(path), path];
}

/** The record with some of its keys gone, come in or changed. */
export function other(
  value: Json | undefined,
  asked: Schema,
  file: string,
  key: string,
  around: Around,
): Json | undefined {
  const { c, kept, share } = around;
  const [schema, own] = followed(asked, file);
  if (kept.has(key)) return value;
  if (typeof value === "object" && value !== null && schema.properties !== undefined && !Array.isArray(value)) {
    const out: Record<string, Json> = {};
    for (const [name, inner] of Object.entries(schema.properties)) {
      const held = (value as JsonMap)[name];
      const must = schema.required?.includes(name) ?? false;
      let next: Json | undefined;
      if (held === undefined) next = !kept.has(name) && c.happens(share) ? any(inner, own, name, around) : undefined;
      else if (!must && !kept.has(name) && c.happens(share / 2)) next = undefined;
      else next = other(held, inner, own, name, around);
      if (next !== undefined) out[name] = next;
    }
    return complete(out, schema);
  }
  if (Array.isArray(value) && schema.items !== undefined)
    return once(
      value.flatMap((one) => other(one as Json, schema.items as Schema, own, key, around) ?? []),
      schema.items,
    );
  if (schema.type === "string" && isTyped(schema)) return TYPED;
  return c.happens(share) ? (any(schema, own, key, around) ?? value) : value;
}

/** An answer stands in a list once. */
const once = (list: readonly Json[], items: Schema): readonly Json[] =>
  items.enum === undefined ? list : [...new Set(list)];

/** Anything a schema allows; undefined where it cannot be drawn. */
export function any(asked: Schema, file: string, key: string, around: Around): Json | undefined {
  const { c, known } = around;
  const [schema, own] = followed(asked, file);
  const pick = (items: readonly Json[]) => c.pick(items as readonly [Json, ...Json[]]);
  if (Object.hasOwn(known, key)) return pick(known[key] as readonly string[]);
  if (schema.const !== undefined) return schema.const;
  if (schema.enum !== undefined) return pick(schema.enum);
  if (schema.type === "boolean") return c.happens(0.5);
  if (schema.type === "string") {
    if (schema.format === "date") return shifted(around.date, Math.floor(c.between(-60, 90)));
    if (schema.pattern?.includes(":") === true) return c.pick(["07:30", "10:15", "18:40"]);
    return isTyped(schema) ? TYPED : undefined;
  }
  if (schema.type === "number" || schema.type === "integer") return numberOf(schema, c);
  if (schema.type === "array" && schema.items !== undefined) {
    const least = schema.minItems ?? 0;
    const count = Math.min(schema.maxItems ?? 4, least + Math.floor(c.between(0, 4)));
    const made = Array.from({ length: count }, () => any(schema.items as Schema, own, key, around));
    return once(
      made.flatMap((one) => one ?? []),
      schema.items,
    );
  }
  if (schema.properties === undefined) return undefined;
  const out: Record<string, Json> = {};
  for (const [name, inner] of Object.entries(schema.properties)) {
    const must = schema.required?.includes(name) ?? false;
    if (around.kept.has(name) ? !must : !must && !c.happens(0.6)) continue;
    const made = any(inner, own, name, around);
    if (made !== undefined) out[name] = made;
    else if (must) return undefined;
  }
  return complete(out, schema);
}

/** Without the keys that need another one. */
function complete(record: Record<string, Json>, { dependentRequired }: Schema): Record<string, Json> {
  for (const [name, needs] of Object.entries(dependentRequired ?? {}))
    if (needs.some((need) => record[need] === undefined)) delete record[name];
  return record;
}

function numberOf(schema: Schema, c: Chance): number {
  const [low, high] = schema.usual ?? [schema.minimum ?? 0, schema.maximum ?? 100];
  const wide: readonly [number, number] = [schema.minimum ?? low, schema.maximum ?? high];
  const [from, to] = c.happens(0.85) ? [low, high] : wide;
  const value = c.between(from, to);
  if (schema.type === "integer") return Math.round(value);
  return Number(value.toFixed(to - from > 20 ? 1 : to - from > 1 ? 2 : 4));
}

/** A date some days later. */
const shifted = (date: string, days: number): string =>
  new Date(Date.parse(date) + days * 86_400_000).toISOString().slice(0, 10);
