/**
 * Predicted lowest VE/VCO2 of an incremental test, Sun.
 *
 *     27.94 + 0.108·age + 0.97 (women) − 0.0376·stature        years, cm
 *
 * From 474 healthy adults, cycle and treadmill, three sites: the least variable of the ventilatory ratios.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Years, cm and sex in, ratio out. Throws OutOfRange outside 17 to 78 years. */
export function ventilationVco2LowestSun(ageYears: number, statureCm: number, sex: "female" | "male"): number {
  requireRange(info.id, "age", ageYears, 17, 78, "years");
  requireRange(info.id, "stature", statureCm, 130, 225, "cm");
  return 27.94 + 0.108 * ageYears + (sex === "female" ? 0.97 : 0) - 0.0376 * statureCm;
}

export const info: FormulaInfo<[number, number, "female" | "male"], number> = {
  id: "ventilation-vco2-lowest-sun",
  revision: 1,
  title: "Predicted lowest VE/VCO2 (Sun)",
  equation: "27.94 + 0.108·age + 0.97 (women) − 0.0376·stature",
  inputs: {
    age: { unit: "years", range: "17 to 78" },
    stature: { unit: "cm", range: "130 to 225" },
    sex: { unit: "", range: "female, male" },
  },
  output: { unit: "ratio", decimals: 1 },
  source: {
    authors: "Sun XG, Hansen JE, Garatachea N, Storer TW, Wasserman K",
    year: 2002,
    title: "Ventilatory efficiency during exercise in healthy subjects",
    journal: "Am J Respir Crit Care Med 166:1443–1448",
    doi: "10.1164/rccm.2202033",
    where: "abstract",
    verified: "seen",
  },
  compute: ventilationVco2LowestSun,
  checks: [
    { given: [40, 180, "male"], expect: 25.49, tolerance: 0.005, from: "by hand: 27.94 + 4.32 − 6.768" },
    { given: [40, 178, "male"], expect: 25.57, tolerance: 0.005, from: "by hand: 27.94 + 4.32 − 6.693" },
    { given: [40, 165, "female"], expect: 27.03, tolerance: 0.005, from: "by hand: 27.94 + 4.32 + 0.97 − 6.204" },
    { given: [16, 165, "female"], expect: "refused", from: "below 17 years" },
  ],
};
