/**
 * Oxygen uptake of walking with a load: the metabolic rate of load-carriage-pandolf as oxygen.
 *
 *     VO2 = M / 20.1 kJ per litre of O2, per kg of body mass
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { loadCarriagePandolf } from "../field/load-carriage-pandolf.js";

/** Energy of a litre of O2 in kJ, mixed diet. */
const KJ_PER_LITRE = 20.1;

/** kg, kg, km/h, %, terrain factor (1.0 to 2.1) to mL of O2 a kg of body mass a minute. Refuses what the equation refuses. */
export function loadedWalk(
  massKg: number,
  loadKg: number,
  speedKmH: number,
  gradePct: number,
  terrain: number,
): number {
  const watts = loadCarriagePandolf(massKg, loadKg, speedKmH, gradePct, terrain);
  return ((watts * 60) / 1000 / KJ_PER_LITRE / massKg) * 1000;
}

/** Terrain factors of the 1977 equation: treadmill or road, light brush, loose sand. */
export const TERRAIN = { road: 1.0, "rough path": 1.2, loose: 2.1 } as const;

export const info: FormulaInfo<[number, number, number, number, number], number> = {
  id: "loaded-walk",
  revision: 2, // r1 had ranges of its own
  title: "Oxygen uptake of walking with a load",
  equation: "VO2 = M / 20.1 kJ/L / body mass; M by load-carriage-pandolf",
  inputs: {
    "body mass": { unit: "kg", range: "30 to 200" },
    load: { unit: "kg", range: "0 to 80" },
    speed: { unit: "km/h", range: "1 to 9" },
    grade: { unit: "%", range: "0 to 30, uphill" },
    "terrain factor": { unit: "", range: "1.0 to 2.1" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "Level and uphill only; it reads low for long carries.",
  source: {
    authors: "Pandolf KB, Givoni B, Goldman RF",
    year: 1977,
    title: "Predicting energy expenditure with loads while standing or walking very slowly",
    journal: "J Appl Physiol 43:577–581",
    where: "equation; 20.1 kJ per litre of O2 for a mixed diet",
    verified: "seen",
  },
  compute: loadedWalk,
  checks: [
    {
      given: [70, 20, 4.5, 10, 1.2],
      expect: 36.0,
      tolerance: 0.1,
      from: "by hand: 105 + 14.69 + 1.2·90·(2.344 + 4.375) = 845.3 W; 845.3·60/1000/20.1 = 2.523 L/min; over 70 kg 36.0",
    },
    { given: [70, 20, 4.5, -5, 1], expect: "refused", from: "the equation is for level and uphill" },
  ],
};
