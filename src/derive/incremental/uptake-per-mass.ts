/**
 * Oxygen uptake per kilogram of body mass.
 *
 *     VO2 per mass = 1000 · VO2 / mass
 *
 * Fits weight-bearing exercise. It favours the light: compare rowers and cyclists by L/min too.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** L/min and kg in, mL/kg/min out. */
export function uptakePerMass(vo2LPerMin: number, massKg: number): number {
  requireRange(info.id, "oxygen uptake", vo2LPerMin, 0.02, 10, "L/min");
  requireRange(info.id, "body mass", massKg, 20, 350, "kg");
  return (1000 * vo2LPerMin) / massKg;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "uptake-per-mass",
  revision: 1,
  title: "Oxygen uptake per kilogram",
  equation: "VO2 per mass = 1000 · VO2 / mass",
  inputs: { "oxygen uptake": { unit: "L/min", range: "0.02 to 10" }, "body mass": { unit: "kg", range: "20 to 350" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  source: { authors: "Waymark", year: null, title: "arithmetic", where: "definition", verified: "own" },
  compute: uptakePerMass,
  checks: [
    { given: [3.5, 70], expect: 50, tolerance: 1e-9, from: "by hand: 3500 / 70" },
    { given: [3.5, 0], expect: "refused", from: "mass is not known" },
  ],
};
