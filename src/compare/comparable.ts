/**
 * Whether one measure of two visits may be compared: conditions, formula, unit, and remarks that weaken either value.
 */

import { quantityOf } from "../kernel/entries.js";
import type { Quantity, Remark } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { toDecimals } from "../kernel/rounding.js";
import { dependsOnEffort, effortOf } from "./effort.js";
import { type Gate, gatesOf } from "./gates.js";
import { spokenDate } from "./spoken.js";

export interface Comparability {
  /** What differs, each as a phrase with both words. Empty: a claim may be made. */
  readonly differs: readonly string[];
  /** What neither visit recorded. */
  readonly unchecked: readonly string[];
}

/** Found before, by pair of visits and measure: changes, trends and averages ask again for the same pairs. */
const found = new WeakMap<Results, WeakMap<Results, Map<string, Comparability>>>();

export function comparability(id: string, before: Results, now: Results): Comparability {
  const ofBefore = found.get(before) ?? new WeakMap<Results, Map<string, Comparability>>();
  found.set(before, ofBefore);
  const ofPair = ofBefore.get(now) ?? new Map<string, Comparability>();
  ofBefore.set(now, ofPair);
  const known = ofPair.get(id) ?? compared(id, before, now);
  ofPair.set(id, known);
  return known;
}

function compared(id: string, before: Results, now: Results): Comparability {
  const info = measureInfo(id);
  const differs: string[] = [];
  const unchecked: string[] = [];
  for (const gate of info === undefined ? [] : gatesOf(id, info)) {
    const [a, b] = [recorded(gate, before), recorded(gate, now)];
    if (a === undefined && b === undefined) {
      if (gate.must) differs.push(unknown(gate));
      else if (!gate.quiet) unchecked.push(unknown(gate));
    } else if (a === undefined || b === undefined)
      differs.push(`${gate.name} (not recorded on ${spokenDate(a === undefined ? before.date : now.date)})`);
    else if (!(gate.same ?? ((x, y) => x === y))(a, b)) differs.push(`${gate.name} (${a}, now ${b})`);
  }
  const [was, is] = [quantityOf(before, id), quantityOf(now, id)];
  if (was && is) differs.push(...sameMaking(was, is));
  if (info && dependsOnEffort(id, info.section)) {
    const effort = effortOf(id, before, now);
    differs.push(...effort.differs);
    unchecked.push(...effort.unchecked);
  }
  differs.push(...grades(id, before, now));
  const remarks = remarksOn(id, before, now);
  return { differs: [...differs, ...remarks.differs], unchecked: [...unchecked, ...remarks.unchecked] };
}

/** The grade that belongs to a speed: 5 km/h at 8 % and at 14 % are not one speed kept. */
const GRADE_OF: Readonly<Record<string, string>> = {
  speed_peak: "grade_peak",
  vt1_speed: "vt1_grade",
  vt2_speed: "vt2_grade",
};
const GRADE_APART = 0.5;

function grades(id: string, before: Results, now: Results): string[] {
  const grade = GRADE_OF[id];
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
  const formula = (q: Quantity) => (q.origin.kind === "formula" ? q.origin.formula : "measured");
  return formula(was) === formula(is) ? [] : [`formula (${formula(was)}, now ${formula(is)})`];
}

/**
 * Remarks that weaken a value or anything it was computed from. A fatal one stops the claim; so does one that weakens,
 * unless both visits fell short in the very same way. What was merely not recorded is listed as unchecked.
 */
function remarksOn(id: string, before: Results, now: Results): Comparability {
  const [was, is] = [remarksFor(id, before), remarksFor(id, now)];
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

const weakening = new WeakMap<Results, readonly Remark[]>();
function weakeningRemarks(results: Results): readonly Remark[] {
  const known =
    weakening.get(results) ??
    results.entries.filter((entry) => entry.kind === "remark").filter((remark) => remark.severity !== "record");
  weakening.set(results, known);
  return known;
}

function remarksFor(id: string, results: Results): readonly Remark[] {
  const remarks = weakeningRemarks(results);
  if (remarks.length === 0) return [];
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
