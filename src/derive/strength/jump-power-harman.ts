/**
 * Peak power of a vertical jump from its height and body mass.
 *
 *     P = 61.9·height + 36.0·mass − 1822
 *
 * The constant is subtracted. Copies that add it give a person of 80 kg and 55 cm 101 W/kg, which nobody can.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak jump power, Harman: W. Throws OutOfRange outside the ranges in `info`. */
export function jumpPowerHarman(heightCm: number, massKg: number, ageYears: number): number {
  requireRange(info.id, "jump height", heightCm, 2, 130, "cm");
  requireRange(info.id, "body mass", massKg, 25, 350, "kg");
  requireRange(info.id, "age", ageYears, 17, 40.999, "years");
  return 61.9 * heightCm + 36 * massKg - 1822;
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "jump-power-harman",
  revision: 1,
  title: "Peak jump power, Harman",
  equation: "P = 61.9·height + 36.0·mass − 1822",
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
    where: "peak power equation; sign of the constant checked against Canavan & Vescovi 2004",
  },
  compute: jumpPowerHarman,
  checks: [
    { given: [55, 80, 25], expect: 4462.5, tolerance: 0.01, from: "by hand: 3404.5 + 2880 − 1822" },
    {
      given: [32.79, 65.9, 20],
      expect: 2585,
      tolerance: 6,
      from: "Canavan & Vescovi 2004, Med Sci Sports Exerc 36:1589: mean of 20 women 2585.0 W (height back-computed from their Sayers value)",
    },
    { given: [55, 80, 60], expect: "refused", from: "the sample was of college age" },
  ],
};
