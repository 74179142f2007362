/**
 * Pulse pressure.
 *
 *     SBP − DBP
 *
 * Refused where diastolic is not below systolic: one of them was then misread.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Pulse pressure: mmHg. Throws OutOfRange outside the ranges in `info`. */
export function pulsePressure(systolic: number, diastolic: number): number {
  requireRange(info.id, "systolic pressure", systolic, 50, 300, "mmHg");
  requireRange(info.id, "diastolic pressure", diastolic, 20, 200, "mmHg");
  if (diastolic >= systolic) throw new OutOfRange(info.id, "diastolic pressure", diastolic, "a value below systolic");
  return systolic - diastolic;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "pulse-pressure",
  revision: 1,
  title: "Pulse pressure",
  equation: "SBP − DBP",
  inputs: {
    "systolic pressure": { unit: "mmHg", range: "50 to 300" },
    "diastolic pressure": { unit: "mmHg", range: "20 to 200" },
  },
  output: { unit: "mmHg", decimals: 0 },
  source: {
    authors: "Muntner P, Shimbo D, Carey RM, et al.",
    year: 2019,
    title: "Measurement of Blood Pressure in Humans",
    journal: "Hypertension",
    where: "definitions; the pages read state (SBP + 2 DBP) / 3, which is the same",
    verified: "seen",
  },
  compute: pulsePressure,
  checks: [
    { given: [120, 80], expect: 40, tolerance: 0, from: "by hand: 120 − 80" },
    { given: [120, 0], expect: "refused", from: "a diastolic of 0 means none was found" },
    { given: [80, 120], expect: "refused", from: "the two were swapped" },
  ],
};
