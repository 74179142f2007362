/**
 * Chronotropic index.
 *
 *     (HRpeak − HRrest) / (HRmax predicted − HRrest)
 *
 * The share of the predicted heart-rate reserve that was used. It means something only after a maximal effort, and
 * carries the error of the predicted maximum (a standard error of about 10 beats).
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** 1/min all in, ratio out. Throws OutOfRange unless the predicted maximum is at least 40 above rest. */
export function chronotropicIndex(peak: number, rest: number, predicted: number): number {
  requireRange(info.id, "peak heart rate", peak, 60, 250, "1/min");
  requireRange(info.id, "resting heart rate", rest, 25, 140, "1/min");
  if (predicted - rest < 40)
    throw new OutOfRange(
      info.id,
      "the predicted reserve",
      `${(predicted - rest).toFixed(0)} 1/min`,
      "40 1/min or more",
    );
  return (peak - rest) / (predicted - rest);
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "chronotropic-index",
  revision: 1,
  title: "Chronotropic index",
  equation: "(HRpeak − HRrest) / (HRmax predicted − HRrest)",
  inputs: {
    HRpeak: { unit: "1/min", range: "60 to 250" },
    HRrest: { unit: "1/min", range: "25 to 140" },
    "HRmax predicted": { unit: "1/min", range: "40 above rest or more" },
  },
  output: { unit: "ratio", decimals: 2 },
  caveat: "Only after a maximal effort; a beta blocker lowers it.",
  source: {
    authors: "Brubaker PH, Kitzman DW",
    year: 2011,
    title: "Chronotropic incompetence: causes, consequences, and management",
    journal: "Circulation 123:1010–1020",
    doi: "10.1161/CIRCULATIONAHA.110.940577",
    where: "definition; below 0.80 is the usual limit",
    verified: "seen",
  },
  compute: chronotropicIndex,
  checks: [
    { given: [182, 60, 180], expect: 1.017, tolerance: 0.001, from: "by hand: 122 / 120" },
    { given: [150, 62, 180], expect: 0.746, tolerance: 0.001, from: "by hand: 88 / 118" },
  ],
};
