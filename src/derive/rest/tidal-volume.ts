/**
 * Mean tidal volume from ventilation and breathing frequency.
 *
 *     VT = VE / f
 *
 * In the gas condition of the ventilation.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** L/min and 1/min in, L out. Throws OutOfRange outside 2 to 90 breaths a minute. */
export function tidalVolume(ventilation: number, frequency: number): number {
  requireRange(info.id, "breathing frequency", frequency, 2, 90, "1/min");
  requireRange(info.id, "ventilation", ventilation, 0.5, 300, "L/min");
  return ventilation / frequency;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "tidal-volume",
  revision: 1,
  title: "Tidal volume",
  equation: "VT = VE / f",
  inputs: { VE: { unit: "L/min", range: "0.5 to 300" }, f: { unit: "1/min", range: "2 to 90" } },
  output: { unit: "L", decimals: 2 },
  source: {
    authors: "this project",
    year: null,
    title: "Definition",
    where: "common practice",
    verified: "common practice",
  },
  compute: tidalVolume,
  checks: [{ given: [6, 12], expect: 0.5, tolerance: 1e-12, from: "by hand: 6 / 12" }],
};
