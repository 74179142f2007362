/**
 * Oxygen uptake and carbon dioxide output from ventilation and gas fractions (Haldane transformation).
 *
 *     VI   = VE · (1 − FEO2 − FECO2) / (1 − FIO2 − FICO2)
 *     VO2  = VI · FIO2 − VE · FEO2
 *     VCO2 = VE · FECO2 − VI · FICO2          all volumes STPD, all fractions of dry gas
 *
 * Nitrogen is neither taken up nor given off, so the same amount goes in and out; this gives the volume that was not
 * measured. Inspired fractions are inputs, never constants: 0.2093 instead of the true 0.14 of a hypoxic gas makes
 * uptake three times too large. The less nitrogen, the more an analyser error counts, so enriched gas is refused.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

export interface Exchange {
  readonly vo2: number; // L/min STPD
  readonly vco2: number; // L/min STPD
  readonly inspired: number; // L/min STPD
  readonly expired: number; // L/min STPD
}
/** Highest inspired oxygen answered: room air with room for the error of a reading. */
export const HIGHEST_FIO2 = 0.25;

/** Expired (or, with measured = "inspired", inspired) ventilation L/min STPD; fractions of dry gas, 0 to 1. */
export function haldane(
  ventilation: number,
  feo2: number,
  feco2: number,
  fio2: number,
  fico2: number,
  measured: "expired" | "inspired" = "expired",
): Exchange {
  requireRange(info.id, "ventilation", ventilation, 0.5, 400, "L/min STPD");
  requireRange(info.id, "inspired oxygen fraction", fio2, 0.05, HIGHEST_FIO2, "(room air or less)");
  requireRange(info.id, "inspired carbon dioxide fraction", fico2, 0, 0.1, "");
  requireRange(info.id, "expired oxygen fraction", feo2, 0.02, HIGHEST_FIO2, "");
  requireRange(info.id, "expired carbon dioxide fraction", feco2, 0, 0.15, "");
  if (feo2 >= fio2) throw new OutOfRange(info.id, "expired oxygen fraction", feo2, `values below the inspired ${fio2}`);
  const ratio = (1 - feo2 - feco2) / (1 - fio2 - fico2); // inspired over expired volume
  const expired = measured === "expired" ? ventilation : ventilation / ratio;
  const inspired = expired * ratio;
  return { vo2: inspired * fio2 - expired * feo2, vco2: expired * feco2 - inspired * fico2, inspired, expired };
}

type Args = [number, number, number, number, number, ("expired" | "inspired")?];
const bag: Args = [66.8673, 0.165, 0.044, 0.2093, 0.0003];
const byHand = "by hand: 75 L/min ATPS at 22 °C and 752 mmHg is 66.8673 STPD; VI 66.9181";
export const info: FormulaInfo<Args, Exchange> = {
  id: "haldane",
  revision: 1,
  title: "Uptake and output from ventilation and gas fractions",
  equation: "VO2 = VI·FIO2 − VE·FEO2, VCO2 = VE·FECO2 − VI·FICO2, VI = VE·(1 − FEO2 − FECO2)/(1 − FIO2 − FICO2)",
  inputs: {
    ventilation: { unit: "L/min STPD", range: "0.5 to 400" },
    "expired oxygen": { unit: "fraction", range: "below the inspired fraction" },
    "expired carbon dioxide": { unit: "fraction", range: "0 to 0.15" },
    "inspired oxygen": { unit: "fraction", range: `0.05 to ${HIGHEST_FIO2}` },
    "inspired carbon dioxide": { unit: "fraction", range: "0 to 0.1" },
  },
  output: { unit: "L/min", decimals: 3 },
  caveat: "Not for oxygen-enriched gas: with little nitrogen a small analyser error becomes a large error of uptake.",
  source: {
    authors: "University of Glasgow",
    year: null,
    title: "Exercise Science 3: calculation of oxygen consumption",
    where: "Section 3, formulas and worked example",
    verified: "seen",
  },
  compute: haldane,
  checks: [
    {
      given: [8.36, 0.168, 0.041, 0.2093, 0.0003],
      expect: 0.3466,
      tolerance: 0.0003,
      pick: (out) => out.vo2,
      from: "University of Glasgow, Exercise Science 3, worked example with VI unrounded (printed 0.347)",
    },
    {
      given: [8.36, 0.168, 0.041, 0.2093, 0.0003],
      expect: 0.34,
      tolerance: 0.0004,
      pick: (out) => out.vco2,
      from: "University of Glasgow, Exercise Science 3, worked example (printed 0.340)",
    },
    { given: bag, expect: 2.97285, tolerance: 0.00005, pick: (out) => out.vo2, from: byHand },
    { given: bag, expect: 2.92209, tolerance: 0.00005, pick: (out) => out.vco2, from: byHand },
    {
      given: [66.8673, 0.165, 0.044, 0.2095, 0.0004],
      expect: 2.992,
      tolerance: 0.0006,
      pick: (out) => out.vo2,
      from: "by hand: the same bag with the other pair of room-air fractions",
    },
    {
      given: [30, 0.201, 0.0072, 0.2093, 0.0003],
      expect: 0.2601,
      tolerance: 0.00006,
      pick: (out) => out.vo2,
      from: "by hand: ventilated hood, outflow 30 L/min",
    },
    {
      given: [66.9181, 0.165, 0.044, 0.2093, 0.0003, "inspired"],
      expect: 2.97285,
      tolerance: 0.0001,
      pick: (out) => out.vo2,
      from: "by hand: the same bag from its inspired volume",
    },
    {
      given: [60, 0.105, 0.038, 0.14, 0.0003],
      expect: 2.07362,
      tolerance: 0.00002,
      pick: (out) => out.vo2,
      from: "by hand, hypoxia: VI = 60 · 0.857/0.8597 = 59.81156; 59.81156 · 0.14 − 60 · 0.105 = 2.07362",
    },
    { given: [60, 0.55, 0.04, 0.6, 0.0003], expect: "refused", from: "oxygen-enriched gas" },
  ],
};
