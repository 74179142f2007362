/**
 * Partial pressure of oxygen in moist inspired gas.
 *
 *     PIO2 = FIO2 · (PB − 47)
 *
 * Inspired gas is saturated with water at 37 °C before it meets the lung. The 47 mmHg depend on body temperature only,
 * not on altitude, and so weigh more the thinner the air.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Fraction of O2 in dry gas (0.03 to 1) and pressure in mmHg to mmHg. */
export function inspiredOxygenPressure(fio2: number, pressureMmHg: number): number {
  requireRange(info.id, "inspired O2 fraction", fio2, 0.03, 1, "");
  requireRange(info.id, "barometric pressure", pressureMmHg, 180, 850, "mmHg");
  return fio2 * (pressureMmHg - 47);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "inspired-oxygen-pressure",
  revision: 1,
  title: "Inspired oxygen pressure",
  equation: "PIO2 = FIO2 · (PB − 47)",
  inputs: {
    "inspired O2 fraction": { unit: "", range: "0.03 to 1" },
    "barometric pressure": { unit: "mmHg", range: "180 to 850" },
  },
  output: { unit: "mmHg", decimals: 0 },
  source: {
    authors: "West JB, Hackett PH, Maret KH et al.",
    year: 1983,
    title: "Pulmonary gas exchange on the summit of Mount Everest",
    journal: "J Appl Physiol 55:678–687",
    where: "inspired PO2 43 mmHg at 253 mmHg; citation from memory, number seen",
    verified: "memory",
  },
  compute: inspiredOxygenPressure,
  checks: [
    { given: [0.2093, 253], expect: 43, tolerance: 0.2, from: "published: 43 mmHg at 253 mmHg" },
    { given: [0.2093, 760], expect: 149.2, tolerance: 0.05, from: "by hand: 0.2093 · 713" },
  ],
};
