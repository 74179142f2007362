/**
 * FEV1/FVC: the share of the forced vital capacity that leaves in the first second.
 *
 *     FEV1/FVC = FEV1 / FVC     from the largest of each
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** 0 to 1. Throws OutOfRange for volumes outside 0.2 to 10 L or FEV1 above FVC. */
export function flowRatio(fev1: number, fvc: number): number {
  requireRange(info.id, "FVC", fvc, 0.3, 10, "L");
  requireRange(info.id, "FEV1", fev1, 0.2, 10, "L");
  if (fev1 > fvc) throw new OutOfRange(info.id, "FEV1", fev1, `volumes up to FVC, ${fvc} L`);
  return fev1 / fvc;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "flow-ratio",
  revision: 1,
  title: "FEV1/FVC",
  equation: "FEV1/FVC, largest of each",
  inputs: { FEV1: { unit: "L", range: "0.2 to 10" }, FVC: { unit: "L", range: "0.3 to 10" } },
  output: { unit: "ratio", decimals: 2 },
  source: {
    authors: "Graham BL, Steenbruggen I, Miller MR, et al.",
    year: 2019,
    title: "Standardization of spirometry 2019 update. An official ATS/ERS technical statement",
    journal: "Am J Respir Crit Care Med 200(8):e70–e88",
    doi: "10.1164/rccm.201908-1590ST",
    where: "ratio from the largest FEV1 and the largest FVC",
    verified: "seen",
  },
  compute: flowRatio,
  checks: [
    { given: [4, 5], expect: 0.8, tolerance: 1e-12, from: "by hand: 4/5" },
    { given: [5.1, 5], expect: "refused", from: "by definition FEV1 is a part of FVC" },
  ],
};
