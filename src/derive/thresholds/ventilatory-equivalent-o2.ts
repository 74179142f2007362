/**
 * VT1 by ventilatory equivalents: VE/VO2 begins a lasting rise while VE/VCO2 does not rise.
 *
 * Ventilation follows VCO2, so VE/VO2 has the form of VCO2/VO2: a hyperbola with a bend at VT1. Where VE/VCO2 rises
 * as well between VT1 and VT2 the bend is not VT1's (it may be VT2, or a change of breathing), and nothing is given.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { fitBend } from "./bent-line.js";
import { broken, NO_UPPER, pointsFrom, steps, vo2Or } from "./check-points.js";
import {
  channelOf,
  litres,
  type Points,
  type Reading,
  refusal,
  risesBetween,
  type Upper,
  withAxisError,
} from "./points.js";
import { problemOf } from "./v-slope.js";

export function ventilatoryEquivalentO2(points: Points, upper: Upper): Reading {
  const method = "VE/VO2";
  if (!points.bins.veVo2.some(Number.isFinite)) return { method, because: "ventilation was not recorded" };
  const out = fitBend(problemOf(channelOf(points, points.bins.veVo2), upper));
  if ("because" in out) return { method, because: out.because };
  const { fit } = out;
  const because = refusal(fit, "VE/VO2");
  if (because !== undefined) return { method, because };
  if (fit.change * fit.at <= (fit.coefficients[1] as number))
    return { method, because: "VE/VO2 stops falling but does not rise" };
  if (risesBetween(points.x, points.bins.veVco2, fit.at, upper.below))
    return { method, because: `VE/VCO2 rises together with VE/VO2 above ${fit.at.toFixed(2)} L/min` };
  if (risesBetween(points.x, points.bins.veVo2, 0, fit.at))
    return { method, because: `VE/VO2 already rises before its bend at ${litres(fit.at)}` };
  return withAxisError(points, method, fit);
}

const AXIS = steps(1, 0.1, 25);
const CO2 = broken(AXIS, 2.2, 2.02, 0.92, 1.27);

export const info: FormulaInfo<[readonly number[], readonly number[], readonly number[]], number> = {
  id: "ventilatory-equivalent-o2",
  revision: 1,
  title: "First ventilatory threshold by ventilatory equivalents",
  equation: "VE/VO2 begins a lasting rise while VE/VCO2 does not rise",
  inputs: {
    VO2: { unit: "L/min", range: "15-s means, rising" },
    VCO2: { unit: "L/min", range: "15-s means" },
    VE: { unit: "L/min", range: "15-s means" },
  },
  output: { unit: "L/min", decimals: 2 },
  source: {
    authors: "Caiozzo VJ, Davis JA, Ellis JF, Azus JL, Vandagriff R, Prietto CA, McMaster WC",
    year: 1982,
    title: "A comparison of gas exchange indices used to detect the anaerobic threshold",
    journal: "J Appl Physiol 53(5):1184–1189",
    where: "definition: systematic rise of VE/VO2 without a concurrent rise of VE/VCO2",
    verified: "seen",
  },
  compute: (vo2, vco2, ventilation) =>
    vo2Or("ventilatory-equivalent-o2", ventilatoryEquivalentO2(pointsFrom({ vo2, vco2, ventilation }), NO_UPPER)),
  checks: [
    {
      given: [AXIS, CO2, CO2.map((c) => 25 * c + 4)],
      expect: 2.2,
      tolerance: 0.03,
      from: "by hand: VE 25·VCO2 + 4, VCO2 on two lines that meet at VO2 2.2",
    },
    {
      given: [AXIS, AXIS.map((x) => 0.9 * x), broken(AXIS, 2.2, 60, 24, 40)],
      expect: "refused",
      from: "definition: here VE/VCO2 rises together with VE/VO2",
    },
    {
      given: [steps(1, 0.2, 7), steps(0.8, 0.2, 7), [25, 28.8, 32.2, 36.8, 43.2, 52, 61.6]],
      expect: "refused",
      from: "seven windows are too few to tell a bend from noise",
    },
  ],
};
