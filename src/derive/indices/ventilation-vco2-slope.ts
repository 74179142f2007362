/**
 * Slope of ventilation on carbon dioxide output.
 *
 *     VE = slope · VCO2 + b        both in L/min; least squares
 *
 * To the second threshold it speaks of gas exchange; to the end of the test it is about 3 higher, because ventilation
 * then also answers to acid. The range belongs to the value.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { fitLine } from "../../kernel/statistics.js";

/** VCO2 and VE in L/min (STPD, BTPS) in, slope out. Throws OutOfRange for fewer than six points or VCO2 that hardly rises. */
export function ventilationVco2Slope(vco2: readonly number[], ventilation: readonly number[]): number {
  if (vco2.length < 6) throw new OutOfRange(info.id, "the number of points", vco2.length, "six or more");
  if (Math.max(...vco2) < 1.3 * Math.min(...vco2))
    throw new OutOfRange(info.id, "VCO2", "rising by less than 30 %", "tests in which it rises by 30 % or more");
  return fitLine(vco2, ventilation).slope;
}

export const info: FormulaInfo<[readonly number[], readonly number[]], number> = {
  id: "ventilation-vco2-slope",
  revision: 1,
  title: "Slope of ventilation on carbon dioxide output",
  equation: "VE = slope·VCO2 + b, least squares",
  inputs: { VCO2: { unit: "L/min STPD", range: "six points or more" }, VE: { unit: "L/min BTPS", range: "" } },
  output: { unit: "ratio", decimals: 1 },
  caveat: "Compare the same range only: to the second threshold, or whole.",
  source: {
    authors: "Habedank D and others",
    year: 1998,
    title: "Normal values on a treadmill (title not read)",
    doi: "10.1007/s004210050354",
    where: "definition of the slope",
    verified: "seen",
  },
  compute: ventilationVco2Slope,
  checks: [
    {
      given: [
        [0.5, 1, 1.5, 2, 2.5, 3],
        [17.5, 30, 42.5, 55, 67.5, 80],
      ],
      expect: 25,
      tolerance: 1e-9,
      from: "by hand: points on VE = 25·VCO2 + 5",
    },
    {
      given: [
        [1, 2],
        [30, 55],
      ],
      expect: "refused",
      from: "two points",
    },
  ],
};
