/**
 * Fat and carbohydrate oxidation in exercise, Jeukendrup and Wallis.
 *
 *     fat = 1.695·VO2 − 1.701·VCO2
 *     carbohydrate, to 50 % of VO2max       4.344·VCO2 − 3.061·VO2
 *     carbohydrate, 50 to 75 % of VO2max    4.210·VCO2 − 2.962·VO2        L/min STPD; g/min
 *
 * In exercise carbohydrate comes largely from glycogen, which yields more energy a gram than glucose and so fewer
 * grams for the same gas exchange. The equations stop at 75 % of VO2max.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { type In, lPerMin } from "../../kernel/unit.js";
import type { Oxidation } from "./frayn-1983.js";

/** L/min STPD and % of VO2max in, g/min out. Throws OutOfRange outside 40 to 75 % and where either fuel would be negative. */
export function jeukendrupWallis2005(vo2: In<"L/min">, vco2: In<"L/min">, percentOfMax: number): Oxidation {
  requireRange(info.id, "oxygen uptake", vo2, 0.05, 8, "L/min");
  requireRange(info.id, "intensity", percentOfMax, 40, 75, "% of VO2max");
  const fat = 1.695 * vo2 - 1.701 * vco2;
  const carbohydrate = percentOfMax <= 50 ? 4.344 * vco2 - 3.061 * vo2 : 4.21 * vco2 - 2.962 * vo2;
  if (fat < 0 || carbohydrate < 0)
    throw new OutOfRange(info.id, "VCO2/VO2", (vco2 / vo2).toFixed(3), "ratios of 0.705 to 0.996 in steady state");
  return { fat, carbohydrate };
}

export const info: FormulaInfo<[In<"L/min">, In<"L/min">, number], Oxidation> = {
  id: "jeukendrup-wallis-2005",
  revision: 1,
  title: "Fat and carbohydrate oxidation in exercise (Jeukendrup and Wallis)",
  equation: "fat = 1.695·VO2 − 1.701·VCO2 · carbohydrate = 4.344·VCO2 − 3.061·VO2 (to 50 %) or 4.210·VCO2 − 2.962·VO2",
  inputs: {
    VO2: { unit: "L/min STPD", range: "steady state" },
    VCO2: { unit: "L/min STPD", range: "ratio 0.705 to 0.996" },
    intensity: { unit: "% of VO2max", range: "40 to 75" },
  },
  output: { unit: "g/min", decimals: 2 },
  caveat: "Coefficients from memory, to be checked against the source.",
  source: {
    authors: "Jeukendrup AE, Wallis GA",
    year: 2005,
    title: "Measurement of substrate oxidation during exercise by means of gas exchange measurements",
    journal: "Int J Sports Med 26 Suppl 1:S28–S37",
    doi: "10.1055/s-2004-830512",
    where: "equations for low and for moderate to high intensity",
    verified: "memory",
  },
  compute: jeukendrupWallis2005,
  checks: [
    {
      given: [lPerMin(2), lPerMin(1.7), 45],
      pick: (o) => o.carbohydrate,
      expect: 1.263,
      tolerance: 0.0005,
      from: "by hand: 4.344·1.7 − 3.061·2",
    },
    {
      given: [lPerMin(2), lPerMin(1.7), 65],
      pick: (o) => o.carbohydrate,
      expect: 1.233,
      tolerance: 0.0005,
      from: "by hand: 4.210·1.7 − 2.962·2",
    },
    {
      given: [lPerMin(2), lPerMin(1.7), 65],
      pick: (o) => o.fat,
      expect: 0.498,
      tolerance: 0.0005,
      from: "by hand: 1.695·2 − 1.701·1.7",
    },
    { given: [lPerMin(2), lPerMin(1.7), 80], expect: "refused", from: "above 75 % of VO2max" },
  ],
};
