/**
 * The steady window of a resting measurement.
 *
 *     the first run of `length` minutes after the settling time in which CV(VO2) ≤ 10 % and CV(VCO2) ≤ 10 %
 *     CV = 100 · SD / mean of the minute values, SD with n − 1
 *
 * The first window that qualifies, never the lowest or the calmest: choosing by the value itself biases it downward.
 * A minute that was not measured ends a run.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { compareAtDecimals } from "../../kernel/rounding.js";
import { mean, sampleSd } from "../../kernel/statistics.js";

export interface SteadyWindow {
  /** Index of the first minute of the window. */
  readonly from: number;
  readonly length: number;
  /** % of the mean. */
  readonly cvVo2: number;
  readonly cvVco2: number;
}
export type WindowRule = "first-steady" | "all-after-settling";
const STEADY_CV_PCT = 10;

/** Coefficient of variation in %, sample SD over mean. */
const coefficientOfVariation = (xs: readonly number[]): number => (100 * sampleSd(xs)) / mean(xs);

/**
 * Minute values of VO2 and VCO2 (any one unit, null = not measured), minutes to drop, window length in minutes.
 * Throws OutOfRange when the record is too short or holds no steady window.
 */
export function steadyWindow(
  vo2: readonly (number | null)[],
  vco2: readonly (number | null)[],
  settlingMin: number,
  lengthMin: number,
  rule: WindowRule = "first-steady",
): SteadyWindow {
  const usable = vo2.length - settlingMin;
  if (usable < lengthMin)
    throw new OutOfRange(
      info.id,
      "the record",
      `${vo2.length} min`,
      `${settlingMin} min to settle and at least ${lengthMin} min after it`,
    );
  if (rule === "all-after-settling") return describe(vo2, vco2, settlingMin, usable) ?? refuseHoles();
  let calmest: SteadyWindow | undefined;
  for (let from = settlingMin; from + lengthMin <= vo2.length; from++) {
    const window = describe(vo2, vco2, from, lengthMin);
    if (window === undefined) continue;
    if (compareAtDecimals(worst(window), STEADY_CV_PCT, 1) <= 0) return window;
    if (calmest === undefined || worst(window) < worst(calmest)) calmest = window;
  }
  if (calmest === undefined) return refuseHoles();
  throw new OutOfRange(
    info.id,
    "the calmest window's variation",
    `${calmest.cvVo2.toFixed(1)} % in VO2 and ${calmest.cvVco2.toFixed(1)} % in VCO2`,
    `windows of ${lengthMin} min with no more than ${STEADY_CV_PCT} % in each`,
  );
}

const worst = (window: SteadyWindow) => Math.max(window.cvVo2, window.cvVco2);

function refuseHoles(): never {
  throw new OutOfRange(info.id, "the record", "interrupted", "windows in which each minute has VO2 and VCO2");
}

function describe(
  vo2: readonly (number | null)[],
  vco2: readonly (number | null)[],
  from: number,
  length: number,
): SteadyWindow | undefined {
  const present = (xs: readonly (number | null)[]) => xs.slice(from, from + length).filter((x) => x !== null);
  const o2 = present(vo2);
  const co2 = present(vco2);
  if (o2.length < length || co2.length < length) return undefined;
  return { from, length, cvVo2: coefficientOfVariation(o2), cvVco2: coefficientOfVariation(co2) };
}

type Minutes = readonly (number | null)[];
export const info: FormulaInfo<[Minutes, Minutes, number, number, WindowRule?], SteadyWindow> = {
  id: "steady-window",
  revision: 1,
  title: "Steady window at rest",
  equation: "first window after settling with CV(VO2) ≤ 10 % and CV(VCO2) ≤ 10 % of its minute values",
  inputs: {
    VO2: { unit: "mL/min, minute means", range: "any" },
    VCO2: { unit: "mL/min, minute means", range: "any" },
    settling: { unit: "min", range: "0 to 15" },
    length: { unit: "min", range: "5 to 15" },
  },
  output: { unit: "min", decimals: 0 },
  source: {
    authors: "Popp CJ and others (definition of steady state); Irving and others 2016 (time to reach it)",
    year: "2016–2019",
    title:
      "Evaluating steady-state resting energy expenditure using indirect calorimetry in adults with overweight and obesity",
    journal: "Clin Nutr; Front Nutr",
    doi: "10.3389/fnut.2016.00049",
    where: "abstracts: first 5 min discarded, 5 min with CV of VO2 and VCO2 of 10 % or less; 10 min in all are enough",
    verified: "seen",
  },
  compute: steadyWindow,
  checks: [
    {
      given: [[252, 248, 260, 245, 250], [210, 208, 214, 206, 209], 0, 5],
      pick: (w) => w.cvVo2,
      expect: 2.25,
      tolerance: 0.01,
      from: "by hand: mean 251.0, SD 5.66, CV 2.25 %",
    },
    {
      given: [[230, 290, 245, 300, 250], [200, 201, 200, 202, 200], 0, 5],
      expect: "refused",
      from: "by hand: mean 263.0, SD 30.33, CV 11.53 %, above 10 %",
    },
    {
      given: [[400, 320, 290, 260, 250, 251, 249, 252, 250, 200, 200, 200, 200, 200], Array(14).fill(200), 4, 5],
      pick: (w) => w.from,
      expect: 4,
      tolerance: 0,
      from: "by hand: the first window after 4 min is steady; the lower one at the end is not taken",
    },
    {
      given: [[250, 250, 250], [200, 200, 200], 0, 5],
      expect: "refused",
      from: "three minutes hold no window of five",
    },
  ],
};
