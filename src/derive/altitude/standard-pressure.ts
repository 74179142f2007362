/**
 * Barometric pressure of the standard atmosphere, for aircraft cabins and the labels of hypoxic rooms.
 *
 *     P = 101325 · (1 − 0.0065 h / 288.15)^5.25588 Pa      h geopotential metres
 *
 * Not for people on mountains: see mountain-pressure.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Geometric altitude in m (−500 to 11 000) to mmHg. */
export function standardPressure(altitudeM: number): number {
  requireRange(info.id, "altitude", altitudeM, -500, 11_000, "m");
  const geopotential = (6_356_766 * altitudeM) / (6_356_766 + altitudeM);
  return (101_325 * (1 - (0.0065 * geopotential) / 288.15) ** 5.25588) / 133.322;
}

export const info: FormulaInfo<[number], number> = {
  id: "standard-pressure",
  revision: 1,
  title: "Barometric pressure of the standard atmosphere",
  equation: "P = 101325 (1 − 0.0065 h/288.15)^5.25588 Pa",
  inputs: { altitude: { unit: "m", range: "−500 to 11 000" } },
  output: { unit: "mmHg", decimals: 0 },
  caveat: "Understates pressure on high mountains near the equator by up to 17 mmHg.",
  source: {
    authors: "US Committee on Extension to the Standard Atmosphere",
    year: 1976,
    title: "U.S. Standard Atmosphere, 1976",
    where: "troposphere: constants 288.15 K, 0.0065 K/m, 101 325 Pa",
    verified: "seen",
  },
  compute: standardPressure,
  checks: [
    {
      given: [3000],
      expect: 526,
      tolerance: 0.5,
      from: "published: 526 mmHg at 3000 m (travel-medicine table, Arch Dis Child)",
    },
    { given: [5000], expect: 405, tolerance: 0.5, from: "published: 405 mmHg at 5000 m (same table)" },
    { given: [8848], expect: 236.3, tolerance: 0.1, from: "by hand from the constants" },
  ],
};
