/**
 * Mean arterial pressure at rest.
 *
 *     MAP = DBP + (SBP − DBP) / 3
 *
 * At rest the heart spends about a third of each beat in systole. At high heart rates systole takes a larger share and
 * the rule no longer holds, so it is used for resting readings only.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Mean arterial pressure at rest: mmHg. Throws OutOfRange outside the ranges in `info`. */
export function meanArterialPressure(systolic: number, diastolic: number): number {
  requireRange(info.id, "systolic pressure", systolic, 50, 300, "mmHg");
  requireRange(info.id, "diastolic pressure", diastolic, 20, 200, "mmHg");
  if (diastolic >= systolic) throw new OutOfRange(info.id, "diastolic pressure", diastolic, "a value below systolic");
  return diastolic + (systolic - diastolic) / 3;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "mean-arterial-pressure",
  revision: 1,
  title: "Mean arterial pressure at rest",
  equation: "DBP + (SBP − DBP) / 3",
  inputs: {
    "systolic pressure": { unit: "mmHg", range: "50 to 300" },
    "diastolic pressure": { unit: "mmHg", range: "20 to 200" },
  },
  output: { unit: "mmHg", decimals: 0 },
  caveat: "The one-third rule holds at rest.",
  source: {
    authors: "Muntner P, Shimbo D, Carey RM, et al.",
    year: 2019,
    title: "Measurement of Blood Pressure in Humans",
    journal: "Hypertension",
    where: "definitions; the pages read state (SBP + 2 DBP) / 3, which is the same",
    verified: "seen",
  },
  compute: meanArterialPressure,
  checks: [
    { given: [120, 80], expect: 93.33, tolerance: 0.01, from: "by hand: 80 + 40 / 3" },
    { given: [120, 0], expect: "refused", from: "a diastolic of 0 means none was found" },
  ],
};
