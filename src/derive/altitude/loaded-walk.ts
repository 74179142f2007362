/**
 * Energy cost of walking with a load (1977 form).
 *
 *     M = 1.5 W + 2 (W + L)(L/W)² + η (W + L)(1.5 V² + 0.35 V G)      watts
 *     VO2 = M / 20.1 kJ per litre of O2, per kg of body mass
 *
 * W body mass, L load (kg), V speed (m/s), G grade (%), η terrain. Three costs: standing, carrying while standing, and moving
 * body and load along and up. Level and uphill only; known to read low for long carries.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Energy of a litre of O2 in kJ, mixed diet. */
const KJ_PER_LITRE = 20.1;

/** kg, kg, km/h, %, terrain factor (1.0 to 2.1) to mL of O2 a kg of body mass a minute. */
export function loadedWalk(
  massKg: number,
  loadKg: number,
  speedKmH: number,
  gradePct: number,
  terrain: number,
): number {
  requireRange(info.id, "body mass", massKg, 40, 130, "kg");
  requireRange(info.id, "load", loadKg, 0, 0.7 * massKg, "kg");
  requireRange(info.id, "speed", speedKmH, 0.7, 8, "km/h");
  requireRange(info.id, "grade", gradePct, 0, 30, "% uphill");
  requireRange(info.id, "terrain factor", terrain, 1, 2.1, "");
  const V = speedKmH / 3.6;
  const total = massKg + loadKg;
  const watts =
    1.5 * massKg + 2 * total * (loadKg / massKg) ** 2 + terrain * total * (1.5 * V * V + 0.35 * V * gradePct);
  return ((watts * 60) / 1000 / KJ_PER_LITRE / massKg) * 1000;
}

/** Terrain factors of the 1977 equation: treadmill or road, light brush, loose sand. */
export const TERRAIN = { road: 1.0, "rough path": 1.2, loose: 2.1 } as const;

export const info: FormulaInfo<[number, number, number, number, number], number> = {
  id: "loaded-walk",
  revision: 1,
  title: "Oxygen uptake of walking with a load",
  equation: "M = 1.5 W + 2 (W+L)(L/W)² + η (W+L)(1.5 V² + 0.35 V G); VO2 = M/20.1 kJ/L",
  inputs: {
    "body mass": { unit: "kg", range: "40 to 130" },
    load: { unit: "kg", range: "0 to 70 % of body mass" },
    speed: { unit: "km/h", range: "0.7 to 8" },
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
