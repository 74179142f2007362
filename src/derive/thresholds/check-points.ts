/**
 * Noise-free points for the worked checks of the methods: a VO2 that rises evenly, 15 s apart, and a second channel
 * given point by point, in the form the fits read.
 */
import { OutOfRange } from "../../kernel/formula.js";
import type { Bins } from "./bins.js";
import type { Points, Reading, Upper } from "./points.js";
import { isFound } from "./points.js";

export interface Given {
  readonly vo2: readonly number[];
  readonly vco2?: readonly number[];
  readonly ventilation?: readonly number[];
  readonly petO2?: readonly number[];
  readonly petCO2?: readonly number[];
}

/** Points whose axis is VO2 as given, without error. */
export function pointsFrom(given: Given): Points {
  const n = given.vo2.length;
  const column = (xs: readonly number[] | undefined) => Float64Array.from(given.vo2, (_, i) => xs?.[i] ?? Number.NaN);
  const x = Float64Array.from(given.vo2);
  const vco2 = column(given.vco2);
  const ve = column(given.ventilation);
  const bins: Bins = {
    n,
    time: x.map((_, i) => 15 * (i + 1)),
    vo2: x,
    count: x.map(() => 1),
    rer: vco2.map((v, i) => v / (x[i] as number)),
    veVo2: ve.map((v, i) => v / (x[i] as number)),
    veVco2: ve.map((v, i) => v / (vco2[i] as number)),
    petO2: column(given.petO2),
    petCO2: column(given.petCO2),
    heartRate: column(undefined),
  };
  return { bins, x, axis: { value: x, se: x.map(() => 0), slope: x.map(() => 0) } };
}

export const NO_UPPER: Upper = { below: Number.POSITIVE_INFINITY, second: { at: [], maybe: true, gap: 0 } };

/** The VO2 a method reads, or its refusal as an error. */
export function vo2Or(formula: string, reading: Reading): number {
  if (isFound(reading)) return reading.vo2;
  throw new OutOfRange(formula, "course", "not bent as asked", `bends it can tell (${reading.because})`);
}

/** from, from + step, …, n values: an axis for a check. */
export const steps = (from: number, step: number, n: number): number[] =>
  Array.from({ length: n }, (_, i) => Number((from + step * i).toFixed(6)));
/** Two lines that meet at `at`, `level` there, of slope `below` and `above`. */
export const broken = (xs: readonly number[], at: number, level: number, below: number, above: number): number[] =>
  xs.map((x) => level + (x - at) * (x <= at ? below : above));
