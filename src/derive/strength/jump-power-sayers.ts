/**
 * Peak power of a vertical jump from its height and body mass.
 *
 *     P = 60.7·height + 45.3·mass − 2055
 *
 * Derived on squat jumps of college-age people. No class is attached: it is a prediction, not a force plate.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak jump power, Sayers: W. Throws OutOfRange outside the ranges in `info`. */
export function jumpPowerSayers(heightCm: number, massKg: number, ageYears: number): number {
  requireRange(info.id, "jump height", heightCm, 2, 130, "cm");
  requireRange(info.id, "body mass", massKg, 25, 350, "kg");
  requireRange(info.id, "age", ageYears, 17, 40.999, "years");
  return 60.7 * heightCm + 45.3 * massKg - 2055;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "jump-power-sayers",
  revision: 1,
  title: "Peak jump power, Sayers",
  equation: "P = 60.7·height + 45.3·mass − 2055",
  inputs: {
    "jump height": { unit: "cm", range: "2 to 130" },
    "body mass": { unit: "kg", range: "25 to 350" },
    age: { unit: "years", range: "17 to 40.999" },
  },
  output: { unit: "W", decimals: 0 },
  caveat: "An estimate: in women it read about 20 % above the measured power.",
  source: {
    authors: "Sayers SP, Harackiewicz DV, Harman EA, Frykman PN, Rosenstein MT",
    year: 1999,
    title: "Cross-validation of three jump power equations",
    journal: "Med Sci Sports Exerc 31(4):572–577",
    doi: "10.1097/00005768-199904000-00013",
    where: "equation for the squat jump",
    verified: "seen",
  },
  compute: jumpPowerSayers,
  checks: [
    {
      given: [55, 80, 25],
      expect: 4907.5,
      tolerance: 0.01,
      from: "worked example published with the equation: 3338.5 + 3624 − 2055",
    },
    { given: [55, 80, 60], expect: "refused", from: "the sample was of college age" },
  ],
};
