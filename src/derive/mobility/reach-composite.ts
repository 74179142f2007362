/**
 * Composite reach on one leg, as a share of limb length.
 *
 *     100 · (anterior + posteromedial + posterolateral) / (3 · limb length)
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Composite reach: % limb length. Throws OutOfRange outside the ranges in `info`. */
export function reachComposite(
  anteriorCm: number,
  posteromedialCm: number,
  posterolateralCm: number,
  limbCm: number,
): number {
  requireRange(info.id, "anterior", anteriorCm, 10, 180, "cm");
  requireRange(info.id, "posteromedial", posteromedialCm, 10, 180, "cm");
  requireRange(info.id, "posterolateral", posterolateralCm, 10, 180, "cm");
  requireRange(info.id, "limb length", limbCm, 50, 130, "cm");
  return (100 * (anteriorCm + posteromedialCm + posterolateralCm)) / (3 * limbCm);
}

export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "reach-composite",
  revision: 1,
  title: "Composite reach",
  equation: "100 · (A + PM + PL) / (3 · limb)",
  inputs: {
    anterior: { unit: "cm", range: "10 to 180" },
    posteromedial: { unit: "cm", range: "10 to 180" },
    posterolateral: { unit: "cm", range: "10 to 180" },
    "limb length": { unit: "cm", range: "50 to 130" },
  },
  output: { unit: "% limb length", decimals: 1 },
  source: {
    authors: "Plisky PJ, Rauh MJ, Kaminski TW, Underwood FB; Smith CA, Chimera NJ, Warren M",
    year: 2015,
    title: "Association of reach asymmetry and injury in Division I athletes",
    journal: "Med Sci Sports Exerc 47(1):136–141",
    doi: "10.1249/MSS.0000000000000380",
    verified: "seen",
    where: "composite of three directions",
  },
  compute: reachComposite,
  checks: [
    { given: [62, 105, 100, 92], expect: 96.74, tolerance: 0.01, from: "by hand: 26 700 / 276" },
    { given: [62, 105, 100, 9.2], expect: "refused", from: "decimetres" },
  ],
};
