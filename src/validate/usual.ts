/**
 * The numbers of a record that keeps its schema but which lie outside a usual range, in the order in which the schema
 * compiler meets them. Only for records and schemas that openAcceptor (accepts.ts) answers for: a choice between forms
 * there holds no usual range.
 */
import type { Find } from "./accepts.js";
import type { SchemaNode } from "./schema-words.js";

export interface Unusual {
  readonly path: readonly string[];
  readonly value: number;
  readonly schema: SchemaNode;
}

export function unusualIn(
  schema: SchemaNode,
  base: string,
  value: unknown,
  find: Find,
  path: readonly string[] = [],
): Unusual[] {
  const inner = (node: unknown, key: string, part: unknown) =>
    unusualIn(node as SchemaNode, base, part, find, [...path, key]);
  const { $ref, usual, items, additionalProperties, properties } = schema as Readonly<Record<string, unknown>>;
  const found: Unusual[] = [];
  if ($ref !== undefined) {
    const there = find(String($ref), base);
    found.push(...unusualIn(there.schema, there.base, value, find, path));
  }
  if (typeof value === "number") {
    const [low, high] = (usual ?? [value, value]) as readonly [number, number];
    return value < low || value > high ? [...found, { path, value, schema }] : found;
  }
  if (typeof value !== "object" || value === null) return found;
  if (Array.isArray(value)) {
    if (items !== undefined) for (const [i, part] of value.entries()) found.push(...inner(items, String(i), part));
    return found;
  }
  const mapping = value as Readonly<Record<string, unknown>>;
  const named = (properties ?? {}) as Readonly<Record<string, unknown>>;
  if (typeof additionalProperties === "object")
    for (const [key, part] of Object.entries(mapping))
      if (!Object.hasOwn(named, key)) found.push(...inner(additionalProperties, key, part));
  for (const [key, node] of Object.entries(named))
    if (Object.hasOwn(mapping, key)) found.push(...inner(node, key, mapping[key]));
  return found;
}
