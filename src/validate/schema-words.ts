/** What a schema asks for, as a phrase: "a number from 100 to 250, in cm". */
export interface SchemaNode {
  readonly type?: string | readonly string[];
  readonly title?: string;
  readonly description?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly unit?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly usual?: readonly [number, number];
  readonly slips?: readonly Slip[];
  readonly format?: string;
  readonly pattern?: string;
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly required?: readonly string[];
  readonly items?: SchemaNode;
  readonly oneOf?: readonly SchemaNode[];
  readonly anyOf?: readonly SchemaNode[];
  readonly $ref?: string;
  readonly default?: unknown;
}
export interface Slip {
  readonly factor: number;
  readonly looks: string;
}

export function expectation(schema: SchemaNode | undefined): string {
  if (schema === undefined) return "a value";
  if (schema.const !== undefined) return String(schema.const);
  if (schema.enum) return `one of: ${schema.enum.join(", ")}`;
  const type = Array.isArray(schema.type) ? schema.type[0] : schema.type;
  switch (type) {
    case "number":
    case "integer":
      return numberPhrase(schema, type === "integer" ? "a whole number" : "a number");
    case "boolean":
      return "true or false";
    case "array":
      return `a list${schema.items?.type === "number" ? ` of numbers${schema.items.unit ? ` in ${schema.items.unit}` : ""}` : ""}`;
    case "object":
      return "a mapping of keys and values";
    case "string":
      return schema.format === "date" ? "a date, as year-month-day" : "text";
    default: {
      const variants = schema.oneOf ?? schema.anyOf;
      return variants ? variants.map(expectation).join(", or ") : "a value";
    }
  }
}

function numberPhrase(schema: SchemaNode, noun: string): string {
  const low = schema.minimum ?? schema.exclusiveMinimum;
  const high = schema.maximum ?? schema.exclusiveMaximum;
  const above = schema.minimum === undefined && schema.exclusiveMinimum !== undefined;
  const range =
    low !== undefined && high !== undefined
      ? ` ${above ? "above" : "from"} ${low} ${above ? "up " : ""}to ${high}`
      : low !== undefined
        ? above
          ? ` above ${low}`
          : ` of at least ${low}`
        : high !== undefined
          ? ` of at most ${high}`
          : "";
  return `${noun}${range}${inUnit(schema.unit)}`;
}

function inUnit(unit: string | undefined): string {
  return !unit ? "" : unit === "fraction" ? ", as a fraction of 1" : `, in ${unit}`;
}

/** "usually 140 to 205, in cm". */
export function usualPhrase(schema: SchemaNode): string {
  const [low, high] = schema.usual ?? [];
  return `usually ${low} to ${high}${inUnit(schema.unit)}`;
}
