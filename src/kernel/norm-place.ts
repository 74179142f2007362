/**
 * Where a value stands among a hundred people of its reference group, from the percentiles that the norms stage wrote.
 * Beyond the outermost percentile of the source it is known only that the value lies beyond it.
 */
import type { Entry, NormPosition, Quantity } from "./measure.js";

export interface CurvePoint {
  readonly percentile: number;
  readonly value: number;
}
export interface NormPlace {
  readonly kind: "about" | "above" | "below";
  /** How many of 100 have a lower value: about so many, more than so many, or fewer. 1 to 99. */
  readonly lower: number;
  readonly norm: NormPosition;
  /** Values of the group at the percentiles its source gives, rising; empty when the source gives a formula only. */
  readonly curve: readonly CurvePoint[];
}

/** How many of 100 are lower, kept between 1 and 99: a table cannot tell the ends apart. */
export const lowerOf = (percentile: number): number => Math.min(99, Math.max(1, Math.round(percentile)));

/** Undefined where no table of percentiles applies to the value. */
export function normPlace(entries: readonly Entry[], quantity: Quantity): NormPlace | undefined {
  const given = (quantity.norms ?? []).filter((norm) => norm.notGiven === undefined);
  if (given.length === 0) return undefined;
  const row = curveOf(entries, quantity.id);
  const own = given.find((norm) => norm.table === row?.table);
  const placed = own?.percentile === undefined ? given.find((norm) => norm.percentile !== undefined) : own;
  if (placed?.percentile !== undefined) {
    const lower = lowerOf(placed.percentile);
    return { kind: "about", lower, norm: placed, curve: placed === own ? (row?.curve ?? []) : [] };
  }
  const [first, last] = [row?.curve[0], row?.curve[row.curve.length - 1]];
  if (own === undefined || row === undefined || first === undefined || last === undefined) return undefined;
  if (quantity.value > last.value) return { kind: "above", lower: last.percentile, norm: own, curve: row.curve };
  if (quantity.value < first.value) return { kind: "below", lower: first.percentile, norm: own, curve: row.curve };
  return undefined;
}

function curveOf(entries: readonly Entry[], measure: string) {
  const curves = entries.find((entry) => entry.id === "reference_percentiles");
  if (curves?.kind !== "table") return undefined;
  const at = (key: string) => curves.columns.findIndex((column) => column.key === key);
  const named = at("measure");
  const row = curves.rows.find((one) => one[named] === measure);
  if (row === undefined) return undefined;
  const curve = curves.columns.flatMap(({ key }, i): CurvePoint[] => {
    const percentile = /^p(\d+)$/.exec(key)?.[1];
    const value = row[i];
    return percentile === undefined || typeof value !== "number" ? [] : [{ percentile: Number(percentile), value }];
  });
  return { table: String(row[at("table")] ?? ""), curve };
}
