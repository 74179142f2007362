/** `confirmed:` beside a value: whether it covers the value, and whether it names something that is there. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import { nearest } from "../kernel/near.js";
import { words } from "./words.js";

type Mapping = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is object => typeof value === "object" && value !== null;
const isMapping = (value: unknown): value is Mapping => isNode(value) && !Array.isArray(value);

/**
 * A value is confirmed by the mapping it stands in, with one sentence or under its own key; or by a mapping further
 * out, under its own key or under the way to it (readings.0.systolic_mmhg).
 */
export function isConfirmed(root: unknown, path: readonly string[]): boolean {
  const chain: { mapping: Mapping; depth: number }[] = [];
  let value: unknown = root;
  for (const [depth, step] of path.entries()) {
    if (isMapping(value)) chain.push({ mapping: value, depth });
    value = (value as Record<string, unknown> | undefined)?.[step];
  }
  const isIndex = (step: string) => /^\d+$/.test(step);
  return chain.some(({ mapping, depth }, i) => {
    const { confirmed } = mapping;
    const inner = path.slice(depth);
    if (typeof confirmed === "string") return i === chain.length - 1;
    if (!isMapping(confirmed)) return false;
    const own = inner.findLast((step) => !isIndex(step)) ?? "";
    return [own, inner.join("."), inner.filter((s) => !isIndex(s)).join(".")].some((key) =>
      Object.hasOwn(confirmed, key),
    );
  });
}

/** Confirmations of keys that are nowhere below the mapping. */
export function confirmedFaults(document: Document): Diagnostic[] {
  const found: Diagnostic[] = [];
  const walk = (value: object, path: readonly string[]): void => {
    if (Array.isArray(value))
      for (const [i, item] of value.entries()) if (isNode(item)) walk(item, [...path, String(i)]);
    if (!isMapping(value)) return;
    if (isMapping(value.confirmed)) {
      const { confirmed, ...rest } = value;
      const known = keysBelow(rest);
      for (const key of Object.keys(confirmed as Mapping)) {
        const last = key.split(".").findLast((step) => !/^\d+$/.test(step)) ?? key;
        if (!known.has(last))
          found.push({
            code: "confirmed-unknown",
            severity: "warning",
            at: document.place([...path, "confirmed", key], "key"),
            ...words.confirmedUnknown(key, nearest(key, [...known])),
          });
      }
    }
    for (const [key, inner] of Object.entries(value))
      if (key !== "confirmed" && isNode(inner)) walk(inner, [...path, key]);
  };
  if (isNode(document.value)) walk(document.value, []);
  return found;
}

function keysBelow(value: unknown, keys = new Set<string>()): Set<string> {
  if (Array.isArray(value)) for (const item of value) keysBelow(item, keys);
  else if (isMapping(value))
    for (const [key, inner] of Object.entries(value)) {
      keys.add(key);
      keysBelow(inner, keys);
    }
  return keys;
}
