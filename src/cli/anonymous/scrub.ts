/**
 * A document without what could tell who it is about: free text is dropped, dates are shifted. What stays is listed, not
 * what goes: numbers, true and false, words that the schema lists, times of the day, shifted dates, and short keys.
 */
import { type GuideNode, resolved, type SchemaOf } from "../guide.js";

export interface Scrubbing {
  /** Shifts an ISO date. */
  readonly shift: (date: string) => string;
  /** The same word for the same text, so that two visits with one protocol still have one. */
  readonly stand: (text: string) => string;
  readonly schemaOf: SchemaOf;
}
type Mapping = Readonly<Record<string, unknown>>;
type Node = GuideNode & { readonly additionalProperties?: unknown; readonly const?: unknown };

export const WITHHELD = "withheld";
const DATE = /^\d{4}-\d{2}-\d{2}$/;
const TIME = /^\d{1,2}:\d{2}(:\d{2})?$/;
/** Keys whose text is a short name of something in lab.yaml or the catalogue, or decides what a number means. */
const NAMED =
  /^(instrument|device|scanner|spirometer|caliper|scales|stadiometer|ergometer|measure|primary_outcomes|unit|column|waymark|maker|missing|delimiter|decimal|gas)$/;
/** Text that only has to be the same where it was the same. */
const COMPARED = /^(name|measurer)$/;
/** Left out whole: free text, people, and what lies in other files. */
const DROPPED =
  /^(remarks|remark|note|notes|practitioner|reference_note|comment|description|address|letterhead|logo|serial|software|norms|profiles|screening_sign_off|training_log|label|symptoms_text|detail|adverse_detail|supplements|medication_today|sport|start_time|kept_by)$/;

/** The value without free text; undefined where nothing is left of it. */
export function scrub(value: unknown, node: GuideNode, root: GuideNode, by: Scrubbing, key = ""): unknown {
  const here = resolved(node, root, by.schemaOf) as Node;
  const home = rootOf(node, root, by.schemaOf);
  if (Array.isArray(value)) {
    const items = value
      .map((item) => scrub(item, here.items ?? {}, home, by, key))
      .filter((item) => item !== undefined);
    return items.length === 0 && value.length > 0 ? undefined : items;
  }
  if (typeof value === "object" && value !== null) return scrubMapping(value as Mapping, here, home, by);
  if (typeof value !== "string") return value;
  if (DATE.test(value)) return by.shift(value);
  if (TIME.test(value) || NAMED.test(key) || listed(here, value)) return value;
  return COMPARED.test(key) ? by.stand(value) : undefined;
}

function scrubMapping(value: Mapping, node: Node, root: GuideNode, by: Scrubbing): Mapping | undefined {
  const entries = Object.entries(value).flatMap(([key, inner]): [string, unknown][] => {
    const isRequired = node.required?.includes(key) ?? false;
    if (key === "confirmed") return [[key, confirmed(inner)]];
    if (DROPPED.test(key)) return isRequired ? [[key, WITHHELD]] : [];
    const further = typeof node.additionalProperties === "object" ? (node.additionalProperties as GuideNode) : {};
    const kept = scrub(inner, node.properties?.[key] ?? further, root, by, key);
    if (kept !== undefined) return [[key, kept]];
    return isRequired ? [[key, WITHHELD]] : [];
  });
  return entries.length === 0 && Object.keys(value).length > 0 ? undefined : Object.fromEntries(entries);
}

/** What was confirmed stays confirmed; the words do not stay. */
const confirmed = (value: unknown): unknown =>
  typeof value === "object" && value !== null
    ? Object.fromEntries(Object.keys(value).map((key) => [key, WITHHELD]))
    : WITHHELD;

const listed = (node: Node, value: string): boolean =>
  node.const === value ||
  (node.enum?.includes(value) ?? false) ||
  [...(node.anyOf ?? []), ...(node.oneOf ?? [])].some((variant) => listed(variant as Node, value));

/** The file that "#/…" inside the node refers to. */
function rootOf(node: GuideNode, root: GuideNode, schemaOf: SchemaOf): GuideNode {
  if (node.$ref === undefined || node.$ref.startsWith("#")) return root;
  return schemaOf(node.$ref) ?? schemaOf(`blocks/${node.$ref}`) ?? root;
}
