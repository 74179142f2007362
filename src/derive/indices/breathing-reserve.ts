/**
 * Breathing reserve.
 *
 *     reserve = 100 · (1 − VEpeak / MVV)        %
 *
 * Usually 15 to 20 % or more is left at peak. Trained clients with small lungs may use all of it without any disease.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** L/min BTPS both in, % out (negative when the peak passed the MVV). */
export function breathingReserve(ventilationPeak: number, mvv: number): number {
  requireRange(info.id, "peak ventilation", ventilationPeak, 10, 300, "L/min");
  requireRange(info.id, "maximal voluntary ventilation", mvv, 20, 350, "L/min");
  return 100 * (1 - ventilationPeak / mvv);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "breathing-reserve",
  revision: 1,
  title: "Breathing reserve",
  equation: "100·(1 − VEpeak / MVV)",
  inputs: { VEpeak: { unit: "L/min BTPS", range: "10 to 300" }, MVV: { unit: "L/min", range: "20 to 350" } },
  output: { unit: "%", decimals: 0 },
  source: {
    authors: "Glaab T, Taube C",
    year: 2022,
    title: "Practical guide to cardiopulmonary exercise testing in adults",
    journal: "Respir Res 23:9",
    doi: "10.1186/s12931-021-01895-6",
    where: "Table 1: 15 to 20 %, or 11 to 15 L/min, or more",
    verified: "seen",
  },
  compute: breathingReserve,
  checks: [{ given: [128, 168], expect: 23.8, tolerance: 0.05, from: "by hand: 1 − 128/168" }],
};
