/**
 * Fat and carbohydrate oxidation, Péronnet and Massicotte's table of the non-protein respiratory quotient.
 *
 *     fat = 1.695·VO2 − 1.701·VCO2
 *     carbohydrate = 4.585·VCO2 − 3.226·VO2        L/min STPD; g/min
 *
 * Glucose and an average human fat, protein left out. Carbohydrate is zero at a ratio of 0.7036 and fat at 0.9965:
 * outside these the sum has no meaning, so it is refused, never set to zero.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { type In, lPerMin } from "../../kernel/unit.js";
import type { Oxidation } from "./frayn-1983.js";

/** L/min STPD in, g/min out. Throws OutOfRange where either fuel would be negative. */
export function peronnetMassicotte1991(vo2: In<"L/min">, vco2: In<"L/min">): Oxidation {
  requireRange(info.id, "oxygen uptake", vo2, 0.05, 8, "L/min");
  const fat = 1.695 * vo2 - 1.701 * vco2;
  const carbohydrate = 4.585 * vco2 - 3.226 * vo2;
  if (fat < 0 || carbohydrate < 0)
    throw new OutOfRange(info.id, "VCO2/VO2", (vco2 / vo2).toFixed(3), "ratios of 0.704 to 0.996 in steady state");
  return { fat, carbohydrate };
}

export const info: FormulaInfo<[In<"L/min">, In<"L/min">], Oxidation> = {
  id: "peronnet-massicotte-1991",
  revision: 1,
  title: "Fat and carbohydrate oxidation (Péronnet and Massicotte)",
  equation: "fat = 1.695·VO2 − 1.701·VCO2 · carbohydrate = 4.585·VCO2 − 3.226·VO2",
  inputs: {
    VO2: { unit: "L/min STPD", range: "steady state" },
    VCO2: { unit: "L/min STPD", range: "ratio 0.704 to 0.996" },
  },
  output: { unit: "g/min", decimals: 2 },
  caveat: "Protein is counted as fat and carbohydrate.",
  source: {
    authors: "Péronnet F, Massicotte D",
    year: 1991,
    title: "Table of nonprotein respiratory quotient: an update",
    journal: "Can J Sport Sci 16:23–29",
    where: "equations, as restated in secondary texts",
    verified: "seen",
  },
  compute: peronnetMassicotte1991,
  checks: [
    {
      given: [lPerMin(2.2), lPerMin(1.85)],
      pick: (o) => o.fat,
      expect: 0.582,
      tolerance: 0.0005,
      from: "published calculator page, energy from fat oxidation: 2.20 and 1.85 L/min give 0.582 g/min",
    },
    {
      given: [lPerMin(2), lPerMin(1.7)],
      pick: (o) => o.carbohydrate,
      expect: 1.342,
      tolerance: 0.001,
      from: "by hand: 4.585·1.7 − 3.226·2 = 7.7945 − 6.452",
    },
    { given: [lPerMin(2), lPerMin(2)], expect: "refused", from: "a ratio above 0.9965 gives negative fat" },
    { given: [lPerMin(2), lPerMin(1.4)], expect: "refused", from: "a ratio below 0.7036 gives negative carbohydrate" },
  ],
};
