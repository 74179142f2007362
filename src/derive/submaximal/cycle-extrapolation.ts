/**
 * Power at the predicted maximal heart rate, from the last two stages with a steady heart rate of 110 to 150.
 *
 *     W2 + (W2 − W1) / (HR2 − HR1) · (HRmax − HR2)
 *
 * Heart rate rises in a straight line with power between those limits. An error of 10 beats in the predicted maximum,
 * which is common, moves the result by some 10 %.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Power at predicted maximal heart rate: W. Throws OutOfRange outside the ranges in `info`. */
export function cycleExtrapolation(
  firstW: number,
  firstHeartRate: number,
  secondW: number,
  secondHeartRate: number,
  maximalHeartRate: number,
): number {
  requireRange(info.id, "first power", firstW, 10, 500, "W");
  requireRange(info.id, "first heart rate", firstHeartRate, 110, 150, "1/min");
  requireRange(info.id, "second power", secondW, 10, 500, "W");
  requireRange(info.id, "second heart rate", secondHeartRate, 110, 150, "1/min");
  requireRange(info.id, "maximal heart rate", maximalHeartRate, 120, 230, "1/min");
  if (secondW <= firstW || secondHeartRate <= firstHeartRate)
    throw new OutOfRange(
      info.id,
      "second stage",
      `${secondW} W at ${secondHeartRate} /min`,
      "a stage with more power and a higher heart rate than the first",
    );
  return secondW + ((secondW - firstW) / (secondHeartRate - firstHeartRate)) * (maximalHeartRate - secondHeartRate);
}

export const info: FormulaInfo<[number, number, number, number, number], number> = {
  id: "cycle-extrapolation",
  revision: 1,
  title: "Power at predicted maximal heart rate",
  equation: "W2 + (W2 − W1) / (HR2 − HR1) · (HRmax − HR2)",
  inputs: {
    "first power": { unit: "W", range: "10 to 500" },
    "first heart rate": { unit: "1/min", range: "110 to 150" },
    "second power": { unit: "W", range: "10 to 500" },
    "second heart rate": { unit: "1/min", range: "110 to 150" },
    "maximal heart rate": { unit: "1/min", range: "120 to 230" },
  },
  output: { unit: "W", decimals: 0 },
  caveat: "Leans on a predicted maximal heart rate.",
  source: {
    authors: "Anning J, in National Strength and Conditioning Association",
    year: 2012,
    title: "NSCA's Guide to Tests and Assessments, chapter 5",
    journal: "handbook",
    verified: "seen",
    where: "multi-stage cycle test, Table 5.5: extrapolation to predicted maximal heart rate",
  },
  compute: cycleExtrapolation,
  checks: [
    {
      given: [50, 115, 100, 140, 185],
      expect: 190,
      tolerance: 1e-9,
      from: "by hand, the handbook's example 300 kgm/min at 115, 600 at 140, HRmax 185 gives 1140 kgm/min, which at 6 kgm/min a watt is 190 W",
    },
    { given: [100, 120, 100, 140, 185], expect: "refused", from: "no rise of power" },
    { given: [50, 100, 100, 140, 185], expect: "refused", from: "heart rate below 110" },
  ],
};
