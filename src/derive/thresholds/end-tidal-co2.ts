/**
 * VT2 by end-tidal CO2: PETCO2, rising or level until then, begins a lasting fall. It is a hyperbola of VE/VCO2's kind
 * upside down; the bend is sought downwards.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { fitBend } from "./bent-line.js";
import { pointsFrom, steps, vo2Or } from "./check-points.js";
import { channelOf, hyperbolicBend, type Points, type Reading, refusal, SIDE, withAxisError } from "./points.js";

export function endTidalCo2(points: Points, above: number): Reading {
  const method = "end-tidal CO2";
  const { x, y, weight, one, inverse } = channelOf(points, points.bins.petCO2);
  if (x.length === 0) return { method, because: "end-tidal CO2 was not recorded" };
  const out = fitBend({ x, y, weight, terms: [one, inverse], bent: hyperbolicBend, sign: -1, side: SIDE, above });
  if ("because" in out) return { method, because: out.because };
  const because = refusal(out.fit, "end-tidal CO2");
  if (because !== undefined) return { method, because };
  if (out.fit.change * out.fit.at >= (out.fit.coefficients[1] as number))
    return { method, because: "end-tidal CO2 stops rising but does not fall" };
  return withAxisError(points, method, out.fit);
}

const AXIS = steps(1, 0.1, 25);

export const info: FormulaInfo<[readonly number[], readonly number[]], number> = {
  id: "end-tidal-co2",
  revision: 1,
  title: "Second ventilatory threshold by end-tidal CO2",
  equation: "PETCO2 = b + c/VO2 + d·(1 − VT2/VO2)⁺ begins a lasting fall",
  inputs: { VO2: { unit: "L/min", range: "15-s means, rising" }, PETCO2: { unit: "mmHg", range: "15-s means" } },
  output: { unit: "L/min", decimals: 2 },
  source: {
    authors: "Whipp BJ, Ward SA, Wasserman K",
    year: 1986,
    title: "Respiratory markers of the anaerobic threshold",
    journal: "Adv Cardiol 35:47–64",
    where: "PETCO2 begins to fall at respiratory compensation",
    verified: "memory",
  },
  compute: (vo2, petCO2) => vo2Or("end-tidal-co2", endTidalCo2(pointsFrom({ vo2, petCO2 }), 0)),
  checks: [
    {
      given: [AXIS, AXIS.map((x) => 42 - (x > 2.6 ? 15 * (1 - 2.6 / x) : 0))],
      expect: 2.6,
      tolerance: 0.02,
      from: "by hand: level at 42 mmHg, from VO2 2.6 on 42 − 15·(1 − 2.6/VO2)",
    },
    {
      given: [steps(1, 0.2, 6), [40, 41, 42, 42, 42, 40]],
      expect: "refused",
      from: "one later window does not confirm it",
    },
  ],
};
