/**
 * VT2 by ventilatory equivalents: VE/VCO2, flat or falling until then, begins a lasting rise. Fitted against VO2, as a
 * hyperbola with a bend; the rise after the bend must be a rise, not a slower fall.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { fitBend } from "./bent-line.js";
import { broken, pointsFrom, steps, vo2Or } from "./check-points.js";
import { channelOf, hyperbolicBend, type Points, type Reading, refusal, SIDE, withAxisError } from "./points.js";
import { LEAST_RISE } from "./ventilation-on-co2.js";

export function ventilatoryEquivalentCo2(points: Points, above: number): Reading {
  const method = "VE/VCO2";
  const { x, y, weight, one, inverse } = channelOf(points, points.bins.veVco2);
  if (x.length === 0) return { method, because: "ventilation was not recorded" };
  const out = fitBend({ x, y, weight, terms: [one, inverse], bent: hyperbolicBend, sign: 1, side: SIDE, above });
  if ("because" in out) return { method, because: out.because };
  const because = refusal(out.fit, "VE/VCO2");
  if (because !== undefined) return { method, because };
  if (out.fit.change * out.fit.at <= (out.fit.coefficients[1] as number))
    return { method, because: "VE/VCO2 stops falling but does not rise" };
  const rise = out.fit.change / (out.fit.coefficients[0] as number);
  if (rise < LEAST_RISE)
    return {
      method,
      because: `VE rises only ${(100 * rise).toFixed(0)} % faster with VCO2 after the bend; 15 % is asked`,
    };
  return withAxisError(points, method, out.fit);
}

const AXIS = steps(1, 0.1, 25);

export const info: FormulaInfo<[readonly number[], readonly number[], readonly number[]], number> = {
  id: "ventilatory-equivalent-co2",
  revision: 1,
  title: "Second ventilatory threshold by ventilatory equivalents",
  equation: "VE/VCO2 begins a lasting rise",
  inputs: {
    VO2: { unit: "L/min", range: "15-s means, rising" },
    VCO2: { unit: "L/min", range: "15-s means" },
    VE: { unit: "L/min", range: "15-s means" },
  },
  output: { unit: "L/min", decimals: 2 },
  source: {
    authors: "Keir DA, Iannetta D, Mattioni Maturana F, Kowalchuk JM, Murias JM",
    year: 2022,
    title: "Identification of non-invasive exercise thresholds",
    journal: "Sports Med 52:237–255",
    doi: "10.1007/s40279-021-01581-z",
    where: "respiratory compensation: VE/VCO2 begins to rise",
    verified: "memory",
  },
  compute: (vo2, vco2, ventilation) =>
    vo2Or("ventilatory-equivalent-co2", ventilatoryEquivalentCo2(pointsFrom({ vo2, vco2, ventilation }), 0)),
  checks: [
    {
      given: [AXIS, AXIS, broken(AXIS, 2.6, 72, 26, 34)],
      expect: 2.6,
      tolerance: 0.03,
      from: "by hand: VE on two lines of VCO2 that meet at 2.6, RER 1",
    },
    { given: [AXIS, AXIS, AXIS.map((x) => 26 * x + 4)], expect: "refused", from: "VE/VCO2 falls to the end" },
  ],
};
