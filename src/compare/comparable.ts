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

/** What is found once for a pair of visits: changes, trends and averages of every measure ask again for the same pairs. */
interface Pair {
  readonly before: Results;
  readonly now: Results;
  /** The gates that have something to say. */
  readonly gates: ReadonlyMap<Gate, Said>;
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
  const ofNow = pairs.get(now) ?? new Map<Results, Pair>();
  pairs.set(now, ofNow);
  const known = ofNow.get(before) ?? {
    before,
    now,
    gates: gatesBetween(before, now),
    measures: new Map(),
    efforts: new Map(),
  };
  ofNow.set(before, known);
  return known;
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
  const differs: string[] = [];
  const unchecked: string[] = [];
  const add = (more: Comparability) => {
    differs.push(...more.differs);
    unchecked.push(...more.unchecked);
  };
  for (const gate of info === undefined ? [] : gatesOf(id, info)) {
    const said = pair.gates.get(gate);
    if (said !== undefined) (said.stops ? differs : unchecked).push(said.phrase);
  }
  const [was, is] = [quantityOf(before, id), quantityOf(now, id)];
  if (was && is) differs.push(...sameMaking(was, is));
  if (info && dependsOnEffort(id, info.section)) add(effortIn(pair, id));
  differs.push(...grades(id, before, now));
  add(remarksOn(id, before, now));
  return { differs, unchecked };
}

function gatesBetween(before: Results, now: Results): ReadonlyMap<Gate, Said> {
  const said = new Map<Gate, Said>();
  for (const gate of GATES) {
    const [a, b] = [recorded(gate, before), recorded(gate, now)];
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

function grades(id: string, before: Results, now: Results): string[] {
  const grade = GRADE_OF.get(id);
  if (grade === undefined) return [];
  const [was, is] = [before, now].map((visit) => quantityOf(visit, grade)?.value);
  if (was === undefined && is === undefined) return [];
  if (was !== undefined && is !== undefined && Math.abs(is - was) <= GRADE_APART) return [];
  const said = (x: number | undefined) => (x === undefined ? "not given" : `${toDecimals(x, 1)} %`);
  return [`grade at that speed (${said(was)}, now ${said(is)})`];
}

const unknown = (gate: Gate) => (gate.must ? `${gate.name} (not recorded at either visit)` : gate.name);

function recorded(gate: Gate, results: Results): string | undefined {
  const source = (gate.choice ? results.choices : results.conditions) as Readonly<Record<string, unknown>>;
  const word = source[gate.condition];
  return word === undefined || word === "" ? undefined : String(word);
}

function sameMaking(was: Quantity, is: Quantity): string[] {
  if (was.unit !== is.unit) return [`unit (${was.unit}, now ${is.unit})`];
  const [made, makes] = [making(was), making(is)];
  return made === makes ? [] : [`formula (${made}, now ${makes})`];
}

const making = ({ origin }: Quantity): string => (origin.kind === "formula" ? origin.formula : "measured");

/**
 * Remarks that weaken a value or anything it was computed from. A fatal one stops the claim; so does one that weakens,
 * unless both visits fell short in the very same way. What was merely not recorded is listed as unchecked.
 */
function remarksOn(id: string, before: Results, now: Results): Comparability {
  const [was, is] = [remarksFor(id, before), remarksFor(id, now)];
  if (was.length === 0 && is.length === 0) return { differs: [], unchecked: [] };
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
  const known = weakening.get(results) ?? {
    all: results.entries.filter((entry) => entry.kind === "remark").filter((remark) => remark.severity !== "record"),
    measures: new Map(),
  };
  weakening.set(results, known);
  return known;
}

function remarksFor(id: string, results: Results): readonly Remark[] {
  const { all, measures } = weakeningOf(results);
  if (all.length === 0) return all;
  const known = measures.get(id) ?? affecting(id, results, all);
  measures.set(id, known);
  return known;
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
