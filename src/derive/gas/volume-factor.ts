/**
 * Converts a gas volume from one condition to another.
 *
 *     dry share at STPD = (PB − pH2O)/760 · 273.15/(273.15 + t)
 *     factor from A to B = dry share of A / dry share of B
 *
 * Every condition holds the same amount of dry gas, so each is first brought to STPD. BTPS is 37 °C and 47 mmHg by
 * convention; ATPS is saturated and ATPD dry at the temperature of the gas in the meter; ambient is room air at its
 * humidity. Station pressure is needed for all but STPD itself: there is no default, and a pressure reduced to sea
 * level overstates uptake by about 20 % at 1600 m.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import type { GasCondition } from "../../kernel/series.js";
import { vapourPressure } from "./vapour-pressure.js";

/** mmHg of water in saturated gas at 37 °C, by convention of the trade. */
const BODY_VAPOUR = 47;
const ZERO_C = 273.15;
const BODY_K = 310.15;

/** Pressure mmHg, temperature °C, humidity 0 to 1; the last two matter only for ATPS, ATPD and ambient. */
export function stpdShare(
  condition: GasCondition,
  pressureMmhg: number,
  temperatureC: number,
  humidity: number,
): number {
  if (condition === "STPD") return 1;
  requireRange(info.id, "station pressure", pressureMmhg, 230, 830, "mmHg");
  if (condition === "BTPS") return ((pressureMmhg - BODY_VAPOUR) / 760) * (ZERO_C / BODY_K);
  requireRange(info.id, "gas temperature", temperatureC, 5, 45, "°C");
  const kelvin = ZERO_C + temperatureC;
  if (condition === "ATPD") return (pressureMmhg / 760) * (ZERO_C / kelvin);
  if (condition === "ambient") requireRange(info.id, "relative humidity", humidity, 0, 1, "as a fraction");
  const share = condition === "ATPS" ? 1 : humidity;
  return ((pressureMmhg - share * vapourPressure(temperatureC)) / 760) * (ZERO_C / kelvin);
}

const CONDITIONS = ["ATPS", "ATPD", "BTPS", "STPD", "ambient"];

export function volumeFactor(
  from: GasCondition,
  to: GasCondition,
  pressureMmhg: number,
  temperatureC: number,
  humidity: number,
): number {
  for (const condition of [from, to])
    if (!CONDITIONS.includes(condition))
      throw new OutOfRange(info.id, "gas condition", condition, CONDITIONS.join(", "));
  return stpdShare(from, pressureMmhg, temperatureC, humidity) / stpdShare(to, pressureMmhg, temperatureC, humidity);
}

const glasgow = "teaching page 'STPD vs BTPS': 273/310 · 713/760 = 0.8261842";
export const info: FormulaInfo<[GasCondition, GasCondition, number, number, number], number> = {
  id: "volume-factor",
  revision: 1,
  title: "Conversion of a gas volume between conditions",
  equation: "factor = [(PB − pH2O)/760 · 273.15/(273.15 + t)] of the one / of the other",
  inputs: {
    from: { unit: "", range: CONDITIONS.join(", ") },
    to: { unit: "", range: CONDITIONS.join(", ") },
    "station pressure": { unit: "mmHg", range: "230 to 830" },
    "gas temperature": { unit: "°C", range: "5 to 45" },
    humidity: { unit: "fraction", range: "0 to 1, for ambient" },
  },
  output: { unit: "factor", decimals: 4 },
  caveat: "Station pressure is what a barometer in the room reads, never the weather service's sea-level pressure.",
  source: {
    authors: "MacIntyre N, Crapo RO, Viegi G, et al.",
    year: 2005,
    title: "Standardisation of the single-breath determination of carbon monoxide uptake in the lung",
    journal: "Eur Respir J 26:720–735",
    where: "Table 5, corrections for pressure, water vapour and temperature",
    verified: "seen",
  },
  compute: volumeFactor,
  checks: [
    { given: ["BTPS", "STPD", 760, 37, 1], expect: 0.8261842, tolerance: 0.0001, from: glasgow },
    {
      given: ["ATPS", "BTPS", 760, 22, 1],
      expect: 1.091,
      tolerance: 0.0005,
      from: "rounded BTPS factor of spirometry standards at 22 °C (from memory)",
    },
    {
      given: ["ATPS", "BTPS", 760, 30, 1],
      expect: 1.045,
      tolerance: 0.0005,
      from: "rounded BTPS factor of spirometry standards at 30 °C (from memory)",
    },
    {
      given: ["ATPS", "STPD", 752, 22, 1],
      expect: 0.8916,
      tolerance: 0.0001,
      from: "by hand: (752 − 19.84)/760 · 273.15/295.15 = 0.89156",
    },
    {
      given: ["ATPS", "BTPS", 752, 22, 1],
      expect: 1.0913,
      tolerance: 0.0001,
      from: "by hand: 310.15/295.15 · (752 − 19.84)/(752 − 47) = 1.09130",
    },
    {
      given: ["ATPS", "STPD", 761, 25, 1],
      expect: 8.354 / 9.4,
      tolerance: 0.0001,
      from: "by hand: bag of 9.4 L/min at 25 °C and 761 mmHg, (761 − 23.77)/760 · 273.15/298.15 · 9.4 = 8.354 L/min",
    },
    {
      given: ["ambient", "STPD", 760, 20, 0.5],
      expect: 0.92102,
      tolerance: 0.00005,
      from: "by hand: (760 − 0.5 · 17.54)/760 · 273.15/293.15 = 0.98846 · 0.93178 = 0.92102",
    },
    { given: ["ATPS", "STPD", 76, 22, 1], expect: "refused", from: "a pressure of 76 is in another unit" },
  ],
};
