/**
 * The mountain altitude whose inspired oxygen pressure equals that of a gas breathed here.
 *
 *     PB(equivalent) = FIO2 · (PB here − 47) / 0.2093 + 47, then West's atmosphere backwards
 *
 * Equal inspired pressure is the convention used; labels of hypoxic rooms often match the dry pressure in the standard
 * atmosphere instead and name an altitude some 100 m higher. Always record FIO2 and pressure, never only an altitude.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { altitudeOfMountainPressure } from "./mountain-pressure.js";

/** O2 fraction of dry inspired gas and local pressure in mmHg to altitude in m. */
export function equivalentAltitude(fio2: number, pressureMmHg: number): number {
  requireRange(info.id, "inspired O2 fraction", fio2, 0.05, 0.2095, "");
  requireRange(info.id, "barometric pressure", pressureMmHg, 380, 800, "mmHg");
  return altitudeOfMountainPressure((fio2 * (pressureMmHg - 47)) / 0.2093 + 47);
}

export const info: FormulaInfo<[number, number], number> = {
  id: "equivalent-altitude",
  revision: 1,
  title: "Equivalent altitude at equal inspired oxygen pressure (mountain atmosphere)",
  equation: "PB = FIO2 · (PB here − 47)/0.2093 + 47, inverted through the mountain atmosphere",
  inputs: {
    "inspired O2 fraction": { unit: "", range: "0.05 to 0.2095" },
    "barometric pressure": { unit: "mmHg", range: "380 to 800" },
  },
  output: { unit: "m", decimals: 0 },
  caveat: "Conventions differ by 300 to 400 m; equal inspired pressure need not feel the same.",
  source: {
    authors: "Conkin J",
    year: 2011,
    title: "PH2O and simulated hypobaric hypoxia",
    journal: "Aviat Space Environ Med 82:1157–1158",
    where: "argument for matching moist inspired pressure; atmosphere of West 1996",
    verified: "seen",
  },
  compute: equivalentAltitude,
  checks: [
    {
      given: [0.12, 760],
      expect: 4340,
      tolerance: 2,
      from: "by hand: 0.12·713/0.2093 + 47 = 455.8 mmHg; West backwards 4340 m",
    },
    {
      given: [0.15, 760],
      expect: 2677,
      tolerance: 2,
      from: "by hand: 0.15·713/0.2093 + 47 = 558.0 mmHg; West backwards 2677 m",
    },
    { given: [0.25, 760], expect: "refused", from: "more oxygen than air is no altitude" },
  ],
};
