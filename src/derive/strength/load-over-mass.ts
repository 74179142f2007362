/**
 * A load lifted, or a force, over body mass.
 *
 *     load / mass
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Load over body mass: kg/kg. Throws OutOfRange outside the ranges in `info`. */
export function loadOverMass(load: number, massKg: number): number {
  requireRange(info.id, "load or force", load, 1, 8000, "kg or N");
  requireRange(info.id, "body mass", massKg, 25, 350, "kg");
  return load / massKg;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "load-over-mass",
  revision: 1,
  title: "Load over body mass",
  equation: "load / mass",
  inputs: { "load or force": { unit: "kg or N", range: "1 to 8000" }, "body mass": { unit: "kg", range: "25 to 350" } },
  output: { unit: "kg/kg", decimals: 2 },
  source: {
    authors: "The Cooper Institute",
    year: 2002,
    title: "Physical Fitness Specialist Manual",
    journal: "Cooper Institute",
    where: "bench press and leg press ratio tables",
    verified: "seen",
  },
  compute: loadOverMass,
  checks: [
    { given: [82.5, 80], expect: 1.03125, tolerance: 1e-9, from: "by hand: 82.5 / 80" },
    { given: [82.5, 0], expect: "refused", from: "no body mass" },
  ],
};
