/** The choices that hold for a visit: the schema's defaults, under the laboratory's, the client's and the session's. */
import type { Choices } from "../kernel/generated/choices.js";
import type { SchemaNode } from "./schema-words.js";

type Some = Partial<Choices> | undefined;

/** Every key of the schema gets a value; later arguments win. Throws when a choice has no default: a fault of the schema. */
export function resolveChoices(schema: SchemaNode, ...given: readonly Some[]): Choices {
  const resolved: Record<string, unknown> = {};
  for (const [key, node] of Object.entries(schema.properties ?? {})) {
    if (key === "confirmed") continue;
    if (node.default === undefined) throw new Error(`choice ${key} has no default`);
    resolved[key] = node.default;
    for (const choices of given) {
      const value = (choices as Readonly<Record<string, unknown>> | undefined)?.[key];
      if (value !== undefined) resolved[key] = value;
    }
  }
  return resolved as unknown as Choices;
}
