/**
 * The norms stage: every quantity gets its positions in the tables that the visit's choices name and that cover the
 * client. Entries are not changed; new ones are returned. A reference that refuses is reported with its reason.
 */
import type { Choices } from "../kernel/generated/choices.js";
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import type { Cell, Entry, NormPosition, Quantity } from "../kernel/measure.js";
import { roundTo } from "../kernel/rounding.js";
import type { Visit } from "../kernel/visit.js";
import { refusals } from "./applies.js";
import { info as linear } from "./percentile-linear.js";
import { type Person, personOf } from "./person.js";
import { neighbourIn, percentileCurve, positionIn, STRIP } from "./position.js";
import * as words from "./words.js";

/** The entries with norms attached, and one table with the percentile curves that the strips are drawn from. */
export function norms(entries: readonly Entry[], visit: Visit, tables: readonly ReferenceTable[]): readonly Entry[] {
  const person = personOf(visit, entries);
  const byMeasure = measuresOf(tables);
  const curves: Cell[][] = [];
  const out = entries.map((entry): Entry => {
    const own = entry.kind === "quantity" ? byMeasure.get(entry.id) : undefined;
    if (own === undefined || entry.kind !== "quantity") return entry;
    const chosen = own.filter((table) => isChosen(table, visit.choices));
    const positions = positionsOf(entry, own, chosen, tables, person, visit.choices);
    const row = curveRow(entry, chosen, positions, person);
    if (row !== undefined) curves.push(row);
    return positions.length === 0 ? entry : { ...entry, norms: positions };
  });
  return curves.length === 0 ? out : [...out, curveTable(curves)];
}

type ByMeasure = ReadonlyMap<string, readonly ReferenceTable[]>;
const known = new WeakMap<readonly ReferenceTable[], ByMeasure>();

/** The tables of each measure that has any, found once for a list of tables. */
function measuresOf(tables: readonly ReferenceTable[]): ByMeasure {
  const found = known.get(tables);
  if (found !== undefined) return found;
  const measures = new Set(tables.flatMap(({ measure, also = [] }) => [measure, ...also]));
  const own = (id: string) => tables.filter((table) => table.measure === id || table.also?.includes(id));
  const byMeasure = new Map([...measures].map((id) => [id, own(id)]));
  known.set(tables, byMeasure);
  return byMeasure;
}

function positionsOf(
  entry: Quantity,
  own: readonly ReferenceTable[],
  chosen: readonly ReferenceTable[],
  all: readonly ReferenceTable[],
  person: Person,
  choices: Choices,
): readonly NormPosition[] {
  const fitting = chosen.filter((table) => refusals(table, person).length === 0);
  const given = fitting.flatMap((table) => {
    const second = neighbourIn(table, person, entry.value);
    const first = positionIn(table, person, entry.value);
    return second === undefined ? [first] : [first, second];
  });
  if (fitting.some((table) => table.role === "reference")) return given;
  const refusal = refusalOf(own, chosen, all, person, choices);
  return refusal === undefined ? given : [refusal, ...given];
}

/**
 * Why no reference was given: the reasons of the tables that came nearest, or that no table bears the name chosen.
 * A chosen edition that simply has no table for this measure says nothing.
 */
function refusalOf(
  own: readonly ReferenceTable[],
  chosen: readonly ReferenceTable[],
  all: readonly ReferenceTable[],
  person: Person,
  choices: Choices,
): NormPosition | undefined {
  const refused = chosen
    .filter((table) => table.role === "reference")
    .map((table) => ({ table, reasons: refusals(table, person) }));
  const fewest = Math.min(...refused.map(({ reasons }) => reasons.length));
  const [nearest, ...others] = refused.filter(({ reasons }) => reasons.length === fewest);
  if (nearest !== undefined) {
    const more = others.map(({ table, reasons }) => `${table.id}: ${reasons.join("; ")}`);
    return { table: nearest.table.id, notGiven: [nearest.reasons.join("; "), ...more].join(" · ") };
  }
  for (const key of own.flatMap((table) => (table.role === "reference" ? Object.keys(table.choice ?? {}) : []))) {
    const edition = String(choices[key as keyof Choices]);
    if (!all.some((table) => table.choice?.[key]?.includes(edition)))
      return { table: edition, notGiven: words.noEdition(key, edition) };
  }
  return undefined;
}

/** Whether the visit's choices name the table. */
export function isChosen({ choice }: ReferenceTable, choices: Choices): boolean {
  for (const key in choice) if (!choice[key]?.includes(String(choices[key as keyof Choices]))) return false;
  return true;
}

/** The curve of the first chosen table that has one for the person. */
function curveRow(
  entry: Quantity,
  chosen: readonly ReferenceTable[],
  positions: readonly NormPosition[],
  person: Person,
): Cell[] | undefined {
  for (const table of chosen) {
    const curve = percentileCurve(table, person);
    if (curve.length === 0) continue;
    const group = positions.find((position) => position.table === table.id)?.group ?? null;
    const values = new Map(curve);
    const strip = STRIP.map((p) => {
      const value = values.get(p);
      return value === undefined ? null : roundTo(value, entry.decimals + 1);
    });
    return [entry.id, table.id, group, ...strip];
  }
  return undefined;
}

const curveTable = (rows: readonly (readonly Cell[])[]): Entry => ({
  kind: "table",
  id: "reference_percentiles",
  columns: [
    { key: "measure", title: "Measure" },
    { key: "table", title: "Reference table" },
    { key: "group", title: "Group" },
    ...STRIP.map((p) => ({ key: `p${p}`, title: words.ordinal(p) })),
  ],
  rows,
  origin: { kind: "formula", formula: `${linear.id} r${linear.revision}`, inputs: [] },
  note: "Values of the reference group at each percentile; empty where the source does not go.",
});
