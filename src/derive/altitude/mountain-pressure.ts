/**
 * Barometric pressure on high mountains: West's model atmosphere.
 *
 *     PB = exp(6.63268 − 0.1112 h − 0.00149 h²)      mmHg, h in km
 *
 * The standard atmosphere understates pressure on mountains at low latitudes and in summer, by 17 mmHg on the highest
 * one: a fifth of the inspired oxygen. Use this for people on mountains, the standard atmosphere for aircraft.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Altitude in m (0 to 8849) to pressure in mmHg. Throws OutOfRange elsewhere. */
export function mountainPressure(altitudeM: number): number {
  requireRange(info.id, "altitude", altitudeM, 0, 8849, "m");
  const h = altitudeM / 1000;
  return Math.exp(6.63268 - 0.1112 * h - 0.00149 * h * h);
}

/** The inverse: pressure in mmHg to altitude in m. */
export function altitudeOfMountainPressure(pressureMmHg: number): number {
  requireRange(info.id, "pressure", pressureMmHg, mountainPressure(8849), mountainPressure(0), "mmHg");
  return (1000 * (-0.1112 + Math.sqrt(0.1112 ** 2 - 4 * 0.00149 * (Math.log(pressureMmHg) - 6.63268)))) / (2 * 0.00149);
}

export const info: FormulaInfo<[number], number> = {
  id: "mountain-pressure",
  revision: 1,
  title: "Barometric pressure on a mountain",
  equation: "PB = exp(6.63268 − 0.1112 h − 0.00149 h²), h in km",
  inputs: { altitude: { unit: "m", range: "0 to 8849" } },
  output: { unit: "mmHg", decimals: 0 },
  caveat: "For low latitudes, or mid latitudes in summer; weather moves the pressure by some 5 mmHg.",
  source: {
    authors: "West JB",
    year: 1996,
    title: "Prediction of barometric pressures at high altitudes with the use of model atmospheres",
    journal: "J Appl Physiol 81:1850–1854",
    where: "equation for the model atmosphere",
    verified: "seen",
  },
  compute: mountainPressure,
  checks: [
    {
      given: [8848],
      expect: 253.0,
      tolerance: 1,
      from: "measured on the summit, 253.0 mmHg: West et al. 1983, J Appl Physiol 54:1188–1194",
    },
    { given: [8050], expect: 283.6, tolerance: 2, from: "measured, 283.6 ± 1.5 mmHg: West et al. 1983" },
    { given: [5400], expect: 400.4, tolerance: 2.7, from: "measured, 400.4 ± 2.7 mmHg: West et al. 1983" },
    {
      given: [8848],
      expect: 252.7,
      tolerance: 0.05,
      from: "by hand: exp(6.63268 − 0.1112·8.848 − 0.00149·8.848²) = exp(5.53214)",
    },
    { given: [9000], expect: "refused", from: "above the highest mountain" },
  ],
};
