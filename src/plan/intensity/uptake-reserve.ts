/**
 * Oxygen uptake at a share of uptake reserve.
 *
 *     VO2 = f · (VO2max − 3.5) + 3.5      mL/kg/min
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Maximal uptake in mL/kg/min and share 0 to 1, to mL/kg/min. */
export function uptakeReserve(maximum: number, share: number): number {
  requireRange(info.id, "maximal uptake", maximum, 10, 95, "mL/kg/min");
  requireRange(info.id, "share", share, 0, 1, "");
  return share * (maximum - 3.5) + 3.5;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "uptake-reserve",
  revision: 1,
  title: "Oxygen uptake at a share of uptake reserve",
  equation: "VO2 = f · (VO2max − 3.5) + 3.5",
  inputs: { "maximal uptake": { unit: "mL/kg/min", range: "10 to 95" }, share: { unit: "", range: "0 to 1" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  source: {
    authors: "Bushman BA",
    year: 2020,
    title: "Metabolic Calculations in Action, parts 1 and 2",
    journal: "ACSM's Health Fit J 24(3):6–10 and 24(4):5–8",
    doi: "10.1249/FIT.0000000000000577",
    where: "Box 1",
    verified: "seen",
  },
  compute: uptakeReserve,
  checks: [{ given: [46, 0.6], expect: 29.0, tolerance: 1e-9, from: "by hand: 0.6·42.5 + 3.5 = 29.0" }],
};
