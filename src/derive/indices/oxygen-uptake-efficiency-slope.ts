/**
 * Oxygen uptake efficiency slope (OUES).
 *
 *     VO2 = OUES · log10(VE) + b        mL/min, VE in L/min BTPS; least squares
 *
 * The logarithm makes the relation nearly straight, so the slope says much even when a test ends early. It grows with
 * body size. The range of the fit belongs to the value: whole test, first 90 % and first 75 % of its time.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { fitLine } from "../../kernel/statistics.js";

/** VE in L/min and VO2 in mL/min of the exercise phase in, mL/min per log10(L/min) out. Throws OutOfRange for fewer than six points or ventilation that hardly rises. */
export function oxygenUptakeEfficiencySlope(ventilation: readonly number[], vo2: readonly number[]): number {
  if (ventilation.length < 6) throw new OutOfRange(info.id, "the number of points", ventilation.length, "six or more");
  for (const ve of ventilation) requireRange(info.id, "ventilation", ve, 2, 300, "L/min");
  if (Math.max(...ventilation) < 1.5 * Math.min(...ventilation))
    throw new OutOfRange(
      info.id,
      "ventilation",
      "rising by less than half",
      "tests in which ventilation rises by half or more",
    );
  return fitLine(
    ventilation.map((ve) => Math.log10(ve)),
    vo2,
  ).slope;
}

export const info: FormulaInfo<[readonly number[], readonly number[]], number> = {
  id: "oxygen-uptake-efficiency-slope",
  revision: 1,
  title: "Oxygen uptake efficiency slope",
  equation: "VO2 = OUES·log10(VE) + b, least squares",
  inputs: { VE: { unit: "L/min BTPS", range: "2 to 300" }, VO2: { unit: "mL/min", range: "six points or more" } },
  output: { unit: "mL/min per log10(L/min)", decimals: 0 },
  caveat: "It grows with body size and depends on the range of the fit.",
  source: {
    authors: "Baba R and others",
    year: 1996,
    title: "Oxygen uptake efficiency slope: a new index of cardiorespiratory functional reserve",
    journal: "J Am Coll Cardiol 28:1567–1572",
    where: "definition",
    verified: "memory",
  },
  compute: oxygenUptakeEfficiencySlope,
  checks: [
    {
      given: [
        [20, 40, 60, 80, 100, 120],
        [900, 1620, 2060, 2390, 2590, 2790],
      ],
      expect: 2437.8,
      tolerance: 0.1,
      from: "worked example computed independently with a numerical library: 2437.8, intercept −2274.3",
    },
    {
      given: [
        [20, 40],
        [900, 1620],
      ],
      expect: "refused",
      from: "two points",
    },
    {
      given: [
        [40, 41, 42, 43, 44, 45],
        [1000, 1000, 1000, 1000, 1000, 1000],
      ],
      expect: "refused",
      from: "no exercise",
    },
  ],
};
