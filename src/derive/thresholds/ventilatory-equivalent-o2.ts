/**
 * VT1 by ventilatory equivalents: VE/VO2 begins a lasting rise while VE/VCO2 does not rise.
 *
 * Ventilation follows VCO2, so VE/VO2 has the form of VCO2/VO2: a hyperbola with a bend at VT1. Where VE/VCO2 rises
 * as well between VT1 and VT2 the bend is not VT1's (it may be VT2, or a change of breathing), and nothing is given.
 */
import { fitLine } from "../../kernel/statistics.js";
import { fitBend } from "./bent-line.js";
import { channelOf, type Points, type Reading, refusal, type Upper, withAxisError } from "./points.js";
import { problemOf } from "./v-slope.js";

export function ventilatoryEquivalentO2(points: Points, upper: Upper): Reading {
  const method = "VE/VO2";
  const out = fitBend(problemOf(channelOf(points, points.bins.veVo2), upper));
  if ("because" in out) return { method, because: out.because };
  const { fit } = out;
  const because = refusal(fit, "VE/VO2");
  if (because !== undefined) return { method, because };
  if (fit.change * fit.at <= (fit.coefficients[1] as number))
    return { method, because: "VE/VO2 stops falling but does not rise" };
  if (risesToo(points, fit.at, upper.below))
    return { method, because: `VE/VCO2 rises together with VE/VO2 above ${fit.at.toFixed(2)} L/min` };
  return withAxisError(points, method, fit.at, fit.low, fit.high);
}

/** VE/VCO2 rises on VO2 between the bounds by more than two standard errors. */
function risesToo(points: Points, from: number, to: number): boolean {
  const inside = [...points.x.keys()].filter((i) => {
    const x = points.x[i] as number;
    return x > from && x < to && Number.isFinite(points.bins.veVco2[i]);
  });
  if (inside.length < 4) return false;
  const xs = inside.map((i) => points.x[i] as number);
  const line = fitLine(
    xs,
    inside.map((i) => points.bins.veVco2[i] as number),
  );
  return line.slope > 2 * line.slopeSe;
}
