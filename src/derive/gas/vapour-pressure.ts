/**
 * Saturated vapour pressure of water over liquid.
 *
 *     p = 0.61121 kPa · exp((18.678 − t/234.5) · t/(257.14 + t))
 *
 * Warm moist gas is partly water. The share of water depends on temperature alone, so the dry part of a saturated
 * volume is known once its temperature and the station pressure are.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { KPA_PER_MMHG } from "../../kernel/unit.js";

/** °C in (0 to 45), mmHg out. */
export function vapourPressure(temperatureC: number): number {
  requireRange(info.id, "gas temperature", temperatureC, 0, 45, "°C");
  const t = temperatureC;
  return (0.61121 * Math.exp((18.678 - t / 234.5) * (t / (257.14 + t)))) / KPA_PER_MMHG;
}

export const info: FormulaInfo<[number], number> = {
  id: "vapour-pressure",
  revision: 1,
  title: "Saturated vapour pressure of water",
  equation: "p = 0.61121 kPa · exp((18.678 − t/234.5) · t/(257.14 + t))",
  inputs: { temperature: { unit: "°C", range: "0 to 45" } },
  output: { unit: "mmHg", decimals: 2 },
  source: {
    authors: "Buck AL",
    year: 1981,
    title: "New equations for computing vapor pressure and enhancement factor (coefficients of the 1996 revision)",
    journal: "J Appl Meteorol 20:1527–1532",
    where: "equation over water; agrees with every row from 20 to 37 °C of the handbook table within 0.03 %",
    verified: "memory",
  },
  compute: vapourPressure,
  checks: [
    [20, 2.3388],
    [22, 2.6447],
    [25, 3.169],
    [30, 4.2455],
    [34, 5.3229],
    [37, 6.2795],
  ].map(([t, kPa]) => ({
    given: [t as number] as [number],
    expect: (kPa as number) / KPA_PER_MMHG,
    tolerance: 0.012,
    from: `CRC Handbook of Chemistry and Physics 1992–93, vapour pressure of water: ${kPa} kPa at ${t} °C`,
  })),
};
