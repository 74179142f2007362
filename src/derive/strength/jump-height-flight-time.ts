/**
 * Jump height from flight time.
 *
 *     h = g · t² / 8
 *
 * Half the flight is the fall: h = g·(t/2)²/2. True where the body lands as it left; bent knees at landing add height.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Jump height from flight time: cm. Throws OutOfRange outside the ranges in `info`. */
export function jumpHeightFlightTime(flightTimeS: number): number {
  requireRange(info.id, "flight time", flightTimeS, 0.1, 1.1, "s");
  return (100 * 9.80665 * flightTimeS ** 2) / 8; // standard gravity, m/s²
}

export const info: FormulaInfo<[number], number> = {
  id: "jump-height-flight-time",
  revision: 1,
  title: "Jump height from flight time",
  equation: "h = g · t² / 8",
  inputs: { "flight time": { unit: "s", range: "0.1 to 1.1" } },
  output: { unit: "cm", decimals: 1 },
  source: {
    authors: "Bosco C, Luhtanen P, Komi PV",
    year: 1983,
    title: "A simple method for measurement of mechanical power in jumping",
    journal: "Eur J Appl Physiol 50(2):273–282",
    where: "height from flight time",
    verified: "memory",
  },
  compute: jumpHeightFlightTime,
  checks: [
    { given: [0.5], expect: 30.646, tolerance: 0.001, from: "by hand: 980.665 · 0.25 / 8" },
    { given: [500], expect: "refused", from: "milliseconds" },
  ],
};
