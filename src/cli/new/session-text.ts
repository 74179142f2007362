/**
 * The text of a new session file. Like an earlier visit: its blocks in their order, what says how it was measured, and
 * every value that was measured as a comment with its unit, to be uncommented when there is a new one.
 */
import { stringify } from "yaml";
import { type GuideNode, resolved, type SchemaOf } from "../guide.js";
import { ANEW, isCarried } from "./carried.js";

export interface SessionHeader {
  readonly client: string;
  readonly date: string;
  readonly label: string;
  readonly purpose: string;
  /** From the session file's folder to the schema, for editors. */
  readonly schema: string;
}

const STARTERS = ["screening", "preparation", "room", "size", "blood_pressure"];

export function sessionText(header: SessionHeader, like: unknown, schemaOf: SchemaOf): string {
  const earlier = (typeof like === "object" && like !== null ? like : {}) as Readonly<Record<string, unknown>>;
  const session = schemaOf("session.schema.json");
  const blocks = Object.keys(session?.properties ?? {}).filter((name) =>
    like === undefined ? STARTERS.includes(name) : Object.hasOwn(earlier, name) && isBlock(name, session),
  );
  const body = blocks.map((name) => {
    const ref = session?.properties?.[name]?.$ref ?? "";
    return blockText(name, like === undefined ? undefined : earlier[name], schemaOf(ref), schemaOf);
  });
  return [
    `# yaml-language-server: $schema=${header.schema}`,
    "# Fill in what you measure: take the # away and write the value. What is not there counts as not recorded.",
    "# Keys, units and how to measure: waymark guide BLOCK. What is wrong: waymark check. No names, no contact data.",
    "waymark: session 1",
    `client: "${header.client}"`,
    `date: ${header.date}`,
    `# start_time: "08:30"`,
    `label: ${header.label}`,
    `purpose: ${header.purpose}`,
    ...(typeof earlier.practitioner === "string" ? [`practitioner: ${inline(earlier.practitioner)}`] : []),
    "",
    ...body,
    "# remarks:",
    "#   - Anything a colleague should know years later.",
    "",
  ].join("\n");
}

const isBlock = (name: string, session: GuideNode | undefined) =>
  session?.properties?.[name]?.$ref !== undefined && name !== "confirmed";

function blockText(name: string, value: unknown, node: GuideNode | undefined, schemaOf: SchemaOf): string {
  if (value === undefined || ANEW.includes(name) || Array.isArray(value)) return anew(name, node);
  const { kept, lines } = mappingLines(
    name,
    [],
    value as Readonly<Record<string, unknown>>,
    node,
    node ?? {},
    schemaOf,
  );
  const text = [`${name}:`, ...lines];
  // A block in which nothing is kept would be an empty key.
  return `${(kept && (node === undefined || isComplete(name, [], node)) ? text : text.map(comment)).join("\n")}\n`;
}

/** A block as comments only: its keys, each with what it takes. */
function anew(name: string, node: GuideNode | undefined): string {
  const list = node?.items !== undefined;
  const keys = Object.entries(node?.properties ?? node?.items?.properties ?? {}).filter(([key]) => key !== "confirmed");
  const lines = keys.map(([key, child], i) => `  # ${list ? (i === 0 ? "- " : "  ") : ""}${hint(key, child)}`);
  return `${[`# ${name}:${ANEW.includes(name) ? "   # anew at every visit" : ""}`, ...lines].join("\n")}\n`;
}

/** Lines of a mapping, those that are not carried as comments in their place. */
function mappingLines(
  block: string,
  path: readonly string[],
  value: Readonly<Record<string, unknown>>,
  node: GuideNode | undefined,
  root: GuideNode,
  schemaOf: SchemaOf,
): { kept: boolean; lines: string[] } {
  const indent = "  ".repeat(path.length + 1);
  let kept = false;
  const lines: string[] = [];
  for (const [key, inner] of Object.entries(value)) {
    if (key === "confirmed") continue;
    const at = [...path, key];
    const named = node?.properties?.[key];
    const child = named && resolved(named, root, schemaOf);
    if (isCarried(block, at)) {
      kept = true;
      lines.push(`${indent}${key}: ${inline(withoutConfirmed(inner))}`);
    } else if (typeof inner === "object" && inner !== null && !Array.isArray(inner) && child?.properties) {
      const below = mappingLines(block, at, inner as Readonly<Record<string, unknown>>, child, root, schemaOf);
      if (below.kept && isComplete(block, at, child)) {
        kept = true;
        lines.push(`${indent}${key}:`, ...below.lines);
      } else lines.push(...[`${indent}${key}:`, ...below.lines].map(comment));
    } else lines.push(comment(`${indent}${hint(key, child)}`));
  }
  return { kept, lines };
}

/** A part that cannot be without a measured value stands as a comment until there is one. */
const isComplete = (block: string, path: readonly string[], node: GuideNode): boolean =>
  (node.required ?? []).every((key) => isCarried(block, [...path, key]));

/** A line once commented is not commented again. */
const comment = (line: string): string => {
  const [, indent = "", rest = ""] = /^( *)(.*)$/s.exec(line) ?? [];
  return rest.startsWith("#") ? line : `${indent}# ${rest}`;
};

/** "mass_kg:   # kg, one or several readings". */
function hint(key: string, child: GuideNode | undefined): string {
  const types = [child?.type ?? []].flat();
  const facts = [
    child?.unit ?? child?.items?.unit ?? "",
    child?.enum ? child.enum.join(" | ") : "",
    types.includes("boolean") ? "true | false" : "",
    types.includes("array") && types.length > 1 ? "one or several readings: [ , ]" : "",
    child?.items?.properties ? `a list, each {${Object.keys(child.items.properties).slice(0, 4).join(": , ")}: }` : "",
  ].filter((fact) => fact !== "");
  return `${key}:${facts.length === 0 ? "" : `   # ${facts.join(", ")}`}`;
}

function withoutConfirmed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutConfirmed);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => key !== "confirmed")
      .map(([key, inner]) => [key, withoutConfirmed(inner)]),
  );
}

const inline = (value: unknown): string =>
  stringify(value, { collectionStyle: "flow", lineWidth: 0, flowCollectionPadding: false }).trimEnd();
