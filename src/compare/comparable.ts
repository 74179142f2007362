/**
 * Whether one measure of two visits may be compared: conditions, formula, unit, and remarks that weaken either value.
 */

import { quantityOf } from "../kernel/entries.js";
import type { Quantity, Remark } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { toDecimals } from "../kernel/rounding.js";
import { dependsOnEffort, effortOf } from "./effort.js";
import { GATES, type Gate, gatesOf } from "./gates.js";
import { spokenDate } from "./spoken.js";

export interface Comparability {
  /** What differs, each as a phrase with both words. Empty: a claim may be made. */
  readonly differs: readonly string[];
  /** What neither visit recorded. */
  readonly unchecked: readonly string[];
}

const NOTHING: Comparability = { differs: [], unchecked: [] };

/** What is found once for a pair of visits: changes, trends and averages of every measure ask again for the same pairs. */
interface Pair {
  readonly before: Results;
  readonly now: Results;
  /** The gates that have something to say. */
  readonly gates: ReadonlyMap<Gate, Said>;
  /** What the gates of a measure say together; many measures have the same. */
  readonly lists: Map<readonly Gate[], Comparability>;
  readonly measures: Map<string, Comparability>;
  readonly efforts: Map<boolean, Comparability>;
}
interface Said {
  /** Whether the claim stops; what does not stop it is unchecked. */
  readonly stops: boolean;
  readonly phrase: string;
}

/** By the later visit, then by the earlier. */
const pairs = new WeakMap<Results, Map<Results, Pair>>();

function pairOf(before: Results, now: Results): Pair {
  const ofNow = pairs.get(now);
  const known = ofNow?.get(before);
  if (known !== undefined) return known;
  const pair = {
    before,
    now,
    gates: gatesBetween(before, now),
    lists: new Map(),
    measures: new Map(),
    efforts: new Map(),
  };
  if (ofNow === undefined) pairs.set(now, new Map([[before, pair]]));
  else ofNow.set(before, pair);
  return pair;
}

export function comparability(id: string, before: Results, now: Results): Comparability {
  const pair = pairOf(before, now);
  const known = pair.measures.get(id);
  if (known !== undefined) return known;
  const found = compared(id, pair);
  pair.measures.set(id, found);
  return found;
}

function compared(id: string, pair: Pair): Comparability {
  const { before, now } = pair;
  const info = measureInfo(id);
  const gates = info === undefined ? NOTHING : gatesIn(pair, gatesOf(id, info));
  const effort = info !== undefined && dependsOnEffort(id, info.section) ? effortIn(pair, id) : NOTHING;
  const made = joined(gates, sameMaking(quantityOf(before, id), quantityOf(now, id)));
  return joined(joined(joined(made, effort), grades(id, before, now)), remarksOn(id, before, now));
}

function joined(one: Comparability, more: Comparability): Comparability {
  if (more === NOTHING) return one;
  return { differs: [...one.differs, ...more.differs], unchecked: [...one.unchecked, ...more.unchecked] };
}

function gatesIn({ gates, lists }: Pair, list: readonly Gate[]): Comparability {
  const known = lists.get(list);
  if (known !== undefined) return known;
  const differs: string[] = [];
  const unchecked: string[] = [];
  for (const gate of list) {
    const said = gates.get(gate);
    if (said !== undefined) (said.stops ? differs : unchecked).push(said.phrase);
  }
  const found = { differs, unchecked };
  lists.set(list, found);
  return found;
}

function gatesBetween(before: Results, now: Results): ReadonlyMap<Gate, Said> {
  const said = new Map<Gate, Said>();
  const was = recordedAt(before);
  const is = recordedAt(now);
  for (let i = 0; i < GATES.length; i++) {
    const [gate, a, b] = [GATES[i] as Gate, was[i], is[i]];
    if (a === undefined && b === undefined) {
      if (gate.must || !gate.quiet) said.set(gate, { stops: gate.must === true, phrase: unknown(gate) });
    } else if (a === undefined || b === undefined) {
      const date = spokenDate(a === undefined ? before.date : now.date);
      said.set(gate, { stops: true, phrase: `${gate.name} (not recorded on ${date})` });
    } else if (!(gate.same?.(a, b) ?? a === b))
      said.set(gate, { stops: true, phrase: `${gate.name} (${a}, now ${b})` });
  }
  return said;
}

/** Peak heart rate does not vouch for itself. */
function effortIn({ before, now, efforts }: Pair, id: string): Comparability {
  const byRate = !id.startsWith("heart_rate");
  const known = efforts.get(byRate) ?? effortOf(byRate, before, now);
  efforts.set(byRate, known);
  return known;
}

/** The grade that belongs to a speed: 5 km/h at 8 % and at 14 % are not one speed kept. */
const GRADE_OF: ReadonlyMap<string, string> = new Map([
  ["speed_peak", "grade_peak"],
  ["vt1_speed", "vt1_grade"],
  ["vt2_speed", "vt2_grade"],
]);
const GRADE_APART = 0.5;

function grades(id: string, before: Results, now: Results): Comparability {
  const grade = GRADE_OF.get(id);
  if (grade === undefined) return NOTHING;
  const [was, is] = [before, now].map((visit) => quantityOf(visit, grade)?.value);
  if (was === undefined && is === undefined) return NOTHING;
  if (was !== undefined && is !== undefined && Math.abs(is - was) <= GRADE_APART) return NOTHING;
  const said = (x: number | undefined) => (x === undefined ? "not given" : `${toDecimals(x, 1)} %`);
  return stopping(`grade at that speed (${said(was)}, now ${said(is)})`);
}

const stopping = (phrase: string): Comparability => ({ differs: [phrase], unchecked: [] });

const unknown = (gate: Gate) => (gate.must ? `${gate.name} (not recorded at either visit)` : gate.name);

/** What a visit recorded for each gate; found once, because it is compared with every other. */
const words = new WeakMap<Results, readonly (string | undefined)[]>();

function recordedAt(results: Results): readonly (string | undefined)[] {
  const known = words.get(results);
  if (known !== undefined) return known;
  const found = GATES.map((gate) => recorded(gate, results));
  words.set(results, found);
  return found;
}

function recorded(gate: Gate, results: Results): string | undefined {
  const source = (gate.choice ? results.choices : results.conditions) as Readonly<Record<string, unknown>>;
  const word = source[gate.condition];
  return word === undefined || word === "" ? undefined : String(word);
}

function sameMaking(was: Quantity | undefined, is: Quantity | undefined): Comparability {
  if (was === undefined || is === undefined) return NOTHING;
  if (was.unit !== is.unit) return stopping(`unit (${was.unit}, now ${is.unit})`);
  const made = making(was);
  const makes = making(is);
  return made === makes ? NOTHING : stopping(`formula (${made}, now ${makes})`);
}

const making = ({ origin }: Quantity): string => (origin.kind === "formula" ? origin.formula : "measured");

/**
 * Remarks that weaken a value or anything it was computed from. A fatal one stops the claim; so does one that weakens,
 * unless both visits fell short in the very same way. What was merely not recorded is listed as unchecked.
 */
function remarksOn(id: string, before: Results, now: Results): Comparability {
  const was = remarksFor(id, before);
  const is = remarksFor(id, now);
  if (was.length === 0 && is.length === 0) return NOTHING;
  const same = (a: Remark, others: readonly Remark[]) =>
    a.severity === "weakens" &&
    others.some((b) => b.severity === "weakens" && b.rule === a.rule && b.found === a.found);
  const differs: string[] = [];
  const unchecked: string[] = [];
  for (const [visit, own, other] of [
    [before, was, is],
    [now, is, was],
  ] as const)
    for (const remark of own) {
      const alike = same(remark, other);
      if (remark.severity === "weakens" && /^not recorded/.test(remark.found)) continue;
      if (!alike) differs.push(`validity on ${spokenDate(visit.date)} (${remark.found}; limit ${remark.limit})`);
      else if (visit === now) unchecked.push(`validity at both visits (${remark.found}; limit ${remark.limit})`);
    }
  return { differs, unchecked };
}

/** The remarks of a visit that weaken anything, and those found before by measure. */
interface Weakening {
  readonly all: readonly Remark[];
  readonly measures: Map<string, readonly Remark[]>;
}
const weakening = new WeakMap<Results, Weakening>();

function weakeningOf(results: Results): Weakening {
  const known = weakening.get(results);
  if (known !== undefined) return known;
  const found = {
    all: results.entries.filter((entry) => entry.kind === "remark").filter((remark) => remark.severity !== "record"),
    measures: new Map<string, readonly Remark[]>(),
  };
  weakening.set(results, found);
  return found;
}

function remarksFor(id: string, results: Results): readonly Remark[] {
  const { all, measures } = weakeningOf(results);
  if (all.length === 0) return all;
  const known = measures.get(id);
  if (known !== undefined) return known;
  const found = affecting(id, results, all);
  measures.set(id, found);
  return found;
}

function affecting(id: string, results: Results, remarks: readonly Remark[]): readonly Remark[] {
  const ids = restsOn(id, results);
  return remarks.filter(({ affects, severity }) =>
    affects.length === 0 ? severity === "fatal" : affects.some((affected) => ids.has(affected)),
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
