/**
 * Whether one measure of two visits may be compared: conditions, formula, unit, and remarks that weaken either value.
 */
import type { Entry, Quantity } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { type Gate, gatesOf } from "./gates.js";

export interface Comparability {
  /** What differs, each as a phrase with both words. Empty: a claim may be made. */
  readonly differs: readonly string[];
  /** What neither visit recorded. */
  readonly unchecked: readonly string[];
}

/** Entries of a visit by id, made once a visit: every measure is looked up many times. */
const indexes = new WeakMap<Results, ReadonlyMap<string, Entry>>();

function entryOf(results: Results, id: string): Entry | undefined {
  let index = indexes.get(results);
  if (index === undefined) {
    index = new Map(results.entries.map((entry) => [entry.id, entry]));
    indexes.set(results, index);
  }
  return index.get(id);
}

/** The value of a measure at a visit, or undefined. */
export function quantityOf(results: Results, id: string): Quantity | undefined {
  const entry = entryOf(results, id);
  return entry?.kind === "quantity" ? entry : undefined;
}

export function comparability(id: string, before: Results, now: Results): Comparability {
  const info = measureInfo(id);
  const differs: string[] = [];
  const unchecked: string[] = [];
  for (const gate of info === undefined ? [] : gatesOf(id, info)) {
    const [a, b] = [recorded(gate, before), recorded(gate, now)];
    if (a === undefined && b === undefined) (gate.must ? differs : unchecked).push(unknown(gate));
    else if (gate.condition === "effort" && a === b && a !== "VO2max")
      unchecked.push(`${gate.name} (at neither visit)`);
    else if (a === undefined || b === undefined)
      differs.push(`${gate.name} (not recorded on ${a === undefined ? before.date : now.date})`);
    else if (!(gate.same ?? ((x, y) => x === y))(a, b)) differs.push(`${gate.name} (${a}, now ${b})`);
  }
  const [was, is] = [quantityOf(before, id), quantityOf(now, id)];
  if (was && is) differs.push(...sameMaking(was, is));
  differs.push(...weakened(id, before), ...weakened(id, now));
  return { differs, unchecked };
}

const unknown = (gate: Gate) => (gate.must ? `${gate.name} (not recorded at either visit)` : gate.name);

function recorded(gate: Gate, results: Results): string | undefined {
  if (gate.condition === "effort") return effort(results);
  const source = (gate.choice ? results.choices : results.conditions) as Readonly<Record<string, unknown>>;
  const word = source[gate.condition];
  return word === undefined || word === "" ? undefined : String(word);
}

/** What the test of maximal effort said: "VO2max" where a maximum was confirmed, else "VO2peak". */
function effort(results: Results): string | undefined {
  const entry = entryOf(results, "maximality");
  return entry?.kind === "judgement" ? entry.verdict : undefined;
}

function sameMaking(was: Quantity, is: Quantity): string[] {
  if (was.unit !== is.unit) return [`unit (${was.unit}, now ${is.unit})`];
  const formula = (q: Quantity) => (q.origin.kind === "formula" ? q.origin.formula : "measured");
  return formula(was) === formula(is) ? [] : [`formula (${formula(was)}, now ${formula(is)})`];
}

/** Remarks that weaken a value or anything it was computed from. What was merely not recorded does not count here. */
function weakened(id: string, results: Results): string[] {
  const remarks = results.entries.filter((entry) => entry.kind === "remark");
  if (remarks.length === 0) return [];
  const ids = restsOn(id, results);
  return remarks.flatMap((entry) =>
    entry.severity !== "record" &&
    (entry.severity === "fatal" || !/^not recorded/.test(entry.found)) &&
    (entry.affects.length === 0 ? entry.severity === "fatal" : entry.affects.some((affected) => ids.has(affected)))
      ? [`validity on ${results.date} (${entry.found})`]
      : [],
  );
}

/** A measure and every measure it was computed from. */
function restsOn(id: string, results: Results): ReadonlySet<string> {
  const seen = new Set<string>();
  const queue = [id];
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    const entry = quantityOf(results, next);
    if (entry?.origin.kind === "formula")
      for (const input of entry.origin.inputs) if (input.measure) queue.push(input.measure);
  }
  return seen;
}
