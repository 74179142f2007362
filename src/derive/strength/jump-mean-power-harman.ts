/**
 * Mean power of a vertical jump from its height and body mass.
 *
 *     P = 21.2·height + 23.0·mass − 1393
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Mean jump power, Harman: W. Throws OutOfRange outside the ranges in `info`. */
export function jumpMeanPowerHarman(heightCm: number, massKg: number, ageYears: number): number {
  requireRange(info.id, "jump height", heightCm, 2, 130, "cm");
  requireRange(info.id, "body mass", massKg, 25, 350, "kg");
  requireRange(info.id, "age", ageYears, 17, 40.999, "years");
  return 21.2 * heightCm + 23 * massKg - 1393;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "jump-mean-power-harman",
  revision: 1,
  title: "Mean jump power, Harman",
  equation: "P = 21.2·height + 23.0·mass − 1393",
  inputs: {
    "jump height": { unit: "cm", range: "2 to 130" },
    "body mass": { unit: "kg", range: "25 to 350" },
    age: { unit: "years", range: "17 to 40.999" },
  },
  output: { unit: "W", decimals: 0 },
  caveat: "An estimate: in women it read about 20 % above the measured power.",
  source: {
    authors: "Harman EA, Rosenstein MT, Frykman PN, Rosenstein RM, Kraemer WJ",
    year: 1991,
    title: "Estimation of human power output from vertical jump",
    journal: "J Appl Sport Sci Res 5(3):116–120",
    verified: "memory",
    where: "mean power equation",
  },
  compute: jumpMeanPowerHarman,
  checks: [
    { given: [55, 80, 25], expect: 1613, tolerance: 0.01, from: "by hand: 1166 + 1840 − 1393" },
    { given: [55, 80, 60], expect: "refused", from: "the sample was of college age" },
  ],
};
