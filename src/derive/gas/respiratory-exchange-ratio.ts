/**
 * Respiratory exchange ratio.
 *
 *     RER = VCO2 / VO2
 *
 * Gas at the mouth. It equals the tissue's quotient (RQ) only in a steady state; above the first threshold it also
 * holds carbon dioxide driven out by acid, so it rises past 1 although no fuel has a quotient above 1.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Both in one unit. */
export function respiratoryExchangeRatio(vco2: number, vo2: number): number {
  requireRange(info.id, "carbon dioxide output", vco2, 0.01, 12, "L/min");
  requireRange(info.id, "oxygen uptake", vo2, 0.01, 10, "L/min");
  return vco2 / vo2;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "respiratory-exchange-ratio",
  revision: 1,
  title: "Respiratory exchange ratio",
  equation: "RER = VCO2 / VO2",
  inputs: {
    "carbon dioxide output": { unit: "L/min", range: "0.01 to 12" },
    "oxygen uptake": { unit: "L/min", range: "0.01 to 10" },
  },
  output: { unit: "ratio", decimals: 2 },
  source: {
    authors: "University of Glasgow",
    year: null,
    title: "Exercise Science 3: calculation of oxygen consumption",
    where: "definition of RER and worked example",
    verified: "seen",
  },
  compute: respiratoryExchangeRatio,
  checks: [
    {
      given: [0.34, 0.347],
      expect: 0.98,
      tolerance: 0.0005,
      from: "University of Glasgow, Exercise Science 3: 0.340 / 0.347 = 0.980",
    },
    { given: [0, 1], expect: "refused", from: "a dead channel is no ratio" },
  ],
};
