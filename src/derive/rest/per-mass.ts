/**
 * A gas exchange rate per kilogram of body mass.
 *
 *     mL/kg/min = (mL/min) / kg
 *
 * 3.5 mL/kg/min is the conventional resting value (1 MET); measured values of lying adults are often below it.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** mL/min and kg in, mL/kg/min out. Throws OutOfRange for a mass outside 25 to 350 kg. */
export function perMass(mlPerMinute: number, massKg: number): number {
  requireRange(info.id, "body mass", massKg, 25, 350, "kg");
  requireRange(info.id, "the rate", mlPerMinute, 0, 10_000, "mL/min");
  return mlPerMinute / massKg;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "per-mass",
  revision: 1,
  title: "Rate per kilogram of body mass",
  equation: "rate / mass",
  inputs: { rate: { unit: "mL/min", range: "0 to 10 000" }, mass: { unit: "kg", range: "25 to 350" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  source: {
    authors: "this project",
    year: null,
    title: "Definition",
    where: "common practice",
    verified: "common practice",
  },
  compute: perMass,
  checks: [
    { given: [245, 70], expect: 3.5, tolerance: 1e-9, from: "by hand: 245 / 70" },
    { given: [245, 0], expect: "refused", from: "no mass, no share" },
  ],
};
