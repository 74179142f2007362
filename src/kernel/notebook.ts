/**
 * The notebook a domain writes its findings in. It is the one place where a formula meets its inputs: `compute`
 * looks the inputs up, notes them with their units, and turns a missing input or a refusal into "not given, because …".
 *
 * A notebook lives for one call of derive; the entries it gives out are never changed.
 */
import { type FormulaInfo, OutOfRange } from "./formula.js";
import type { Cell, Column, Entry, FormulaInput, Judgement, MeasurementError, Quantity } from "./measure.js";
import { catalogue, type MeasureId } from "./measures.js";
import { toDecimals } from "./rounding.js";

/** An input of a formula: the id of an entry, or a value of its own with name and unit ("" for a word or a count). */
export type Ref = MeasureId | { readonly name: string; readonly value: unknown; readonly unit: string };

export interface Notebook {
  /** Writes a measured value. `key` is the session key it came from, e.g. "session.yaml size.mass_kg". */
  record(id: MeasureId, value: number, key: string, more?: Extra): void;
  /** Runs a formula on entries and values; writes the number, or why there is none. Returns the number if given. */
  compute<Args extends readonly unknown[]>(
    id: MeasureId,
    formula: FormulaInfo<Args, number>,
    args: { readonly [K in keyof Args]: Ref },
    more?: Extra,
  ): number | undefined;
  /** Writes a number that came out of a formula with many outputs (a fit, a window). */
  found(id: MeasureId, value: number, formula: FormulaName, inputs: readonly Ref[], more?: Extra): void;
  withhold(id: MeasureId, because: string): void;
  judge(id: MeasureId, verdict: string, because: string, more?: Pick<Judgement, "rule" | "inputs">): void;
  table(
    id: MeasureId,
    columns: readonly Column[],
    rows: readonly (readonly Cell[])[],
    formula: FormulaName,
    inputs: readonly Ref[],
    note?: string,
  ): void;
  /** The full-precision value of an entry, or undefined when it is absent or not given. */
  value(id: MeasureId): number | undefined;
  entry(id: MeasureId): Entry | undefined;
  entries(): readonly Entry[];
}
export type Extra = { readonly error?: MeasurementError; readonly note?: string };
/** Anything with id and revision: a formula's info. */
export type FormulaName = { readonly id: string; readonly revision: number };

export function openNotebook(): Notebook {
  const entries = new Map<string, Entry>();

  const put = (entry: Entry) => {
    if (entries.has(entry.id)) throw new Error(`two entries for ${entry.id}: a measure is written once a visit`);
    entries.set(entry.id, entry);
  };

  const quantity = (id: MeasureId, value: number, origin: Quantity["origin"], more: Extra = {}): void => {
    const info = catalogue[id];
    if (info?.unit === undefined || info.decimals === undefined) throw new Error(`${id} has no unit in the catalogue`);
    if (!Number.isFinite(value)) throw new Error(`${id} is ${value}: a formula must refuse, never return it`);
    put({ kind: "quantity", id, value, unit: info.unit, decimals: info.decimals, origin, ...more });
  };

  /** The numbers behind the references, or the reason why one has none. */
  const resolve = (refs: readonly Ref[]): { values: unknown[]; missing?: string } => {
    const values: unknown[] = [];
    for (const ref of refs) {
      if (typeof ref !== "string") {
        values.push(ref.value);
        continue;
      }
      const entry = entries.get(ref);
      if (entry?.kind === "quantity") values.push(entry.value);
      else return { values, missing: reasonFor(ref, entry) };
    }
    return { values };
  };

  return {
    record: (id, value, key, more) => quantity(id, value, { kind: "key", key }, more),
    compute<Args extends readonly unknown[]>(
      id: MeasureId,
      formula: FormulaInfo<Args, number>,
      args: { readonly [K in keyof Args]: Ref },
      more?: Extra,
    ): number | undefined {
      const { values, missing } = resolve(args as readonly Ref[]);
      if (missing !== undefined) {
        put({ kind: "not given", id, because: missing });
        return undefined;
      }
      try {
        const value = formula.compute(...(values as unknown as Args));
        quantity(id, value, origin(formula, args as readonly Ref[], entries), more);
        return value;
      } catch (error) {
        if (!(error instanceof OutOfRange)) throw error;
        put({ kind: "not given", id, because: error.message });
        return undefined;
      }
    },
    found: (id, value, formula, inputs, more) => quantity(id, value, origin(formula, inputs, entries), more),
    withhold: (id, because) => put({ kind: "not given", id, because }),
    judge: (id, verdict, because, more = {}) => put({ kind: "judgement", id, verdict, because, ...more }),
    table: (id, columns, rows, formula, inputs, note) =>
      put({
        kind: "table",
        id,
        columns,
        rows,
        origin: origin(formula, inputs, entries),
        ...(note === undefined ? {} : { note }),
      }),
    value(id) {
      const entry = entries.get(id);
      return entry?.kind === "quantity" ? entry.value : undefined;
    },
    entry: (id) => entries.get(id),
    entries: () => [...entries.values()],
  };
}

function reasonFor(id: string, entry: Entry | undefined): string {
  const title = catalogue[id as MeasureId]?.title ?? id;
  return entry?.kind === "not given" ? `${title} is not given: ${entry.because}` : `${title} was not measured`;
}

function origin(formula: FormulaName, refs: readonly Ref[], entries: ReadonlyMap<string, Entry>): Quantity["origin"] {
  return { kind: "formula", formula: `${formula.id} r${formula.revision}`, inputs: inputsOf(refs, entries) };
}

/** References as the results file prints them. */
export function inputsOf(refs: readonly Ref[], entries: ReadonlyMap<string, Entry>): FormulaInput[] {
  return refs.map((ref) => {
    if (typeof ref === "string") {
      const entry = entries.get(ref);
      if (entry?.kind !== "quantity") return { name: ref, text: "not given", measure: ref };
      return { name: ref, text: `${toDecimals(entry.value, entry.decimals)} ${entry.unit}`.trim(), measure: ref };
    }
    return { name: ref.name, text: `${inputText(ref.value)} ${ref.unit}`.trim() };
  });
}

/** A value as an input prints it: six digits of a number, a list with commas, a word as it is. */
function inputText(value: unknown): string {
  if (Array.isArray(value)) return value.map(inputText).join(", ");
  if (typeof value !== "number" || (Number.isInteger(value) && Math.abs(value) < 1e6)) return String(value);
  return String(Number(value.toPrecision(6)));
}
