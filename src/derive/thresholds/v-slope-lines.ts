/**
 * The two lines that a V-slope plot shows: VCO2 on VO2 as two straight lines that meet at VT1.
 *
 *     VCO2 = b0 + b1·VO2 + d·(VO2 − VT1)⁺
 *
 * by least squares over the 15-s means, each weighted by its samples, up to VT2 where one was found. They are for the eye:
 * VT1 itself comes from the ratio fit of v-slope and from the other methods, and the lines are bent where it was put.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Thresholds } from "./find.js";
import { coefficients } from "./orthogonal.js";

/** Means that must lie on each side of the bend: one minute. */
const SIDE = 4;

export interface Lines {
  readonly intercept: number;
  readonly lowerSlope: number;
  readonly upperSlope: number;
}

/** VO2 and VCO2 of the means in L/min, their weights, and where the lines meet. */
export function vSlopeLines(
  vo2: readonly number[],
  vco2: readonly number[],
  at: number,
  weight: readonly number[] = vo2.map(() => 1),
): Lines {
  const above = vo2.filter((x) => x > at).length;
  if (above < SIDE || vo2.length - above < SIDE)
    throw new OutOfRange(info.id, "VO2", vo2.length, `at least ${SIDE} means on each side of the bend`);
  const x = Float64Array.from(vo2);
  const terms = [x.map(() => 1), x, x.map((value) => Math.max(0, value - at))];
  const [intercept = 0, lowerSlope = 0, rise = 0] = coefficients(
    terms,
    Float64Array.from(vco2),
    Float64Array.from(weight),
  );
  return { intercept, lowerSlope, upperSlope: lowerSlope + rise };
}

const COLUMNS: readonly Column[] = [
  { key: "line", title: "Line" },
  { key: "vo2_l_min", title: "VO2", unit: "L/min", decimals: 2 },
  { key: "vco2_l_min", title: "VCO2", unit: "L/min", decimals: 2 },
  { key: "slope", title: "Slope", decimals: 2 },
];

/** Writes the ends of both lines where a first threshold was found. */
export function writeVSlopeLines(book: Notebook, { points, vt1, vt2 }: Thresholds): void {
  if ("because" in vt1) return;
  const end = "because" in vt2 ? Number.POSITIVE_INFINITY : vt2.vo2;
  const { rer, count } = points.bins;
  const kept = [...points.x.keys()].filter((i) => (points.x[i] as number) <= end && Number.isFinite(rer[i]));
  const x = kept.map((i) => points.x[i] as number);
  const take = (from: Float64Array) => kept.map((i) => from[i] as number);
  // As in the fit itself: the ratio of each mean on the smooth VO2, so that one breath's depth stands on no axis.
  const vco2 = take(rer).map((ratio, i) => ratio * (x[i] as number));
  const ends = { low: Math.min(...x), high: Math.max(...x) };
  const lines = linesOrNone(x, vco2, vt1.vo2, take(count));
  if (lines === undefined) return;
  const at = (value: number): number =>
    lines.intercept + lines.lowerSlope * value + (lines.upperSlope - lines.lowerSlope) * Math.max(0, value - vt1.vo2);
  const row = (line: string, value: number, slope: number): Cell[] => [line, value, at(value), slope];
  book.table(
    "v_slope_lines",
    COLUMNS,
    [
      row("below VT1", ends.low, lines.lowerSlope),
      row("below VT1", vt1.vo2, lines.lowerSlope),
      row("above VT1", vt1.vo2, lines.upperSlope),
      row("above VT1", ends.high, lines.upperSlope),
    ],
    info,
    ["vt1_vo2"],
    "Ends of the two lines; they meet at the threshold.",
  );
}

function linesOrNone(x: readonly number[], y: readonly number[], at: number, weight: readonly number[]) {
  try {
    return vSlopeLines(x, y, at, weight);
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

const EXAMPLE_VO2 = [1.0, 1.2, 1.4, 1.6, 1.8, 2.0, 2.2, 2.4, 2.6, 2.8];
const EXAMPLE_VCO2 = [0.9, 1.08, 1.26, 1.44, 1.62, 1.8, 2.04, 2.28, 2.52, 2.76];

export const info: FormulaInfo<[readonly number[], readonly number[], number], Lines> = {
  id: "v-slope-lines",
  revision: 1,
  title: "Two lines of the V-slope plot",
  equation: "VCO2 = b0 + b1·VO2 + d·(VO2 − VT1)⁺",
  inputs: {
    VO2: { unit: "L/min", range: "15-s means, four or more on each side of VT1" },
    VCO2: { unit: "L/min", range: "15-s means" },
    VT1: { unit: "L/min", range: "the first threshold" },
  },
  output: { unit: "L of CO2 per L of O2", decimals: 2 },
  caveat: "Lines for the eye: the threshold and its interval come from the methods of the thresholds table.",
  source: {
    authors: "Beaver WL, Wasserman K, Whipp BJ",
    year: 1986,
    title: "A new method for detecting anaerobic threshold by gas exchange",
    journal: "J Appl Physiol 60(6):2020–2027",
    doi: "10.1152/jappl.1986.60.6.2020",
    where: "two regression lines of VCO2 on VO2; that they meet at the threshold is this project's",
    verified: "seen",
  },
  compute: (vo2, vco2, at) => vSlopeLines(vo2, vco2, at),
  checks: [
    {
      given: [EXAMPLE_VO2, EXAMPLE_VCO2, 2.0],
      pick: (lines) => lines.upperSlope,
      expect: 1.2,
      tolerance: 1e-9,
      from: "by hand: from (2.0, 1.80) to (2.8, 2.76) the points rise by 0.96 over 0.8 L/min",
    },
    {
      given: [EXAMPLE_VO2, EXAMPLE_VCO2, 2.0],
      pick: (lines) => lines.lowerSlope,
      expect: 0.9,
      tolerance: 1e-9,
      from: "by hand: from (1.0, 0.90) to (2.0, 1.80) the points rise by 0.90 over 1 L/min",
    },
    { given: [EXAMPLE_VO2, EXAMPLE_VCO2, 2.7], expect: "refused", from: "one mean above the bend draws no line" },
  ],
};
