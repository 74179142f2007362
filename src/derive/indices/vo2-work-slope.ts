/**
 * Slope of oxygen uptake on power in cycling.
 *
 *     VO2 = slope · power + b        mL/min, W; least squares
 *
 * In healthy people close to 10 whatever their fitness (10.29 ± 1.01 mL/min/W in 54 men), so it checks the test: above
 * the range an ergometer or a flow sensor is suspect, below it also the heart and the muscles. Body mass moves the
 * intercept, not the slope.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { fitLine } from "../../kernel/statistics.js";

/** W and mL/min in, mL/min/W out. Throws OutOfRange for fewer than four points or power that rises by less than 40 W. */
export function vo2WorkSlope(power: readonly number[], vo2: readonly number[]): number {
  if (power.length < 4) throw new OutOfRange(info.id, "the number of points", power.length, "four or more");
  const rise = Math.max(...power) - Math.min(...power);
  if (rise < 40) throw new OutOfRange(info.id, "the rise of power", `${rise.toFixed(0)} W`, "40 W or more");
  return fitLine(power, vo2).slope;
}

export const info: FormulaInfo<[readonly number[], readonly number[]], number> = {
  id: "vo2-work-slope",
  revision: 1,
  title: "Slope of oxygen uptake on power",
  equation: "VO2 = slope·power + b, least squares",
  inputs: {
    power: { unit: "W", range: "rising by 40 W or more" },
    VO2: { unit: "mL/min", range: "four points or more" },
  },
  output: { unit: "mL/min/W", decimals: 1 },
  source: {
    authors: "Hansen JE, Sue DY, Oren A, Wasserman K",
    year: 1987,
    title: "Relation of oxygen uptake to work rate in normal men and men with circulatory disorders",
    journal: "Am J Cardiol 59:669–674",
    doi: "10.1016/0002-9149(87)91190-8",
    where: "abstract",
    verified: "seen",
  },
  compute: vo2WorkSlope,
  checks: [
    {
      given: [
        [50, 100, 150, 200],
        [1000, 1500, 2010, 2500],
      ],
      expect: 10.02,
      tolerance: 0.005,
      from: "by hand: least squares of four points",
    },
    {
      given: [
        [50, 60, 70, 80],
        [1000, 1100, 1200, 1300],
      ],
      expect: "refused",
      from: "30 W of rise",
    },
  ],
};
