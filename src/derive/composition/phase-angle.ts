/**
 * Phase angle of impedance at 50 kHz, in degrees. It uses no regression of the device.
 *
 *     φ = atan(reactance / resistance) · 180 / π
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Phase angle of impedance: °. Throws OutOfRange outside the ranges in `info`. */
export function phaseAngle(reactance: number, resistance: number): number {
  requireRange(info.id, "reactance", reactance, 10, 150, "Ω");
  requireRange(info.id, "resistance", resistance, 150, 1200, "Ω");
  return (Math.atan(reactance / resistance) * 180) / Math.PI;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "phase-angle",
  revision: 1,
  title: "Phase angle of impedance",
  equation: "φ = atan(Xc / R)",
  inputs: { reactance: { unit: "Ω", range: "10 to 150" }, resistance: { unit: "Ω", range: "150 to 1200" } },
  output: { unit: "°", decimals: 1 },
  source: {
    authors: "Kyle UG, Bosaeus I, De Lorenzo AD, et al. (ESPEN)",
    year: 2004,
    title: "Bioelectrical impedance analysis, part I: review of principles and methods",
    journal: "Clin Nutr 23(5):1226–1243",
    doi: "10.1016/j.clnu.2004.06.004",
    where: "definition of phase angle",
    verified: "memory",
  },
  compute: phaseAngle,
  checks: [
    { given: [50, 500], expect: 5.711, tolerance: 0.001, from: "by hand: atan 0.1 is 0.09967 rad" },
    { given: [0, 500], expect: "refused", from: "no reactance was read" },
  ],
};
